using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;

namespace Turnrow.Fabric.Patterns;

/// <summary>A whole pattern, known in every row and size: all that is ever published is read off it.</summary>
public sealed record Pattern
{
    /// <summary>The title; empty if the file gives none.</summary>
    public string Title { get; init; } = string.Empty;

    /// <summary>The version as written; null if the file gives none.</summary>
    public string? Version { get; init; }

    /// <summary>Whose words the file uses.</summary>
    public Terms Terms { get; init; }

    /// <summary>The sizes' names, smallest first; one empty name for a pattern without sizes.</summary>
    public IReadOnlyList<string> Sizes { get; init; } = [];

    /// <summary>The skill level as written; null if the file gives none.</summary>
    public string? Skill { get; init; }

    /// <summary>Who wears it, as far as cautions go.</summary>
    public Wearer Wearer { get; init; }

    /// <summary>Notions (buttons, markers …) as written.</summary>
    public IReadOnlyList<string> Notions { get; init; } = [];

    /// <summary>The yarns.</summary>
    public IReadOnlyList<Yarn> Yarns { get; init; } = [];

    /// <summary>The most stitches that a yarn may be carried over.</summary>
    public int MostFloat { get; init; } = CustomaryFloat;

    /// <summary>The same where the pattern does not say; common practice.</summary>
    public const int CustomaryFloat = 5;

    /// <summary>The swatches that were weighed.</summary>
    public IReadOnlyList<Swatch> Swatches { get; init; } = [];

    /// <summary>Hook size in millimetres; null if the file gives none.</summary>
    public Rational? HookMillimetres { get; init; }

    /// <summary>The gauges.</summary>
    public GaugeBook Gauges { get; init; } = new([]);

    /// <summary>The turning-chain rules that the pattern states for itself, in order.</summary>
    public IReadOnlyList<KeyValuePair<Stitch, TurnRule>> TurnRules { get; init; } = [];

    /// <summary>What the pattern's counts take in.</summary>
    public Counting Counting { get; init; }

    /// <summary>Body measurements the pattern is made for.</summary>
    public IReadOnlyList<Measure> Measures { get; init; } = [];

    /// <summary>Where the body measurements are from, if a table gives them; null if not.</summary>
    public string? BodySource { get; init; }

    /// <summary>How the numbers of that table came here; null where nothing is said.</summary>
    public string? BodyRemark { get; init; }

    /// <summary>What the finished garment measures, where the pattern says at which places.</summary>
    public IReadOnlyList<FinishedMeasure> Finished { get; init; } = [];

    /// <summary>The finished measure that a size is chosen by: the first that goes round the body; null if there is none.</summary>
    public FinishedMeasure? ChosenBy
    {
        get
        {
            for (var i = 0; i < Finished.Count; i++)
            {
                if (Finished[i] is { Ease: not null, Over: null, Along: false }) return Finished[i];
            }

            return null;
        }
    }

    /// <summary>Lengths that became counts, with what was asked for.</summary>
    public IReadOnlyList<FittedCount> FittedCounts { get; init; } = [];

    /// <summary>The counts that the pattern gives a name, in the file's order, as far as they are known in every size.</summary>
    public IReadOnlyList<NamedCount> Counts { get; init; } = [];

    /// <summary>What the pieces of the finished sample measure; the designer's own knowledge, not the maker's.</summary>
    public IReadOnlyList<MadePiece> Made { get; init; } = [];

    /// <summary>The lines between the header and the end, in the file's order: prose, pieces, seams, finishing.</summary>
    public IReadOnlyList<PatternItem> Items { get; init; } = [];

    /// <summary>The pieces in order.</summary>
    public IEnumerable<PieceInSizes> Pieces => Items.OfType<PieceInSizes>();

    /// <summary>The blankets of motifs, in order.</summary>
    public IEnumerable<BlanketInSizes> Blankets => Items.OfType<BlanketInSizes>();

    /// <summary>Number of errors found in the file; a pattern with errors is a draft.</summary>
    public int Errors { get; init; }

    /// <summary>True if the designer thinks in inches: the file's first gauge or measure is in inches or yards.</summary>
    public bool InInches { get; init; }
}

/// <summary>Who wears a garment, as far as cautions go.</summary>
public enum Wearer
{
    /// <summary>Not said.</summary>
    Unsaid,

