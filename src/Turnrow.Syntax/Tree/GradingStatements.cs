using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Tree;

/// <summary><c>body women, cm</c>: a published table of body measures; <c>body "my-sizes.csv"</c>: the designer's own, in a file beside.</summary>
/// <param name="Table">The published table's name; null for a file.</param>
/// <param name="Unit">The unit it is read in; null for a file, which says its own.</param>
/// <param name="File">The file's name; null for a published table.</param>
/// <param name="Span">Where it stands.</param>
public sealed record BodyStatement(NameSyntax? Table, UnitSyntax? Unit, QuotedSyntax? File, TextSpan Span) : StatementSyntax(Span);

/// <summary>
/// <c>ease bust is 5 cm</c>, <c>ease bust is classic</c>: how much wider than the body the garment is meant to be; <c>5 cm less</c>: how
/// much narrower.
/// </summary>
public sealed record EaseStatement(NameSyntax Name, ExpressionSyntax Value, bool Less, TextSpan Span) : StatementSyntax(Span);

/// <summary><c>finished bust is 2 x hem stitches</c>: what the finished garment measures there.</summary>
/// <param name="Name">The measure's name, the same as the body's.</param>
/// <param name="Value">A length, or a count.</param>
/// <param name="Of">What the count counts; <see cref="CountOf.Number"/> for a length.</param>
/// <param name="Stitch">By which stitch's gauge; null for the pattern's only one.</param>
/// <param name="Span">Where it stands.</param>
public sealed record FinishedStatement(NameSyntax Name, ExpressionSyntax Value, CountOf Of, NameSyntax? Stitch, TextSpan Span)
    : StatementSyntax(Span)
{
    /// <summary><c>opens</c>: buttons, laces or a slit make way, so that it need not go over a head or a hand.</summary>
    public bool Opens { get; init; }

    /// <summary><c>stretches by 20 %</c>: how much it gives; null if it is not said.</summary>
    public NumberSyntax? Stretch { get; init; }
}

/// <summary>
/// <c>accept grade-falls: "the straps are one length"</c>, <c>accept grade-falls of strap: "…"</c>: a warning that the designer has
/// thought about.
/// </summary>
/// <param name="Warning">The warning's name or code.</param>
/// <param name="Of">The count, the measure, the finished measure or the piece that it is about; null for all of them.</param>
/// <param name="Reason">Why it is right.</param>
/// <param name="Span">Where it stands.</param>
public sealed record AcceptStatement(NameSyntax Warning, NameSyntax? Of, QuotedSyntax Reason, TextSpan Span) : StatementSyntax(Span);

/// <summary><c>swatch dc: 20 stitches and 10 rows weigh 4.2 g, main</c></summary>
/// <param name="Stitch">The fabric.</param>
/// <param name="Stitches">How many stitches wide.</param>
/// <param name="Rows">How many rows high.</param>
/// <param name="Weight">What it weighs.</param>
/// <param name="InOunces">True for ounces, false for grams.</param>
/// <param name="Yarn">Of which yarn; null for the pattern's first one.</param>
/// <param name="Span">Where it stands.</param>
public sealed record SwatchStatement(
    NameSyntax Stitch, NumberSyntax Stitches, NumberSyntax Rows, NumberSyntax Weight, bool InOunces, NameSyntax? Yarn, TextSpan Span)
    : StatementSyntax(Span)
{
    /// <summary>True of <c>swatch shells: 6 repeats and 12 rows weigh 7 g</c>: repeats of a stitch pattern are counted, not stitches.</summary>
    public bool OfRepeats { get; init; }
}

/// <summary><c>made S: back 45.5 cm wide, 38 cm high</c>: what the finished sample measures.</summary>
public sealed record MadeStatement(NameSyntax Size, NameSyntax Piece, IReadOnlyList<MadePartSyntax> Parts, TextSpan Span) : StatementSyntax(Span);

/// <summary><c>45.5 cm wide</c>, <c>38 cm high</c>.</summary>
public sealed record MadePartSyntax(NumberSyntax Number, UnitSyntax Unit, bool Wide, TextSpan Span) : SyntaxNode(Span);
