using Antlr4.Runtime;
using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Reading;

/// <summary>One line of the file.</summary>
/// <param name="Content">Where it stands, without its line end.</param>
/// <param name="Tokens">The tokens that have a meaning: no white space, no comment.</param>
/// <param name="HasComment">True if there is a comment.</param>
/// <param name="TooLong">True if it was not read, being too long.</param>
internal readonly record struct PhysicalLine(TextSpan Content, IReadOnlyList<IToken> Tokens, bool HasComment, bool TooLong);
