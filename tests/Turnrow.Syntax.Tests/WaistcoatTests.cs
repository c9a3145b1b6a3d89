using Xunit;

namespace Turnrow.Syntax.Tests;

/// <summary>The pattern that the whole language was made for.</summary>
public sealed class WaistcoatTests
{
    internal const string Path = "patterns/fenland-wrap-waistcoat.turnrow";

    [Fact]
    public void Its_tree_is_as_it_was_read_and_checked_by_a_person()
    {
        Golden.Matches("tests/Turnrow.Syntax.Tests/Golden/fenland-wrap-waistcoat.tree", AnnotatedTree.Of(Patterns.Read(Path)));
    }

    [Fact]
    public void It_is_read_without_any_fault()
    {
        var tree = SyntaxReader.Read(Patterns.Read(Path));
        Assert.Empty(tree.Diagnostics);
        Assert.DoesNotContain(tree.Lines, line => line.Broken || line.Statement is null);
    }
}
