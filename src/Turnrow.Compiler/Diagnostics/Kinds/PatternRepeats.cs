using Turnrow.Compiler.StitchPatterns;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Words;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A stitch pattern whose last row does not lead into the first of those that repeat.</summary>
public static class PatternRepeats
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "pattern-repeats",
        "TR0457",
        Severity.Error,
        """
        Each stitch pattern is worked here over two repeats and over three, three times through. Then it is known to come out over any number of
        repeats, for ever. This one does not: a row can't be worked behind the last one, or over another number of repeats, or what the last
        row leaves is not what the rows before began on. Look at the row that is named: what it is worked over there is not what it is worked
        over the first time. Often a first row is worked into the chain in another way than later ones; then it is a row of its own, and `repeat rows 2 to 3`
        leaves it out.
        """,
        SmallPattern.With("Scarf",
            """
            stitch pattern vees over multiple of 3 + 2
              row 1: dc, (skip 1, (dc, ch 1, dc) in next, skip 1) until 1 remain, dc
              row 2: dc, ((dc, ch 1, dc) in next sp) until 2 remain, skip 1, dc
              repeat rows 1 to 2

            piece scarf
              begin with 23 stitches
              straight 8 rows, in vees
            """),
        SmallPattern.With("Scarf",
            """
            stitch pattern vees over multiple of 3 + 2
              row 1: dc, (skip 1, (dc, ch 1, dc) in next, skip 1) until 1 remain, dc
              row 2: dc, ((dc, ch 1, dc) in next sp) until 2 remain, skip 1, dc
              repeat row 2

            piece scarf
              begin with 23 stitches
              straight 8 rows, in vees
            """));

    internal static Diagnostic At(Context context, TextSpan span, PatternTrial trial, RowFault fault)
    {
        var (name, index) = (trial.Pattern.Name, trial.Index + 1);
        var start = trial.Again
            ? Invariant($"row {index} of {name} can't be worked again behind row {trial.Pattern.Rows.Count}")
            : Invariant($"row {index} of {name} does not come out over {trial.Repeats} repeats");
        return new(Kind, span, $"{start}: {PatternFault.Reason(context, fault, trial.There)}")
        {
            Ledger = [Over(trial.Pattern, trial.Repeats)],
            Help = trial.Again
                ? $"if only later rows repeat, say which: `{Later(trial)}`; else change the last row or this one"
                : fault.Kind == RowFaultKind.TooFarDown ? "begin the pattern with rows that it can go down into; what lies below the pattern is not known where it is defined"
                : "see that each row takes whole repeats, and what is beside them once",
        };
    }

    internal static Diagnostic Grows(TextSpan span, StitchPattern pattern, int repeats, PlaceSequence before, PlaceSequence now) =>
        new(Kind, span, before.Count == now.Count
            ? Invariant($"{pattern.Name} does not come round: row {pattern.RepeatFrom + 1} is worked over other stitches each time")
            : Invariant($"{pattern.Name} does not come round: row {pattern.RepeatFrom + 1} has {Counted.Places(before.Count)} to work over, and the next time {now.Count}"))
        {
            Ledger = [Over(pattern, repeats)],
            Help = "the last row has to leave what the first of the rows that repeat is worked over; shaping belongs in the piece",
        };

    internal static Diagnostic Side(TextSpan span, StitchPattern pattern, int index, bool rightSide) =>
        new(Kind, span, Invariant($"row {index + 1} of {pattern.Name} is a {(rightSide ? "right" : "wrong")}-side row, and the next time it comes it is on the other side"))
        {
            Help = Invariant($"{Counted.Rows(pattern.Rows.Count - pattern.RepeatFrom)} repeat, an odd number: leave the side out if it does not matter, or write the rows of both sides"),
        };

    private static string Later(PatternTrial trial)
    {
        var (first, last) = (Math.Min(trial.Index + 2, trial.Pattern.Rows.Count), trial.Pattern.Rows.Count);
        return first == last ? Invariant($"repeat row {last}") : Invariant($"repeat rows {first} to {last}");
    }

    private static string Over(StitchPattern pattern, int repeats) =>
        Invariant($"tried over {(pattern.Multiple * repeats) + pattern.Plus} stitches: {repeats} repeats of {pattern.Multiple}{(pattern.Plus > 0 ? Invariant($" and {pattern.Plus} more") : string.Empty)}");
}