    /// <summary>Grown up.</summary>
    Adult,

    /// <summary>A child.</summary>
    Child,

    /// <summary>A baby.</summary>
    Baby,
}

/// <summary>A yarn; masses and lengths are a ball's.</summary>
/// <param name="Name">What the pattern calls it.</param>
/// <param name="Description">What it is, as written; null if unsaid.</param>
/// <param name="Weight">Number in the published standard of yarn weights; null if unsaid.</param>
/// <param name="Grams">Grams a ball; null if unsaid.</param>
/// <param name="Metres">Metres a ball; null if unsaid.</param>
public sealed record Yarn(string Name, string? Description, int? Weight, Rational? Grams, Rational? Metres)
{
    /// <summary>How many in a hundred are reckoned on top for seams, ends and the maker's hand; null for none.</summary>
    public Rational? Extra { get; init; }
}

/// <summary>A measurement in all sizes, in centimetres.</summary>
public sealed record Measure(string Name, IReadOnlyList<Rational> Centimetres)
{
    /// <summary>True if a table of bodies gives it, false if the designer does.</summary>
    public bool OfTable { get; init; }

    /// <summary>Where a table has it from, where that is not the table's own source; null otherwise.</summary>
    public string? Source { get; init; }
}

/// <summary>A count that has a name, a size.</summary>
public sealed record NamedCount(string Name, IReadOnlyList<int> Counts);

/// <summary>A count that stands for a length, a size: what was asked, and what it measures.</summary>
/// <param name="Name">The count's name.</param>
/// <param name="OfRows">True for rows, false for stitches.</param>
/// <param name="Stitch">The fabric.</param>
/// <param name="Asked">Centimetres asked for, a size.</param>
/// <param name="Counts">The counts, a size.</param>
/// <param name="Measured">Centimetres that the counts measure, a size.</param>
public sealed record FittedCount(
    string Name, bool OfRows, Stitch Stitch, IReadOnlyList<Rational> Asked, IReadOnlyList<int> Counts, IReadOnlyList<Rational> Measured);

/// <summary>Something that the file says outside its header.</summary>
public abstract record PatternItem;

/// <summary>A piece in all sizes.</summary>
/// <param name="Name">Its name as written: <c>right-front</c>.</param>
/// <param name="InSizes">The piece, a size.</param>
/// <param name="Passages">What its lines are, in order.</param>
/// <param name="MirrorOf">The name of the piece that it mirrors; null for none.</param>
public sealed record PieceInSizes(
    string Name, IReadOnlyList<Piece> InSizes, IReadOnlyList<Passage> Passages, string? MirrorOf) : PatternItem
{
    /// <summary>How often it is made.</summary>
    public int Copies { get; init; } = 1;
}

/// <summary>A blanket of motifs in all sizes; a size without it (an error) has null.</summary>
/// <param name="Name">Its name as written.</param>
/// <param name="Motifs">Its kinds of motif; several take turns.</param>
/// <param name="InSizes">The blanket, a size.</param>
public sealed record BlanketInSizes(string Name, IReadOnlyList<string> Motifs, IReadOnlyList<Motifs.Blanket?> InSizes) : PatternItem;

/// <summary>A seam in all sizes; a size without it (an error) has null.</summary>
public sealed record SeamInSizes(IReadOnlyList<Seam?> InSizes) : PatternItem;

/// <summary>A line of prose for the maker.</summary>
public sealed record ProseItem(string Text) : PatternItem;

/// <summary>Weave in the ends.</summary>
public sealed record WeaveInItem : PatternItem;

/// <summary>What a line of a piece is.</summary>
public abstract record Passage;

/// <summary>A line that makes rows: those whose <see cref="Rows.Row.Origin"/> holds <paramref name="Line"/>.</summary>
/// <param name="Line">The line, opaque.</param>
/// <param name="Heading">The edge name that begins here, if one does (<c>armhole</c>); null for none.</param>
public sealed record RowsPassage(object Line, string? Heading) : Passage
{
    /// <summary>The sizes in which that name begins here; null for all.</summary>
    public IReadOnlyList<int>? HeadingSizes { get; init; }
}

/// <summary>A line of prose for the maker, before the rows that follow.</summary>
public sealed record ProsePassage(string Text) : Passage;

/// <summary>The yarn is cut.</summary>
public sealed record FastenOffPassage : Passage;
