using System.Diagnostics;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Diagnostics.Kinds;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;
using Xunit;

namespace Turnrow.Syntax.Tests;

/// <summary>What nobody types: it costs its own line, little time and little memory, and both neighbours are read.</summary>
public sealed class HostileTests
{
    // Far above what it takes; a walk that is deep or quadratic takes minutes or ends the process.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(10);

    private const int Many = 100_000;

    [Fact]
    public void A_row_of_100_000_items_is_read()
    {
        var row = Assert.IsType<RowStatement>(Between("row 1: " + Repeat("dc 5,\n", Many) + "dc across", null).Statement);
        Assert.Equal(Many + 1, row.Items.Count);
    }

    [Fact]
    public void A_sum_of_100_000_terms_is_read_and_no_deeper_than_one_of_two()
    {
        var count = Assert.IsType<CountStatement>(Between("count n is (1" + Repeat("\n+ 1", Many) + ")", null).Statement);
        Assert.Equal(Many, Assert.IsType<CalculationExpression>(count.Value).Rest.Count);
    }

    [Fact]
    public void A_product_of_100_000_terms_is_read()
    {
        var count = Assert.IsType<CountStatement>(Between("count n is (1" + Repeat("\nx 1", Many) + ")", null).Statement);
        Assert.Equal(Many, Assert.IsType<CalculationExpression>(count.Value).Rest.Count);
    }

    [Fact]
    public void A_list_of_100_000_numbers_is_read() =>
        Assert.IsType<CountStatement>(Between("count n is 1 (" + Repeat("1,\n", Many) + "1)", null).Statement);

    [Fact]
    public void Brackets_100_000_deep_cost_their_line() => Between("row 1: " + Repeat("(\n", Many), BracketDepth.Kind);

    [Fact]
    public void Brackets_100_000_deep_in_a_claim_cost_their_line() => Between("row 1: dc = " + Repeat("(\n", Many), BracketDepth.Kind);

    [Fact]
    public void Brackets_200_deep_in_a_line_without_its_word_cost_it() =>
        Between("dc across " + new string('(', 100) + "dc" + new string(')', 100), UnknownStatement.Kind);

    [Fact]
    public void Brackets_just_too_deep_in_one_line_cost_it() =>
        Between("row 1: " + new string('(', 17) + "dc" + new string(')', 17), BracketDepth.Kind);

    [Fact]
    public void Brackets_as_deep_as_allowed_are_read() =>
        Between("row 1: " + new string('(', 16) + "dc" + Repeat(" , dc)", 16).Replace(" ,", ",", StringComparison.Ordinal), null);

    [Theory]
    [InlineData('(')]
    [InlineData('x')]
    [InlineData('\0')]
    [InlineData('\uD800')]
    [InlineData('"')]
    public void A_very_long_line_costs_itself(char c) => Between("row 1: " + new string(c, 900_000), LineLong.Kind);

    [Fact]
    public void A_line_as_long_as_allowed_is_read() =>
        Between("row 1: dc across" + new string(' ', 20_000 - 17) + "#", null);

    [Fact]
    public void A_file_of_10_MB_is_refused()
    {
        var source = new SourceText("long", new string('x', 10_000_000));
        var tree = Timed(() => SyntaxReader.Read(source));
        Assert.Equal(FileLarge.Kind, Assert.Single(tree.Diagnostics).Kind);
        Assert.Empty(tree.Lines);
        Tiling.AssertTiles(tree);
        Assert.InRange(DiagnosticPrinter.Print(tree.Diagnostics[0], source).Length, 1, 1000);
    }

    [Theory]
    [InlineData("\0\n")]
    [InlineData("(\n\n")]
    [InlineData("\"\n")]
    [InlineData("\uD83E\uDDF6\n")]
    [InlineData("\uDDF6\uD83E\n")]
    [InlineData("row 1: dc dc 3 4 5\n")]
    [InlineData("я\u0301ß-漢\n")]
    public void A_file_full_of_junk_is_read_line_by_line(string line)
    {
        var tree = Timed(() => SyntaxReader.Read(new SourceText("junk", Repeat(line, Many / line.Length))));
        Assert.Equal(tree.Lines.Count, tree.Diagnostics.Count);
        Assert.True(tree.Lines.Count >= Many / line.Length);
        Tiling.AssertTiles(tree);
    }

    [Fact]
    public void Any_single_character_is_read_without_an_exception()
    {
        for (var c = '\0'; c < '\uFFFF'; c++)
        {
            if (c % 7 != 0 && c > 0x2100) continue;
            Tiling.AssertTiles(SyntaxReader.Read(new SourceText("one", $"row 1: dc {c} 5\n{c}piece back{c}\n> {c}\n{c}")));
        }
    }

    private static LineSyntax Between(string line, DiagnosticKind? kind)
    {
        var source = new SourceText("between", $"piece back\n{line}\nfasten off\n");
        var tree = Timed(() => SyntaxReader.Read(source));
        Tiling.AssertTiles(tree);
        Assert.Equal(3, tree.Lines.Count);
        Assert.IsType<PieceStatement>(tree.Lines[0].Statement);
        Assert.IsType<FastenOffStatement>(tree.Lines[2].Statement);
        Assert.Equal(kind is null ? [] : [kind], tree.Diagnostics.Select(found => found.Kind));
        Assert.Equal(kind is not null, tree.Lines[1].Broken);
        foreach (var found in tree.Diagnostics)
            Assert.InRange(Timed(() => DiagnosticPrinter.Print(found, source)).Length, 1, 2000);
        return tree.Lines[1];
    }

    private static T Timed<T>(Func<T> work)
    {
        var watch = Stopwatch.StartNew();
        var result = work();
        Assert.True(watch.Elapsed < Patience, $"took {watch.Elapsed}");
        return result;
    }

    private static string Repeat(string text, int times) => string.Concat(Enumerable.Repeat(text, times));
}
