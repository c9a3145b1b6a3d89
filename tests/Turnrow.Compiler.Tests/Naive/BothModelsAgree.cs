using CsCheck;
using Xunit;

namespace Turnrow.Compiler.Tests.Naive;

/// <summary>
/// The two row models must agree on every pattern: counts, sides, hook, edges and beginnings where it can be
/// worked, and that it cannot where it cannot. A subclass says which model is under test.
/// </summary>
public abstract class BothModelsAgree
{
    protected abstract INaiveSubject Subject { get; }

    [Fact]
    public void On_the_waistcoat() => Compare(Waistcoat.Pattern);

    [Fact]
    public void On_patterns_that_can_be_worked() =>
        NaiveGen.Valid.Sample(Compare, iter: 3000, threads: 1, print: NotationWriter.Write);

    [Fact]
    public void On_patterns_with_a_number_off_by_one() =>
        NaiveGen.NearValid.Sample(Compare, iter: 3000, threads: 1, print: NotationWriter.Write);

    private void Compare(NaivePattern pattern)
    {
        var naive = NaiveWorker.Work(pattern);
        if (naive.IsUnclear)
            return;
        var differences = FactComparison.Differences(naive.Facts(), Subject.Read(NotationWriter.Write(pattern)));
        Assert.True(differences.Count == 0, string.Join('\n', differences.Take(12)));
    }
}
