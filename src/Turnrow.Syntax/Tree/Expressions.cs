using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Tree;

/// <summary>A number, a length, or a sum of such.</summary>
public abstract record ExpressionSyntax(TextSpan Span) : SyntaxNode(Span);

/// <summary><c>12</c> or <c>2 cm</c>.</summary>
public sealed record NumberExpression(NumberSyntax Number, UnitSyntax? Unit, TextSpan Span) : ExpressionSyntax(Span);

/// <summary>A list in sizes: <c>5 (6, 7, 8) cm</c>. The first size's value comes first in <paramref name="Values"/>.</summary>
public sealed record SizesExpression(IReadOnlyList<NumberSyntax> Values, UnitSyntax? Unit, TextSpan Span)
    : ExpressionSyntax(Span);

/// <summary>A name that stands for a value.</summary>
public sealed record NameExpression(NameSyntax Name, TextSpan Span) : ExpressionSyntax(Span);

/// <summary>How many rows or stitches a piece has: <c>back rows</c>, <c>back stitches</c>.</summary>
public sealed record PieceExpression(NameSyntax Piece, PieceQuantity Quantity, TextSpan Span) : ExpressionSyntax(Span)
{
    /// <summary>Of <c>tile first side stitches</c> the word that says which side; null for the whole last row.</summary>
    public NameSyntax? Side { get; init; }
}

/// <summary>What can be asked of a finished piece.</summary>
public enum PieceQuantity
{
    /// <summary>Number of rows.</summary>
    Rows,

    /// <summary>Stitches of the last row.</summary>
    Stitches,
}

/// <summary>
/// A sum (<c>a + b - c</c>) or a product (<c>a x b / c</c>). A flat list, so that a sum of 100,000 terms is no deeper
/// than one of two. A sum holds products, a product holds single terms and brackets.
/// </summary>
public sealed record CalculationExpression(
    ExpressionSyntax First, IReadOnlyList<OperationSyntax> Rest, TextSpan Span) : ExpressionSyntax(Span);

/// <summary>An operator and what stands behind it.</summary>
public sealed record OperationSyntax(Operator Operator, ExpressionSyntax Operand, TextSpan Span) : SyntaxNode(Span);

/// <summary>The four operators; each has a space on both sides in the text.</summary>
public enum Operator
{
    /// <summary><c>+</c></summary>
    Plus,

    /// <summary><c>-</c></summary>
    Minus,

    /// <summary><c>x</c> or <c>×</c></summary>
    Times,

    /// <summary><c>/</c></summary>
    Over,
}
