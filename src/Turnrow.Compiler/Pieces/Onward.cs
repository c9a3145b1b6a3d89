using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Pieces;

/// <summary>
/// What a piece goes on with in a size: rows of one plain stitch, or the rows of a stitch pattern from one of them on. Neither, where it is not
/// known.
/// </summary>
/// <param name="Plain">The plain stitch; null for none.</param>
/// <param name="Pattern">The stitch pattern; null for none.</param>
/// <param name="Next">Index of the pattern's row that comes next.</param>
/// <param name="Places">Places that its first row was, or will be, worked over.</param>
internal sealed record Onward(Stitch? Plain, StitchPattern? Pattern, int Next, int Places)
{
    private Dictionary<(int Index, int Places), WordsPlan>? _rows;
    private RowPlan? _plain;

    /// <summary>Nothing is known.</summary>
    public static Onward Unknown { get; } = new(null, null, 0, 0);

    /// <summary>What turns the pattern's rows round, in a piece that mirrors another and goes on with them; null in any other.</summary>
    public MirroredRows? Mirrored { get; init; }

    /// <summary>The piece that goes on, by which stitches left and added at its edges make it narrower or wider.</summary>
    public PieceBuilder? Builder { get; init; }

    /// <summary>What its gauge is of; null where it is not known.</summary>
    public Stitch? Fabric => Pattern?.Fabric ?? Plain;

    /// <summary>The row that comes after so many others, asked for when it is to be worked; null where it is not known.</summary>
    public RowPlan? PlanOf(int ordinal)
    {
        if (Pattern is not { } pattern) return _plain ??= Plain is { } stitch ? ShapedPlan.Plain(stitch) : null;
        var index = pattern.IndexOf(Next + ordinal);
        _rows ??= [];
        var key = (index, Width());
        if (!_rows.TryGetValue(key, out var plan))
            _rows[key] = plan = new WordsPlan(pattern.Rows[index].Words) { Of = new InPattern(pattern, index, key.Item2) };
        return Mirrored is { } mirrored ? mirrored.Of(plan) : plan;
    }

    // As wide as the row before, unless stitches were left or added since.
    private int Width()
    {
        if (Builder is not { LastInPattern: { } last, LastWork: { } work, Ahead: { } ahead } || !ReferenceEquals(last.Pattern, Pattern)) return Places;
        return ahead.Count == work.Tops.Count ? last.Places : last.Pattern.WidthOver(last.Index, ahead.Count) ?? last.Places;
    }

    /// <summary>Goes on behind a row of a stitch pattern.</summary>
    public static Onward Behind(PieceBuilder builder, InPattern last) =>
        new(null, last.Pattern, last.Next, last.Places) { Builder = builder, Mirrored = last.IsMirrored ? new MirroredRows(builder) : null };
}

/// <summary>Finds what a piece goes on with.</summary>
internal static class Onwards
{
    /// <summary>What each size goes on with. Reported are a stitch pattern that can't be worked here, and a last row that is not plain where none is named.</summary>
    /// <param name="context">What the file says.</param>
    /// <param name="piece">The piece.</param>
    /// <param name="line">The whole line.</param>
    /// <param name="word">Its first word.</param>
    /// <param name="named">The stitch pattern that it names; null for none.</param>
    /// <param name="counted">The word by which it counts rows or rounds; null if it does not.</param>
    public static Onward[] Of(Context context, PieceState piece, TextSpan line, string word, NameSyntax? named, NameSyntax? counted)
    {
        if (named is not null) return InNamed(context, piece, named, counted);
        var inPattern = Sized.Each(context.Sizes, i => piece.Builders[i] is { RowsInDoubt: false, LastInPattern: { } last } ? last : null);
        var changed = Sized.Where(context.Sizes, i => inPattern[i]?.Pattern is { Way: { } way } && (way == RoundWay.Turned) != (piece.Builders[i].RoundsAre == RoundWay.Turned));
        if (changed.Length > 0)
        {
            context.Findings.Add(PictureRounds.Begun(line, inPattern[changed[0]]!.Pattern));
            return Sized.Same(context.Sizes, Onward.Unknown);
        }

        var stitches = PlainCheck.Stitches(context, piece, line, word, i => inPattern[i] is null);
        return Sized.Each(context.Sizes, i => inPattern[i] is { } last ? Onward.Behind(piece.Builders[i], last)
            : stitches[i] is { } stitch ? new Onward(stitch, null, 0, 0) : Onward.Unknown);
    }

