namespace Turnrow.Compiler.Tests.Naive;

/// <content>Stitches that the pattern defines.</content>
public sealed partial class RowWork
{
    private void WorkSpecial(NaiveStitch stitch)
    {
        if (stitch.Takes == 1)
        {
            Carry(() => MakeSpecial(stitch));
            return;
        }
        var corners = below.Skip(_at).Take(stitch.Takes).Any(place => place.IsCorner) && !_removes;
        MakeSpecial(stitch);
        if (corners)
            throw new UnworkableException("a corner is among the places of a stitch that takes several");
    }

    private int _endsInChains;

    /// <summary>Chains of a stitch beside chains that are not of it: to a maker they are one space, unless the yarn is another.</summary>
    private bool ChainsMeet(bool ofStitch) =>
        _made is [.., { IsSpace: true }] && (ofStitch || _endsInChains == _made.Count) && !(_yarns is [.., var last] && last.From == _made.Count);

    private void MakeSpecial(NaiveStitch stitch)
    {
        Many(stitch.Takes, TakeStitch);
        if (stitch.Makes is [Place.Space, ..] && ChainsMeet(ofStitch: true))
            throw new UnworkableException("chains of a stitch lie beside other chains");
        for (var i = 0; i < stitch.Makes.Count; i++)
            _made.Add(new Place(stitch.Makes[i]) { CentreOf = i == stitch.Centre ? stitch.Name : null });
        if (stitch.Makes is [.., Place.Space])
            _endsInChains = _made.Count;
    }
}
