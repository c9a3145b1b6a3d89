using CsCheck;
using Turnrow.Compiler.Tests.Naive.Making;

namespace Turnrow.Compiler.Tests.Naive;

/// <summary>Random patterns: such as can be worked, and such with one number that is off by one.</summary>
public static class NaiveGen
{
    private static readonly Gen<int[]> s_tape = Gen.Int[0, 9999].Array[0, 200];

    /// <summary>Patterns that can be worked in every size, some with true claims.</summary>
    public static Gen<NaivePattern> Valid { get; } = s_tape.Select(Made);

    /// <summary>The same with one number nudged; most of them no longer come out, and the naive model knows which.</summary>
    public static Gen<NaivePattern> NearValid { get; } =
        Gen.Select(s_tape, Gen.Int[0, 9999], Gen.Int[0, 3], Gen.Bool, (tape, which, size, isMore) =>
            Nudge.One(Made(tape), which, size, isMore ? 1 : -1));

    private static NaivePattern Made(int[] numbers)
    {
        var tape = new ChoiceTape(numbers);
        var pattern = PatternMaker.Make(tape);
        return tape.OneIn(2) ? Making.Claims.Added(pattern, tape) : pattern;
    }
}
