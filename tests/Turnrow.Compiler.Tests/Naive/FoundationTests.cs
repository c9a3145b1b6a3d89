using Xunit;

namespace Turnrow.Compiler.Tests.Naive;

/// <summary>The table of foundations: chains for n stitches under each rule, both ways.</summary>
public sealed class FoundationTests
{
    public static TheoryData<string, int, bool, bool, int> Rules => new()
    {
        { "sc", 1, false, false, 1 },
        { "hdc", 2, true, false, 1 },
        { "hdc", 2, false, false, 2 },
        { "hdc", 2, true, true, 2 },
        { "dc", 3, true, false, 2 },
        { "dc", 2, false, false, 2 },
        { "tr", 4, true, false, 3 },
        { "dtr", 5, true, false, 4 },
    };

    [Theory]
    [MemberData(nameof(Rules))]
    public void Chains_and_stitches_belong_together(string stitch, int chains, bool counts, bool notInFoundation, int more)
    {
        var rule = new TurnRule(stitch, chains, counts, notInFoundation);
        for (var n = 3; n <= 60; n++)
        {
            Assert.Equal(n + more, Across(rule, new BeginWith(n)).FoundationChains);
            Assert.Equal(n, Across(rule, new ChainStart(n + more)).Rows[0].Stitches);
        }
    }

    [Theory]
    [InlineData("sc", 19)]
    [InlineData("dc", 18)]
    [InlineData("tr", 17)]
    public void Custom_needs_no_rule(string stitch, int expected)
    {
        var stitches = Pieces.Worked(new ChainStart(20), Pieces.Row(new Across(stitch))).Rows[0].Stitches;
        Assert.Equal(expected, stitches);
    }

    [Fact]
    public void A_half_double_without_a_rule_cannot_turn() =>
        Assert.Contains("hdc", Pieces.Fault(new BeginWith(9), Pieces.Row(new Across("hdc"))), StringComparison.Ordinal);

    [Fact]
    public void A_first_chain_of_its_own_moves_the_count()
    {
        var rule = new TurnRule("dc", 3, true, FirstStitchIn: 5);
        Assert.Equal(17, Across(rule, new ChainStart(20)).Rows[0].Stitches);
    }

    [Fact]
    public void A_space_that_opens_the_row_takes_its_chains_from_the_foundation()
    {
        Word[] words = [new Each("dc", 1), new Space(2), new Skip(2), new Across("dc")];
        var row = Pieces.Worked(new ChainStart(22), Pieces.Row(words)).Rows[0];
        Assert.Equal(16, row.Stitches);
        Assert.Equal(1, row.Places.Count(place => place.IsSpace));
    }

    private static PieceResult Across(TurnRule rule, Start start)
    {
        var piece = new NaivePiece("swatch", start, [Pieces.Row(new Across(rule.Stitch))]);
        var result = NaiveWorker.Work(Pieces.Of([piece], rule));
        Assert.Empty(result.Faults);
        return result.Of("swatch", 0);
    }
}
