using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Pieces;

/// <content>The yarn in the hand. No place and no count depends on it.</content>
public sealed partial class PieceBuilder
{
    private Stripes? _stripes;
    private int _striped;
    private bool _yarnSaid;
    private string? _yarn;
    private string? _ground;

    /// <summary>The yarn in the hand; null where the pattern names none.</summary>
    public string? Yarn
    {
        get => _yarn;
        set => (_yarn, _ground) = (value, null);
    }

    /// <summary>
    /// The yarn of what is not worked in a stitch pattern: the one in the hand before its rows, since the yarns of a pattern are the pattern's alone.
    /// </summary>
    public string? GroundYarn => _ground ?? _yarn;

    /// <summary>Takes up the yarn of a row that is worked again.</summary>
    public void TakeAlong(Row row)
    {
        if (row.Plan is WordsPlan { Of: not null }) (_ground, _yarn) = (GroundYarn, row.Yarn);
        else Yarn = row.Yarn;
    }

    /// <summary>True if the next rows are worked in stripes.</summary>
    public bool IsInStripes => _stripes is not null;

    /// <summary>True if the row picked up is the only one, and nothing was said of yarns: what is said next is said of it too.</summary>
    public bool IsJustPickedUp => !_yarnSaid && _start is PickUpStart && _rows.Count == 1;

    /// <summary>True if among these rows, or within one, another yarn is taken up.</summary>
    public bool ChangesYarn(int first, int last)
    {
        for (var i = first; i <= last; i++)
        {
            if (_rows[i - 1].Yarn != _rows[first - 1].Yarn || (_rows[i - 1].Work is { } work && YarnWords.Has(work.Words))) return true;
        }

        return false;
    }

    /// <summary>From here on it is worked with a yarn; straight behind the line that picks stitches up, these are too.</summary>
    public void TakeUp(string yarn)
    {
        (_stripes, Yarn) = (null, yarn);
        BeginWith(yarn);
    }

    /// <summary>From here on yarns take turns.</summary>
    public void TakeTurns(Stripes stripes)
    {
        (_stripes, _striped) = (stripes, 0);
        if (BeginWith(stripes.YarnOf(0))) _striped = 1;
    }

    /// <summary>Goes on with the yarns of another piece, from where that one has come.</summary>
    public void GoOnAs(PieceBuilder other) => (_stripes, _striped, _yarnSaid, _ground) = (other._stripes, other._striped, other._yarnSaid, other._ground);

    /// <summary>Works what was just picked up with a yarn, since it has a row before anything can be said of it; false if it was not.</summary>
    internal bool BeginWith(string yarn)
    {
        var first = IsJustPickedUp;
        _yarnSaid = true;
        if (!first) return false;
        _rows[0] = _rows[0] with { Yarn = yarn };
        Yarn = yarn;
        return true;
    }

    private string? YarnOf(RowPlan plan)
    {
        var said = plan is WordsPlan words ? YarnWords.First(words.Words) : null;
        return said ?? (_stripes is { } stripes ? stripes.YarnOf(_striped) : plan is WordsPlan { Of: not null } ? _yarn : GroundYarn);
    }

    private void LayDown(Row row)
    {
        _striped++;
        if (row.Plan is WordsPlan { Of: not null }) (_ground, _yarn) = (GroundYarn, row.YarnAfter);
        else Yarn = row.YarnAfter;
    }
}
