using Turnrow.Syntax.Diagnostics.Kinds;
using Turnrow.Syntax.Reading;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Syntax;

/// <summary>
/// Reads a pattern, line by line. A line that can't be read costs itself and nothing else; whatever the text is, there is
/// a tree and no exception.
/// </summary>
public static class SyntaxReader
{
    /// <summary>Larger files are not read: the largest garment is a hundredth of this.</summary>
    public const int LargestFile = 1_000_000;

    /// <summary>Reads a whole file.</summary>
    public static SyntaxTree Read(SourceText source)
    {
        var text = source.Text;
        if (text.Length <= LargestFile) return new FileReading(source).Read();
        var whole = new Token(TokenKind.Junk, new TextSpan(0, text.Length));
        return new SyntaxTree(source, [whole], [], [FileLarge.At(source, LargestFile)]);
    }
}
