using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Tree;

/// <summary><c>notation 1</c></summary>
public sealed record NotationStatement(NumberSyntax Number, TextSpan Span) : StatementSyntax(Span);

/// <summary><c>pattern "Fenland Wrap Waistcoat"</c></summary>
public sealed record PatternStatement(QuotedSyntax Title, TextSpan Span) : StatementSyntax(Span);

/// <summary><c>version 1.10</c>: text, so that 1.10 is not 1.1.</summary>
public sealed record VersionStatement(NameSyntax Version, TextSpan Span) : StatementSyntax(Span);

/// <summary><c>terms US</c></summary>
public sealed record TermsStatement(NameSyntax Terms, TextSpan Span) : StatementSyntax(Span);

/// <summary><c>sizes XS, S, "6-9 months"</c>; one named size alone is a list of one.</summary>
public sealed record SizesStatement(IReadOnlyList<NameSyntax> Names, TextSpan Span) : StatementSyntax(Span);

/// <summary><c>skill "easy"</c></summary>
public sealed record SkillStatement(QuotedSyntax Text, TextSpan Span) : StatementSyntax(Span);

/// <summary><c>notion "4 buttons"</c></summary>
public sealed record NotionStatement(QuotedSyntax Text, TextSpan Span) : StatementSyntax(Span);

/// <summary><c>wearer child</c>, <c>wearer baby</c>, <c>wearer adult</c>: decides which cautions are printed.</summary>
public sealed record WearerStatement(NameSyntax Wearer, TextSpan Span) : StatementSyntax(Span);

/// <summary>A line of prose for the maker, <c>&gt; …</c>, without its sign.</summary>
public sealed record ProseStatement(string Text, TextSpan Span) : StatementSyntax(Span);

/// <summary><c>yarn main "sport cotton", weight 2, 50 g, 125 m</c></summary>
public sealed record YarnStatement(
    NameSyntax Name, QuotedSyntax? Description, IReadOnlyList<YarnFactSyntax> Facts, TextSpan Span) : StatementSyntax(Span);

/// <summary><c>weight 2</c>, <c>50 g</c>, <c>125 m</c>, <c>10 % extra</c>.</summary>
public sealed record YarnFactSyntax(YarnFact Fact, NumberSyntax Number, TextSpan Span) : SyntaxNode(Span);

/// <summary>What is said of a yarn; masses and lengths are a ball's.</summary>
public enum YarnFact
{
    /// <summary>Number in the published standard of yarn weights.</summary>
    Weight,

    /// <summary>Grams a ball.</summary>
    Grams,

    /// <summary>Ounces a ball.</summary>
    Ounces,

    /// <summary>Metres a ball.</summary>
    Metres,

    /// <summary>Yards a ball.</summary>
    Yards,

    /// <summary>How many in a hundred are reckoned on top of what the swatch gives.</summary>
    Extra,
}

/// <summary><c>claims without turning chain</c>, <c>claims with chains</c>: how all claims of the file count.</summary>
public sealed record ClaimsStatement(ClaimScope Scope, TextSpan Span) : StatementSyntax(Span);

/// <summary><c>stitch shell "SH" is (5 dc) in one place, centre is 3rd dc</c>; <c>stitch fan of n is (n tr) in one place</c></summary>
/// <param name="Name">The stitch's name.</param>
/// <param name="Number">The name of its number; null if it has none.</param>
/// <param name="Abbreviation">What print writes; null for the name.</param>
/// <param name="Items">What it is made of.</param>
/// <param name="Span">Where it stands.</param>
public sealed record StitchStatement(
    NameSyntax Name, NameSyntax? Number, QuotedSyntax? Abbreviation, IReadOnlyList<RowItemSyntax> Items, TextSpan Span) : StatementSyntax(Span);

/// <summary><c>hook 3.5 mm</c></summary>
public sealed record HookStatement(NumberSyntax Millimetres, TextSpan Span) : StatementSyntax(Span);

/// <summary><c>gauge dc: 19 stitches and 10 rows to 10 cm</c>; <c>gauge sc: 18 stitches to 4 in, 11 rows to 3 in</c>.</summary>
public sealed record GaugeStatement(NameSyntax Stitch, GaugeSpanSyntax Stitches, GaugeSpanSyntax Rows, TextSpan Span)
    : StatementSyntax(Span)
{
    /// <summary>True of <c>gauge lattice: 3 repeats and 8 rows to 10 cm</c>: repeats of a stitch pattern are counted, not stitches.</summary>
    public bool OfRepeats { get; init; }
}

/// <summary>A number over a length.</summary>
public sealed record GaugeSpanSyntax(NumberSyntax Count, NumberSyntax Length, UnitSyntax Unit, TextSpan Span) : SyntaxNode(Span);

/// <summary><c>turn dc: ch 3 counts, first stitch in 5th chain, not in the foundation</c></summary>
/// <param name="Stitch">The stitch whose rule it is.</param>
/// <param name="NextRowOnly">True with <c>, next row</c> behind the stitch: it holds for the next row alone.</param>
/// <param name="Chains">Number of chains.</param>
/// <param name="Counts">Whether they count as a stitch; null if unsaid (the stitch's custom).</param>
/// <param name="NotInFoundation">With <c>not in the foundation</c>, the counting is the other way round there.</param>
/// <param name="FirstStitchIn">Which chain from the hook the first stitch goes into; null for the one after the chain's.</param>
/// <param name="Span">Where it stands.</param>
public sealed record TurnStatement(
    NameSyntax Stitch,
    bool NextRowOnly,
    NumberSyntax Chains,
    bool? Counts,
    bool NotInFoundation,
    NumberSyntax? FirstStitchIn,
    TextSpan Span) : StatementSyntax(Span);

/// <summary><c>measure bust is 76 (86, 97) cm</c></summary>
public sealed record MeasureStatement(NameSyntax Name, ExpressionSyntax Value, TextSpan Span) : StatementSyntax(Span);

/// <summary>
/// <c>count hem is stitches for bust / 2 + 2 cm, odd</c>; <c>count drop is 4 (7, 9)</c>; <c>count n is sc stitches for 10 in</c>.
/// </summary>
/// <param name="Name">The count's name.</param>
/// <param name="Of">What a length becomes: stitches, rows, or nothing (then <paramref name="Value"/> is a plain number).</param>
/// <param name="OfWord">The word that says so, <c>stitches</c> or <c>rows</c>; null with a plain number.</param>
/// <param name="Stitch">By which stitch's gauge; null for the pattern's only one.</param>
/// <param name="Value">Number or length.</param>
/// <param name="Fixes">Which counts are allowed.</param>
/// <param name="Span">Where it stands.</param>
public sealed record CountStatement(
    NameSyntax Name,
    CountOf Of,
    NameSyntax? OfWord,
    NameSyntax? Stitch,
    ExpressionSyntax Value,
    IReadOnlyList<CountFixSyntax> Fixes,
    TextSpan Span) : StatementSyntax(Span)
{
    /// <summary><c>, within 1 cm</c>: how far from the length the count may be without a word; null for any distance.</summary>
    public ExpressionSyntax? Within { get; init; }
}

/// <summary>What a count counts.</summary>
public enum CountOf
{
    /// <summary>A plain number.</summary>
    Number,

    /// <summary><c>stitches for</c> a length.</summary>
    Stitches,

    /// <summary><c>rows for</c> a length.</summary>
    Rows,
}
