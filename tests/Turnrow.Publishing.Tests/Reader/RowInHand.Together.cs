using System.Text.RegularExpressions;

namespace Turnrow.Publishing.Tests.Reader;

/// <content>Stitches worked together, on one side of a turn or across it.</content>
internal sealed partial class RowInHand
{
    private void Together(WorkTogether work)
    {
        if (work.FromHook > 0) Enter(_beginning.Skipped(work.FromHook - 1, work.Remarks), work.FromHook - 1);
        var over = 0;
        foreach (var words in work.Places)
        {
            PassFirst(words);
            foreach (var at in Reach(words))
            {
                over++;
                if (at == _ground.JoinedAt) JoinedIsUsed = true;
                (_last, _at) = (at, Math.Max(_at, at + 1));
            }
        }

        var said = work.Remarks.Select(remark => BeforeTurn().Match(remark)).FirstOrDefault(match => match.Success);
        var crosses = _at > _ground.Turn && _at - over < _ground.Turn;
        if (crosses != said is not null || (said is not null && (Number.Of(said.Groups["n"].Value), Number.Of(said.Groups["m"].Value)) != (_ground.Turn - _at + over, _at - _ground.Turn))) throw new Misread("on which side of the turn its places lie");
        if (over != work.Over) throw new Misread($"{work.Stitch}{work.Over}tog is over {over} places");
        var partner = RowBeginning.PartnerOf(work);
        if (partner && _made.Count > 0) _made.RemoveAt(_made.Count - 1);
        _made.Add(new Place(partner ? Seen.ChainAndStitch : Seen.Stitch, work.Stitch));
        if (Enumerable.Range(_at - over, over).FirstOrDefault(i => i >= 0 && Below[i].IsMarked, -1) is >= 0 and var marked) _markers.CarryTo(_made.Count - 1, marked);
    }

    [GeneratedRegex(@"^(?<n>\d+) before the turn below and (?<m>\d+) behind it$")]
    private static partial Regex BeforeTurn();
}
