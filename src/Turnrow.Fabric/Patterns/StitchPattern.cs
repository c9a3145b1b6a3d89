using System.Runtime.CompilerServices;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Shaping;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Patterns;

/// <summary>
/// A stitch pattern: rows over so many repeats of some places and a few places more. A piece that is worked in it works its rows one after
/// the other, and then those again that repeat.
/// </summary>
/// <param name="Name">What the designer calls it.</param>
/// <param name="Multiple">Places of one repeat.</param>
/// <param name="Plus">Places beside the repeats.</param>
/// <param name="Rows">Its rows, from the first; at least one.</param>
/// <param name="RepeatFrom">Index of the first of the rows that come again when all are worked.</param>
public sealed record StitchPattern(string Name, int Multiple, int Plus, IReadOnlyList<StitchPatternRow> Rows, int RepeatFrom)
{
    private (int PerRepeat, int Plus)?[]? _made;

    /// <summary>The fewest repeats that it can be worked over.</summary>
    public int Least { get; init; } = 1;

    /// <summary>True if it is worked in rounds.</summary>
    public bool IsRound => Rows[0].IsRound;

    /// <summary>Of a picture in rounds, how they follow each other, since its lines are read that way; null where it does not matter.</summary>
    public RoundWay? Way { get; init; }

    /// <summary>
    /// What its gauge is of: a stitch pattern is a fabric of its own, as plain rows of one stitch are, and goes by a name of its own wherever
    /// fabrics are told apart.
    /// </summary>
    public Stitch Fabric { get; } = FabricOf(Name, Rows);

    /// <summary>One object stands for each: comparing two asks for no more than that.</summary>
    public bool Equals(StitchPattern? other) => ReferenceEquals(this, other);

    /// <inheritdoc/>
    public override int GetHashCode() => RuntimeHelpers.GetHashCode(this);

    /// <summary>True if a row over so many places is a whole number of repeats, and not too few.</summary>
    public bool Fits(int places) => places >= (Multiple * Least) + Plus && (places - Plus) % Multiple == 0;

    /// <summary>The largest count that fits and is not above <paramref name="places"/>, and the next one; the first is null where none is that small.</summary>
    public (int? Below, int Above) Around(int places)
    {
        var repeats = Math.Max(0, places - Plus) / Multiple;
        return (repeats >= Least ? (repeats * Multiple) + Plus : null, (Math.Max(repeats + 1, Least) * Multiple) + Plus);
    }

    /// <summary>Index of a row, when so many were worked before it.</summary>
    public int IndexOf(int worked) => worked < Rows.Count ? worked : RepeatFrom + ((worked - Rows.Count) % (Rows.Count - RepeatFrom));

    /// <summary>How many places a row of it makes for each repeat, and how many beside them; null if that is not known.</summary>
    public (int PerRepeat, int Plus)? PlacesMadeBy(int index)
    {
        if (_made is null)
        {
            var (few, more) = (new PatternAlone(this, Least, NoRules), new PatternAlone(this, Least + 1, NoRules));
            var made = new (int, int)?[Rows.Count];
            for (var i = 0; i < made.Length; i++)
            {
                if (few.Tops(i)?.Count is not { } a || more.Tops(i)?.Count is not { } b || b <= a) continue;
                made[i] = (b - a, a - (Least * (b - a)));
            }

            _made = made;
        }

        return _made[index];
    }

    /// <summary>How wide a piece is, in places of the pattern's first row, that has so many places after a row of it.</summary>
    public int? WidthOver(int index, int places) =>
        PlacesMadeBy(index) is { } made ? (int)Math.Round((double)Multiple * (places - made.Plus) / made.PerRepeat, MidpointRounding.AwayFromZero) + Plus : null;

    // Counts do not depend on turning chains.
    private static readonly Dictionary<Stitch, TurnRule> NoRules = [];

    // Its turning chains and its height are its first stitch's, as far as anyone asks a fabric for them.
    private static Stitch FabricOf(string name, IReadOnlyList<StitchPatternRow> rows)
    {
        var first = rows.Count > 0 ? Openings.FirstStitch(rows[0].Words) ?? StitchBook.Single : StitchBook.Single;
        return first with { Id = name, Us = new StitchName(name, name), Uk = new StitchName(name, name) };
    }
}

/// <summary>A row of a stitch pattern.</summary>
/// <param name="Words">Its words.</param>
/// <param name="RightSide">The side that it has; null where it may have either.</param>
/// <param name="IsRound">True if it is a round.</param>
public sealed record StitchPatternRow(IReadOnlyList<Word> Words, bool? RightSide, bool IsRound);

/// <summary>Where a row of a piece stands in a stitch pattern.</summary>
/// <param name="Pattern">The pattern.</param>
/// <param name="Index">Index of the pattern's row.</param>
/// <param name="Places">Places that the pattern's first row was worked over: the width of the whole.</param>
public sealed record InPattern(StitchPattern Pattern, int Index, int Places)
{
    /// <summary>True if the row is worked from its other end, in a piece that mirrors another.</summary>
    public bool IsMirrored { get; init; }

    /// <summary>The stitch of the plain edges beside it; null where it goes from edge to edge.</summary>
    public Stitch? Edge { get; init; }

    /// <summary>Where the piece stands after the row, if it has such edges.</summary>
    public EdgedState State { get; init; }

    /// <summary>Stitches more at the right edge in this row; below 0 for fewer.</summary>
    public int RightChange { get; init; }

    /// <summary>Stitches more at the left edge in this row; below 0 for fewer.</summary>
    public int LeftChange { get; init; }

    /// <summary>The change at an edge.</summary>
    public int ChangeAt(Hand hand) => hand == Hand.Right ? RightChange : LeftChange;

    /// <summary>The same in a piece that mirrors another.</summary>
    public InPattern Mirrored() => this with { IsMirrored = !IsMirrored, RightChange = LeftChange, LeftChange = RightChange };

    /// <summary>The index of the row that comes next.</summary>
    public int Next => Pattern.IndexOf(Index + 1);
}
