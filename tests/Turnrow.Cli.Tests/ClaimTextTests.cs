using Turnrow.Cli.Verbs;
using Turnrow.Compiler;
using Xunit;

namespace Turnrow.Cli.Tests;

/// <summary>Claims are put into a text that is otherwise kept to the character.</summary>
public sealed class ClaimTextTests
{
    private const string Text = "\uFEFFpiece back\r\n  row 1: dc across  # a note\r\n  row 2: dc across\n\n";

    [Fact]
    public void Line_ends_the_byte_order_mark_and_comments_are_kept()
    {
        var first = Text.IndexOf("  #", StringComparison.Ordinal);
        var second = Text.LastIndexOf("\n\n", StringComparison.Ordinal);
        Assert.Equal(
            "\uFEFFpiece back\r\n  row 1: dc across = 61 (65)  # a note\r\n  row 2: dc across = 9\n\n",
            ClaimText.Insert(Text, [new MissingClaim(second, " = 9"), new MissingClaim(first, " = 61 (65)")]));
    }

    [Fact]
    public void Without_claims_nothing_changes() => Assert.Equal(Text, ClaimText.Insert(Text, []));
}
