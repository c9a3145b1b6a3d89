using Xunit;

namespace Turnrow.Compiler.Tests.Naive;

/// <summary>The comparison sees each kind of fact that differs, and none where two models say the same in other words.</summary>
public sealed class FactComparisonTests
{
    private static readonly PatternFacts s_facts = NaiveWorker.Work(Waistcoat.Pattern).Facts();

    [Fact]
    public void The_same_facts_do_not_differ() => Assert.Empty(FactComparison.Differences(s_facts, s_facts));

    [Fact]
    public void Runs_and_single_row_ends_are_the_same()
    {
        StretchFact[] ends = [.. Enumerable.Repeat(new StretchFact(StretchKind.RowEnd, "dc", 1, "neck"), 3)];
        var single = s_facts with { Edges = [new EdgeFact("front", "S", Hand.Left, ends)] };
        var run = s_facts with { Edges = [new EdgeFact("front", "S", Hand.Left, [ends[0] with { Count = 3 }])] };
        Assert.Empty(FactComparison.Differences(single, run));
    }

    [Fact]
    public void A_row_that_differs_is_told_from_both_sides()
    {
        var rows = s_facts.Rows.ToList();
        rows[5] = rows[5] with { Stitches = 3 };
        Assert.Equal(2, FactComparison.Differences(s_facts, s_facts with { Rows = rows }).Count);
        rows.RemoveAt(5);
        Assert.NotEmpty(FactComparison.Differences(s_facts, s_facts with { Rows = rows }));
    }

    [Fact]
    public void An_edge_or_a_start_that_differs_is_told()
    {
        var edges = s_facts.Edges.Select(edge => edge with { Stretches = [.. edge.Stretches.Skip(1)] }).ToList();
        Assert.NotEmpty(FactComparison.Differences(s_facts, s_facts with { Edges = edges }));
        var starts = s_facts.Starts.Select(start => start with { PickedUpRows = [.. start.PickedUpRows.Reverse()] }).ToList();
        Assert.Equal(14, FactComparison.Differences(s_facts, s_facts with { Starts = starts }).Count);
    }

    [Fact]
    public void Both_have_to_find_the_fault()
    {
        var faulty = s_facts with { Faults = ["one over"] };
        Assert.NotEmpty(FactComparison.Differences(s_facts, faulty));
        Assert.NotEmpty(FactComparison.Differences(faulty, s_facts));
        Assert.Empty(FactComparison.Differences(faulty, faulty));
    }
}
