using Xunit;
using Xunit.Abstractions;

namespace Turnrow.Compiler.Tests.Mutations;

/// <summary>
/// Every slip that makes another garment is found, or falls under a reason why it can't be. The reasons are data, and none may be so wide
/// that it excuses whatever comes.
/// </summary>
public sealed class SlipTests(ITestOutputHelper output)
{
    private const int FewestSlips = 2_000;
    // Of garments whose pieces meet it is 15 in 100; a hat, a toy or a scarf has nothing that it has to fit.
    private const double MostExcused = 0.17;
    private const double MostByOneReason = 0.04;

    [Fact]
    public void Every_slip_is_found_or_there_is_a_reason_why_not()
    {
        var book = SlipBook.Of(Patterns.All, SlipBook.MostOfKind);
        var page = book.Page();
        output.WriteLine(page);
        Assert.Empty(book.Unexplained);
        Assert.True(book.Slips >= FewestSlips);
        Assert.All(Reasons.All, reason => Assert.True(book.ShareOf(reason) > 0, $"no slip falls under: {reason.Name}"));
        Assert.All(Reasons.All.Where(r => r != Reasons.Same), reason => Assert.True(book.ShareOf(reason) <= MostByOneReason, $"too wide: {reason.Name}"));
        Assert.True(book.ShareExcused <= MostExcused);
        Golden.Matches("tests/MUTATIONS.md", page);
    }

    // Of each kind, as many of a pattern as a thorough run judges.
    private const int MostOfKindThorough = 40;

    /// <summary>More than the page counts; of the patterns beside the waistcoat in a thorough run alone, since there are many.</summary>
    [Fact]
    public void None_of_the_others_is_left_unexplained_either()
    {
        if (Breaks.Thorough) Assert.Empty(SlipBook.Of(Patterns.All, MostOfKindThorough).Unexplained);
        Assert.Empty(SlipBook.Of(["patterns/fenland-wrap-waistcoat.turnrow"], int.MaxValue).Unexplained);
    }
}
