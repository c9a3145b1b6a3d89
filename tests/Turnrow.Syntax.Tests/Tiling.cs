using Turnrow.Syntax.Tree;
using Xunit;

namespace Turnrow.Syntax.Tests;

/// <summary>Tokens, end to end, are the text: nothing is lost, nothing is read twice.</summary>
internal static class Tiling
{
    public static void AssertTiles(SyntaxTree tree)
    {
        var position = 0;
        foreach (var token in tree.Tokens)
        {
            Assert.Equal(position, token.Span.Start);
            Assert.True(token.Span.Length > 0);
            position = token.Span.End;
        }

        Assert.Equal(tree.Source.Text.Length, position);
    }
}
