using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Tree;

/// <summary><c>use "stitches.turnrow"</c>: the stitch patterns of another file.</summary>
public sealed record UseStatement(QuotedSyntax File, TextSpan Span) : StatementSyntax(Span);

/// <summary><c>stitch pattern lattice over multiple of 6 + 1</c>; its rows follow, a line each.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Multiple">Stitches of one repeat.</param>
/// <param name="Plus">Stitches beside the repeats; null for none.</param>
/// <param name="Span">Where it stands.</param>
public sealed record StitchPatternStatement(NameSyntax Name, NumberSyntax Multiple, NumberSyntax? Plus, TextSpan Span) : StatementSyntax(Span)
{
    /// <summary>True of <c>from picture</c>: its rows are those of a picture, whose letters the key explains.</summary>
    public bool FromPicture { get; init; }

    /// <summary><c>from picture in sc</c>: the stitch of letters that are yarns; null if unsaid.</summary>
    public NameSyntax? Stitch { get; init; }
}

/// <summary><c>repeat rows 2 to 5</c>: which rows of a stitch pattern come again and again.</summary>
/// <param name="Rows">The rows.</param>
/// <param name="Span">Where it stands.</param>
public sealed record PatternRepeatStatement(RepeatedRowsSyntax Rows, TextSpan Span) : StatementSyntax(Span);

/// <summary>
/// <c>key "x" is (dc 3)</c>: what a letter of a picture stands for; <c>key first is (dc)</c>, <c>key last is (dc)</c>: what each row begins and
/// ends with.
/// </summary>
/// <param name="Letter">The letter; of what each row begins or ends with, the word <c>first</c> or <c>last</c>.</param>
/// <param name="Place">What it is the key of.</param>
/// <param name="Items">The words.</param>
/// <param name="Span">Where it stands.</param>
public sealed record KeyStatement(NameSyntax Letter, KeyPlace Place, IReadOnlyList<RowItemSyntax> Items, TextSpan Span) : StatementSyntax(Span)
{
    /// <summary>True of <c>key "x" is navy</c>: a plain stitch of this yarn, which is the one item.</summary>
    public bool IsYarn { get; init; }
}

/// <summary>What a key explains.</summary>
public enum KeyPlace
{
    /// <summary>A letter of the picture.</summary>
    Letter,

    /// <summary>What each row begins with.</summary>
    First,

    /// <summary>What each row ends with.</summary>
    Last,
}

/// <summary><c>| . x x . |</c>: a row of a picture.</summary>
/// <param name="Cells">Its letters, from left to right.</param>
/// <param name="Span">Where it stands.</param>
public sealed record PictureRowStatement(IReadOnlyList<NameSyntax> Cells, TextSpan Span) : StatementSyntax(Span);