    private static Onward[] InNamed(Context context, PieceState piece, NameSyntax named, NameSyntax? counted)
    {
        if (context.StitchPatternOf(named) is not { } written || AsWorkedHere(context, piece, written, named, counted) is not { } pattern) return Sized.Same(context.Sizes, Onward.Unknown);
        foreach (var builder in piece.Builders) Prepare(builder, pattern);
        if (!IsWorkedThatWay(context, piece, pattern, named)) return Sized.Same(context.Sizes, Onward.Unknown);
        var onward = Sized.Each(context.Sizes, i => GoesOn(piece.Builders[i], pattern) ?? Begin(piece.Builders[i], pattern));
        var misfit = Sized.Where(context.Sizes, i => onward[i] is { Next: 0, Places: var places } && places >= 0 && GoesOn(piece.Builders[i], pattern) is null && !pattern.Fits(places));
        if (misfit.Length > 0) context.Findings.Add(PatternCount.At(context, named.Span, piece, pattern, misfit, i => onward[i].Places));
        foreach (var i in misfit) onward[i] = Onward.Unknown;
        return onward;
    }

    // A picture is a picture in rows and in rounds; only the way in which its lines are read is another. A piece that has no row yet is worked in what
    // the line counts.
    private static StitchPattern? AsWorkedHere(Context context, PieceState piece, StitchPattern written, NameSyntax named, NameSyntax? counted)
    {
        var lead = piece.Lead;
        var inRounds = lead.RowCount == 0 ? lead.InRounds || (counted is not null && RowsOrRounds.SaysRounds(counted)) : lead.InRounds;
        if (!inRounds || context.StitchPatterns.InRounds(named.Text, lead.RoundsAre) is not { } made) return written;
        if (made.Pattern is null) context.Findings.Add(PictureRounds.At(named.Span, written.Name, made.Against));
        return made.Pattern;
    }

    // A piece that has no row yet is worked as its first stitch pattern is, and begins with its side.
    private static void Prepare(PieceBuilder builder, StitchPattern pattern)
    {
        if (builder.RowCount == 0) builder.WorkInRounds(pattern.IsRound);
        if (GoesOn(builder, pattern) is null && pattern.Rows[0].RightSide is { } side) builder.BeginOnSide(side);
    }

    private static bool IsWorkedThatWay(Context context, PieceState piece, StitchPattern pattern, NameSyntax named)
    {
        var otherWay = Sized.Where(context.Sizes, i => !piece.Builders[i].RowsInDoubt && piece.Builders[i].InRounds != pattern.IsRound);
        if (otherWay.Length > 0)
        {
            context.Findings.Add(PatternHere.OtherWay(context, named.Span, piece, pattern, otherWay));
            return false;
        }

        var otherSide = Sized.Where(context.Sizes, i => !piece.Builders[i].RowsInDoubt && GoesOn(piece.Builders[i], pattern) is null
            && pattern.Rows[0].RightSide is { } side && side != piece.Builders[i].NextIsRightSide);
        if (otherSide.Length == 0) return true;
        context.Findings.Add(PatternHere.OtherSide(context, named.Span, piece, pattern, otherSide));
        return false;
    }

    private static Onward? GoesOn(PieceBuilder builder, StitchPattern pattern) =>
        builder.LastInPattern is { } last && ReferenceEquals(last.Pattern, pattern) && !builder.RowsInDoubt ? Onward.Behind(builder, last) : null;

    // Places below 0: not known, and so not checked.
    private static Onward Begin(PieceBuilder builder, StitchPattern pattern) =>
        new(null, pattern, 0, builder.AheadFor(pattern.Rows[0].Words)?.Count ?? -1) { Builder = builder };
}
