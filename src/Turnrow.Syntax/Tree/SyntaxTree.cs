using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Tree;

/// <summary>A file, read: its text, every token and every line, and what was wrong with its letters and words.</summary>
/// <param name="Source">The text.</param>
/// <param name="Tokens">All tokens, white space, comments and line ends included; end to end they are the text.</param>
/// <param name="Lines">The lines that hold statements or could not be read, in order; blank and comment lines have none.</param>
/// <param name="Diagnostics">What was found while reading.</param>
public sealed record SyntaxTree(
    SourceText Source,
    IReadOnlyList<Token> Tokens,
    IReadOnlyList<LineSyntax> Lines,
    IReadOnlyList<Diagnostic> Diagnostics);

/// <summary>A line, with those it goes on to.</summary>
/// <param name="Statement">
/// What it says. Where <paramref name="Broken"/>, what could be made out (a piece with its name, an
/// <see cref="UnfinishedStatement"/>), or null.
/// </param>
/// <param name="Keyword">The statement word that the line begins with, as the grammar spells it (<c>row</c>); null for none.</param>
/// <param name="Broken">
/// True if the line could not be read to its end, or says something that can be meant in two ways; a diagnostic says why.
/// </param>
/// <param name="Span">Where it stands, comments and line end left out.</param>
public sealed record LineSyntax(StatementSyntax? Statement, string? Keyword, bool Broken, TextSpan Span);

/// <summary>The smallest piece of text with a meaning, or one without (white space, a comment).</summary>
public readonly record struct Token(TokenKind Kind, TextSpan Span);

/// <summary>Kinds of token, as far as a formatter or an editor tells them apart.</summary>
public enum TokenKind
{
    /// <summary>Spaces and tabs.</summary>
    WhiteSpace,

    /// <summary><c>#</c> to the line's end.</summary>
    Comment,

    /// <summary>A line end.</summary>
    LineEnd,

    /// <summary>A word of the notation.</summary>
    Keyword,

    /// <summary>Any other word.</summary>
    Word,

    /// <summary>A number.</summary>
    Number,

    /// <summary>A text in quotes.</summary>
    Quoted,

    /// <summary>A <c>&gt;</c> line.</summary>
    Prose,

    /// <summary>A row of a picture, <c>| . x . |</c>.</summary>
    Picture,

    /// <summary>A sign: comma, colon, bracket, operator.</summary>
    Sign,

    /// <summary>What no word of the notation begins with, or a line too long to be read.</summary>
    Junk,

    /// <summary>A byte order mark at the file's beginning.</summary>
    ByteOrderMark,
}
