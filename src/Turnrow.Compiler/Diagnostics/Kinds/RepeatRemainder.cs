using Turnrow.Compiler.Pieces;
using Turnrow.Fabric.Words;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A repeat that does not come out.</summary>
public static class RepeatRemainder
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "repeat-remainder",
        "TR0303",
        Severity.Error,
        """
        A repeat that goes across has to come out with nothing left over, and here it does not, at least in one size. The maker would end
        in the middle of a repeat, and the edges would not match. The message shows how many stitches are there, how many one time takes
        and what is left. Either change the number of stitches (for a count made of a length add `, multiple of 5`), or say what is worked
        with the rest: `(dc 4, inc) until 2 remain, dc 2`.
        """,
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with 22 stitches
              row 1 RS: dc across
              row 2: (dc 4, inc) across
            """),
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with 22 stitches
              row 1 RS: dc across
              row 2: (dc 4, inc) until 2 remain, dc 2
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, Func<int, RowFailure> failureOf, string word, IReadOnlyList<string> ledger, Mend? mend)
    {
        var findings = context.Findings;
        var first = failureOf(sizes[0]);
        var per = Math.Max(1, first.Fault.Needed);
        var over = first.Fault.There;
        var inSize = findings.InSize(sizes[0]);
        if (first.Fault.Word is { } looking && PlaceKinds.AreLookedFor([looking]))
        {
            var alike = Array.TrueForAll(sizes, i => failureOf(i).Fault.There == over && failureOf(i).Fault.Times == first.Fault.Times);
            return new(Kind, span, $"the repeat does not come out{findings.InSizes(sizes)}: {(over == 0 ? "its last time takes what is to remain" : Invariant($"after {Counted.Times(first.Fault.Times)}{(alike ? string.Empty : inSize)} {Left(over)} over"))}")
            {
                Sizes = findings.Names(sizes),
                Ledger = [.. ledger, .. sizes.Length > 1 && !alike ? (string[])["left over: " + findings.Each(sizes, i => Invariant($"{failureOf(i).Fault.There}"))] : []],
                Help = $"count the places of the row below against what each time takes and passes over{(over == 0 ? string.Empty : $", or stop it earlier: {UntilRest(sizes, failureOf)}")}",
            };
        }

        var places = first.Fault.Way;
        var toCorner = AmountOf(first).Reach == Reach.ToCorner;
        var inSizes = findings.InSizes(sizes, i => (failureOf(i).Fault.There, failureOf(i).Fault.Way));
        return new(Kind, span, Invariant($"the repeat does not come out{inSizes}: each time takes {per}, and of {Counted.Stitches(places)}{(toCorner ? " on the way to the corner" : string.Empty)} {over} {(over == 1 ? "is" : "are")} left over"))
        {
            Sizes = findings.Names(sizes),
            Ledger =
            [
                .. ledger,
                Invariant($"{word}: {Math.Max(0, places - over) / per} times {per} is {Math.Max(0, places - over)}, and {over} {(over == 1 ? "is" : "are")} left over of {places}"),
                .. findings.Unlike(sizes, i => Invariant($"{failureOf(i).Fault.There}")).Select(static each => "left over: " + each),
            ],
            Help = $"it would come out over {(toCorner ? string.Empty : "a row of ")}{Fitting(findings, sizes, failureOf, per)}{(toCorner ? " on that way" : string.Empty)}; or work the rest in words: {UntilRest(sizes, failureOf)}",
            Mends = mend is null ? [] : [mend],
        };
    }

    private static string Left(int over) => over == 1 ? "1 place is left" : $"{Counted.Places(over)} are left";

    private static Amount AmountOf(RowFailure failure) => (failure.Fault.Word as Repeat)?.Amount ?? (failure.Fault.Word as Work)?.Amount ?? Amount.Across;

    // What it is to leave to the words behind it.
    private static int Kept(RowFailure failure) => AmountOf(failure) is { Reach: Reach.Until or Reach.ToCorner or Reach.ToTurn } amount ? amount.Count : 0;

    private static string Fitting(Findings findings, int[] sizes, Func<int, RowFailure> failureOf, int per)
    {
        var first = Near(failureOf(sizes[0]), per);
        return Array.TrueForAll(sizes, i => Near(failureOf(i), per) == first) ? first : findings.Each(sizes, i => Near(failureOf(i), per));
    }

    private static string UntilRest(int[] sizes, Func<int, RowFailure> failureOf)
    {
        var rest = Kept(failureOf(sizes[0])) + failureOf(sizes[0]).Fault.There;
        return Array.TrueForAll(sizes, i => Kept(failureOf(i)) + failureOf(i).Fault.There == rest)
            ? $"`until {Counted.Plain(rest)} {(rest == 1 ? "remains" : "remain")}{Goal(failureOf(sizes[0]))}`, and then what {(rest == 1 ? "this is" : "these are")}"
            : "stop it with `until`, then say what remains in each size";
    }

    private static string Goal(RowFailure failure) => AmountOf(failure).Reach switch
    {
        Reach.ToCorner => " before corner",
        Reach.ToTurn => " before turn",
        _ => string.Empty,
    };

    private static string Near(RowFailure failure, int per)
    {
        var less = (AmountOf(failure).Reach == Reach.ToCorner ? failure.Fault.Way : failure.Places) - failure.Fault.There;
        return less > 0 ? Invariant($"{less} or {less + per}") : Invariant($"{less + per}");
    }
}
