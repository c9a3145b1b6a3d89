using Turnrow.Compiler.Pieces;
using Turnrow.Compiler.Rows;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A row that uses more places than there are, or fewer.</summary>
public static class RowLength
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "row-length",
        "TR0302",
        Severity.Error,
        """
        A row has to use up exactly the stitches of the row below: this one wants more than there are, or leaves some over. On the hook
        you would notice at its end, and rip back. If stitches are left over, work them (`dc across` always comes out), or say that they
        stay unworked: `leave 2`, `leave the rest`. If there are too few, work fewer, or look further back: an earlier row may have lost
        some.

        Tip: `until 4 remain` keeps a border of 4 in every size, whatever the row's length.
        """,
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with 20 stitches
              row 1 RS: dc across
              row 2: dc 18
            """),
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with 20 stitches
              row 1 RS: dc across
              row 2: dc 20
            """));

    internal static Diagnostic At(Context context, TextSpan span, PieceState piece, int[] sizes, Func<int, RowFailure> failureOf, string word, IReadOnlyList<string> ledger)
    {
        var first = failureOf(sizes[0]);
        return first.Fault.Kind == RowFaultKind.LeftOver
            ? LeftOver(context, span, piece, sizes, failureOf, ledger)
            : TooFew(context, span, piece, sizes, failureOf, word, ledger);
    }

    private static Diagnostic LeftOver(Context context, TextSpan span, PieceState piece, int[] sizes, Func<int, RowFailure> failureOf, IReadOnlyList<string> ledger)
    {
        var first = failureOf(sizes[0]);
        var there = first.Fault.There;
        var end = new TextSpan(span.End, 0);
        var last = first.Plan is WordsPlan { Words: [.., Work { Target.Aim: Aim.Next } final] } ? context.Word(final.Stitch) : null;
        var own = context.Word(OwnStitch(first.Plan.WordsFrom(first.Start)) ?? StitchBook.Single);
        var isRound = piece.Builders[sizes[0]].InRounds;
        if (first.Plan is WordsPlan { Words: [.., Leave { Count: > 0 } leave] } && !isRound)
            return LeavesTooFew(context, span, piece, sizes, failureOf, leave) with { Ledger = [.. ledger, .. InEach(context, "left over: ", sizes, failureOf)] };
        if (LegsOfLast(first, there) is { } special)
        {
            return new(Kind, span, OverAtTheEnd(piece, sizes[0], first, context.Findings.InSizes(sizes, i => failureOf(i).Fault.There)))
            {
                Sizes = context.Findings.Names(sizes),
                Ledger = [.. ledger, .. InEach(context, "left over: ", sizes, failureOf)],
                Help = $"they are the rest of the last {special}, behind the place that was worked into: pass over them, `skip {Counted.Plain(there)}`",
                Mends = [new Mend("pass over them", end, $", skip {Counted.Plain(there)}")],
            };
        }

        Mend[] work = last is null ? [] : [new Mend("work them", end, $", {last} {RowName.ToItsEnd(piece, sizes[0])}")];
        return new(Kind, span, OverAtTheEnd(piece, sizes[0], first, context.Findings.InSizes(sizes, i => failureOf(i).Fault.There)))
        {
            Sizes = context.Findings.Names(sizes),
            Ledger = [.. ledger, .. InEach(context, "left over: ", sizes, failureOf)],
            Help = isRound ? $"work them (`{own} around`): a round has no edge at which they could be left"
                : $"work them (`{own} across`), or say that they stay unworked (`leave the rest`)",
            Mends = [.. work, .. isRound ? Array.Empty<Mend>() : [new Mend("leave them", end, ", leave the rest")]],
        };
    }

    // What is left over are places of one special stitch, the one that the row went into last, and all of them lie behind that place.
    private static string? LegsOfLast(RowFailure failure, int there)
    {
        if (failure.Below is not { } below || there >= below.Count) return null;
        var left = below.Slice(below.Count - there, there);
        if (left.First.Part is not { } part || below.Slice(below.Count - there - 1, 1).First.Part?.Special != part.Special || part.Index == 0) return null;
        for (var i = 1; i < there; i++)
        {
            if (left.Slice(i, 1).First.Part is not { } next || next.Special != part.Special || next.Index != part.Index + i) return null;
        }

        return part.Special.Id;
    }

    private static string OverAtTheEnd(PieceState piece, int size, RowFailure failure, string inSizes) =>
        Invariant($"{Counted.Stitches(failure.Fault.There)} {(failure.Fault.There == 1 ? "is" : "are")} left over at the end of {RowName.Of(piece, size, failure.Row)} of {piece.Name}{inSizes}");

    // The row leaves some already, so what is over is left with them: nothing can be said behind a `leave`.
    private static Diagnostic LeavesTooFew(Context context, TextSpan span, PieceState piece, int[] sizes, Func<int, RowFailure> failureOf, Leave leave)
    {
        var first = failureOf(sizes[0]);
        var there = first.Fault.There;
        var alike = sizes.Length == context.Sizes && Array.TrueForAll(sizes, i => LeftBy(failureOf(i)) + failureOf(i).Fault.There == leave.Count + there);
        var all = new WordText(context).Of(leave with { Count = leave.Count + there });
        var left = leave.ForLater && there == first.Waiting
            ? Invariant($"{there} of the stitches before this row wait since an earlier one, and are to be left again")
            : "leave them too";
        return new(Kind, span, OverAtTheEnd(piece, sizes[0], first, context.Findings.InSizes(sizes, i => failureOf(i).Fault.There)))
        {
            Sizes = context.Findings.Names(sizes),
            Help = $"{left}{(alike ? $", `{all}`" : $"{context.Findings.InSize(sizes[0])}, `{all}`")}; or work them before it",
            Mends = alike && leave.Origin.Value is LeaveItem { Count: NumberExpression } item ? [new Mend($"write {all}", item.Span, all)] : [],
        };
    }

    private static int LeftBy(RowFailure failure) => failure.Plan is WordsPlan { Words: [.., Leave leave] } ? leave.Count : 0;

    // The words of a row that is shaped at its edges are none that she wrote.
    internal static Diagnostic TooFewToShape(Context context, TextSpan span, PieceState piece, int[] sizes, Func<int, RowFailure> failureOf)
    {
        var first = failureOf(sizes[0]);
        return new(Kind, span, Invariant($"{RowName.Of(piece, sizes[0], first.Row)} of {piece.Name} has {Counted.Stitches(first.Places)} to work over, too few for its shaping{context.Findings.InSizes(sizes, i => failureOf(i).Places)}"))
        {
            Sizes = context.Findings.Names(sizes),
            Help = "end the shaping sooner, take fewer stitches a time, or begin with more",
        };
    }

    private static Diagnostic TooFew(Context context, TextSpan span, PieceState piece, int[] sizes, Func<int, RowFailure> failureOf, string word, IReadOnlyList<string> ledger)
    {
        var first = failureOf(sizes[0]);
        var there = first.Fault.There;
        return new(Kind, span, Invariant($"`{word}` needs {Counted.Stitches(first.Fault.Needed)}, and {RowName.Of(piece, sizes[0], first.Row)} of {piece.Name} has {(there == 0 ? "none" : Invariant($"{there}"))} left to work over{context.Findings.InSizes(sizes, i => (failureOf(i).Fault.There, failureOf(i).Fault.Needed))}"))
        {
            Sizes = context.Findings.Names(sizes),
            Ledger = [.. ledger, .. InEach(context, "there: ", sizes, failureOf)],
            Help = first.Fault.Word is Leave leave
                ? there == 0 ? "take it out, or work fewer before it" : $"leave fewer, `{new WordText(context).Of(leave with { Count = there })}`, or work fewer before it"
                : first.Below?.CountWhere(static place => place.Kind == PlaceKind.Ring) > 0 && first.Fault.Word is Work { Target.Aim: Aim.Next } into
                    ? Invariant($"what is worked into the ring says so: `{Math.Max(1, first.Fault.Needed)} {context.Word(into.Stitch)} in ring`")
                : "work fewer, or look at the rows before: one of them may make too few",
        };
    }

    // The last stitch that the row is made of, however deep in repeats and groups it stands.
    private static Stitch? OwnStitch(IReadOnlyList<Word> words)
    {
        var open = new Stack<Word>(words);
        while (open.TryPop(out var word))
        {
            if (word is Work work) return work.Stitch;
            foreach (var inner in word.Held) open.Push(inner);
        }

        return null;
    }

    private static string[] InEach(Context context, string title, int[] sizes, Func<int, RowFailure> failureOf) =>
        [.. context.Findings.Unlike(sizes, i => Invariant($"{failureOf(i).Fault.There}")).Select(each => title + each)];
}
