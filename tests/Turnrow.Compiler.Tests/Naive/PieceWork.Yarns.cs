namespace Turnrow.Compiler.Tests.Naive;

public sealed partial class PieceWork
{
    private StripesAre? _stripes;
    private int _striped;
    private bool _yarnSaid;
    private List<string>? _rowYarns;
    private string? _after;

    /// <summary>The yarn in the hand; empty where the pattern has none.</summary>
    public string Yarn { get; set; } = "";

    private bool IsJustPickedUp => !_yarnSaid && result.PickedUp && result.Rows.Count == 1;

    private void Take(TakeYarn take)
    {
        _stripes = null;
        Yarn = take.Yarn;
        Begin(take.Yarn);
    }

    private void TakeTurns(StripesAre stripes)
    {
        _stripes = stripes;
        _striped = Begin(Striped(stripes, 0)) ? 1 : 0;
    }

    /// <summary>What is said behind a pick-up is said of its row too.</summary>
    private bool Begin(string yarn)
    {
        var first = IsJustPickedUp;
        _yarnSaid = true;
        if (!first)
            return false;
        result.Rows[0] = result.Rows[0] with { Yarns = [.. result.Rows[0].Yarns.Select(_ => yarn)] };
        Yarn = result.LastYarn = yarn;
        return true;
    }

    private string Striped(StripesAre stripes, int row)
    {
        var all = stripes.Order.SelectMany(stripe => Enumerable.Repeat(stripe.Yarn, stripe.Rows[Size])).ToList();
        return all[row % all.Count];
    }

    /// <summary>The yarn of the row's very first stitch.</summary>
    private string YarnOf(IReadOnlyList<Word> words) => FirstOf(words) ?? (_stripes is null ? Yarn : Striped(_stripes, _striped));

    private static string? FirstOf(IReadOnlyList<Word> words)
    {
        foreach (var word in words)
        {
            switch (word)
            {
                case WithYarn with: return with.Yarn;
                case Skip or SlipOver or RemoveCorners: break;
                case Repeat repeat: return FirstOf(repeat.Words);
                default: return null;
            }
        }
        return null;
    }

    private (Picture Picture, int Worked)? _picture;
    private bool _isShown;

    /// <summary>
    /// The picture's yarns from right to left, in a mirrored piece from left to right; in the hand is then what the row's last stitch has, in a mirrored piece
    /// that of the original's row.
    /// </summary>
    private void Show(int places)
    {
        if (_picture is not { } shown)
            return;
        var yarns = Enumerable.Range(0, places).Select(at => shown.Picture.Yarn(shown.Worked, at)).ToList();
        _after = _order == Side.RS ? yarns[^1] : yarns[0];
        if (isMirrored)
            yarns.Reverse();
        (_rowYarns, _picture, _isShown) = (yarns, null, true);
    }

    /// <summary>The yarns of a row's places from right to left, and the yarn in the hand behind it.</summary>
    private IReadOnlyList<string> TakeRowYarns(int places)
    {
        var begun = _stripes is null ? Yarn : Striped(_stripes, _striped);
        var yarns = _rowYarns ?? [.. Enumerable.Repeat(begun, places)];
        // Worked from its other end, a row ends with what the original began with.
        result.LastYarn = isMirrored ? begun : _after ?? begun;
        // A picture's yarns are its own: what comes behind it has the yarn of what came before.
        if (!_isShown)
            Yarn = _after ?? begun;
        _striped++;
        (_rowYarns, _after, _isShown) = (null, null, false);
        return yarns;
    }
}
