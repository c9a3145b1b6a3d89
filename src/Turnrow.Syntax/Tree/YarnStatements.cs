using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Tree;

/// <summary><c>with navy</c>: the yarn in the hand from here on.</summary>
public sealed record YarnInHandStatement(NameSyntax Yarn, TextSpan Span) : StatementSyntax(Span);

/// <summary><c>stripes are navy 2 rows, cream 4 rows</c>: the yarns of all rows from here on, over and over.</summary>
public sealed record StripesStatement(IReadOnlyList<StripeSyntax> Stripes, TextSpan Span) : StatementSyntax(Span);

/// <summary><c>navy 2 rows</c></summary>
public sealed record StripeSyntax(NameSyntax Yarn, ExpressionSyntax Rows, TextSpan Span) : SyntaxNode(Span);

/// <summary><c>floats at most 7 stitches</c>: over how many stitches a yarn may be carried in this pattern.</summary>
public sealed record FloatsStatement(NumberSyntax Most, TextSpan Span) : StatementSyntax(Span);
