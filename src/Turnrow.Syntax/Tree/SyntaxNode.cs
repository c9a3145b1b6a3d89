using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Tree;

/// <summary>A part of the tree: what a designer wrote, and where. Nodes are immutable and know no meaning.</summary>
/// <param name="Span">Where it stands, without the white space and comments around it.</param>
public abstract record SyntaxNode(TextSpan Span);

/// <summary>A word that the designer uses as a name or that the notation gives a meaning by its place.</summary>
/// <param name="Text">The word as written (letter case kept).</param>
/// <param name="Span">Where it stands.</param>
public sealed record NameSyntax(string Text, TextSpan Span) : SyntaxNode(Span);

/// <summary>A number, exact: <c>12</c>, <c>1.5</c>, <c>1/2</c>, <c>7 1/2</c>, <c>7½</c>.</summary>
/// <param name="Numerator">Numerator in lowest terms.</param>
/// <param name="Denominator">Denominator, at least 1.</param>
/// <param name="Span">Where it stands.</param>
public sealed record NumberSyntax(long Numerator, long Denominator, TextSpan Span) : SyntaxNode(Span);

/// <summary>A text in quotes, without the quotes.</summary>
/// <param name="Text">What stands between the quotes.</param>
/// <param name="Span">Where it stands, quotes included.</param>
public sealed record QuotedSyntax(string Text, TextSpan Span) : SyntaxNode(Span);

/// <summary>A length unit.</summary>
public enum LengthUnit
{
    /// <summary>Millimetre.</summary>
    Millimetre,

    /// <summary>Centimetre.</summary>
    Centimetre,

    /// <summary>Inch (2.54 cm).</summary>
    Inch,

    /// <summary>Metre.</summary>
    Metre,

    /// <summary>Yard (91.44 cm).</summary>
    Yard,
}

/// <summary>A unit written behind a number.</summary>
public sealed record UnitSyntax(LengthUnit Unit, TextSpan Span) : SyntaxNode(Span);
