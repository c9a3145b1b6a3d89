using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;
using Xunit;

namespace Turnrow.Syntax.Tests;

/// <summary>Every construct of the notation becomes the node that it should.</summary>
public sealed class ConstructTests
{
    private const string Constructs = "tests/Turnrow.Syntax.Tests/Golden/constructs.turnrow";

    [Fact]
    public void Each_construct_becomes_its_node_as_it_was_checked_by_a_person()
    {
        Golden.Matches("tests/Turnrow.Syntax.Tests/Golden/constructs.tree", AnnotatedTree.Of(Patterns.Read(Constructs)));
    }

    [Fact]
    public void Every_kind_of_statement_is_among_them()
    {
        var seen = SyntaxReader.Read(Patterns.Read(Constructs)).Lines.Select(line => line.Statement?.GetType()).ToHashSet();
        seen.UnionWith(SyntaxReader.Read(Patterns.Read(WaistcoatTests.Path)).Lines.Select(line => line.Statement?.GetType()));
        var all = typeof(StatementSyntax).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(StatementSyntax)));
        Assert.All(all.Except([typeof(UnfinishedStatement)]), type => Assert.Contains(type, seen));
    }

    [Theory]
    [InlineData(Constructs)]
    [InlineData(WaistcoatTests.Path)]
    public void A_node_spans_its_words_and_holds_its_parts(string path)
    {
        var tree = SyntaxReader.Read(Patterns.Read(path));
        foreach (var line in tree.Lines.Where(line => !line.Broken))
        {
            Assert.Equal(line.Span, line.Statement!.Span);
            foreach (var (parent, child) in TreeWalk.Parts(line.Statement))
            {
                Assert.True(child.Span.Start >= parent.Span.Start && child.Span.End <= parent.Span.End, $"{child} lies outside {parent}");
                var text = tree.Source.ToString(child.Span);
                Assert.Equal(text.Trim(), text);
            }
        }
    }

    [Fact]
    public void What_a_statement_example_shows_can_be_read()
    {
        Assert.All(NotationWords.Statements, word =>
        {
            var line = Assert.Single(SyntaxReader.Read(new SourceText("example", word.Example)).Lines);
            Assert.Equal((word.Text, false), (line.Keyword, line.Broken));
        });
    }
}
