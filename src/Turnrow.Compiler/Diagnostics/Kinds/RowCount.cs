using Turnrow.Compiler.Claims;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A claim that is not what the row makes.</summary>
public static class RowCount
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "row-count",
        "TR0301",
        Severity.Error,
        """
        Behind `=` stands the number of stitches that you expect at the end of the row. The row was counted as it is written, over the
        stitches that the row below really has, and it makes another number. One of the two is wrong, and the garment would not fit
        together further up, so look before you change anything. The list under the line shows each part of the row: how many stitches it
        takes, how many it makes, and the sum so far. Go down it and stop where it is not what you meant. If the row is right, write the
        new number; if your number is right, mend the row, or one before it.

        Tip: a row that is wrong makes all rows worked on it wrong, so begin with the first message.
        """,
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with 20 stitches
              row 1 RS: dc across
              row 2: dec, dc until 2 remain, dec = 20
            """),
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with 20 stitches
              row 1 RS: dc across
              row 2: dec, dc until 2 remain, dec = 18
            """));

    internal static Diagnostic At(Context context, ClaimPartSyntax claim, ClaimKind kind, bool ahead, int[] wrong, int?[] claimed, int?[] calculated, IReadOnlyList<string> ledger, int followers, string? made)
    {
        var findings = context.Findings;
        var first = wrong[0];
        var off = calculated[first]!.Value - claimed[first]!.Value;
        // A row of nothing but another stitch makes none of the one that is claimed: then what it makes is named with its number.
        var text = made ?? Findings.InBrackets(calculated);
        var known = Array.TrueForAll(calculated, c => c is not null);
        var makes = ahead ? "the next row is worked over" : "the row makes";
        var areClaimed = claimed[first] == 1 ? "is claimed" : "are claimed";
        return new(Kind, claim.Span, Invariant($"{kind.Counted(context, claimed[first]!.Value)} {areClaimed}{findings.InSizes(wrong, i => (claimed[i], calculated[i]))}, and {makes} {(made is null ? Invariant($"{calculated[first]}: {Math.Abs(off)} {(off > 0 ? "more" : "fewer")}") : $"{made}")}"))
        {
            Sizes = findings.Names(wrong),
            Ledger = [.. ledger, .. Others(findings, wrong, claimed, calculated), .. Quiet(followers, off)],
            Help = known
                ? $"if {(ahead ? "that" : "the row")} is right, claim {text}; if the claim is right, change {(ahead ? "this line" : "the row")} or one before it"
                : "this row, or one before it, does not make what is claimed",
            Mends = known ? [new Mend($"claim {text}", made is null ? claim.Count.Span : claim.Span, text)] : [],
        };
    }

    private static IEnumerable<string> Others(Findings findings, int[] wrong, int?[] claimed, int?[] calculated)
    {
        if (wrong.Length < 2 || Array.TrueForAll(wrong, i => claimed[i] == claimed[wrong[0]] && calculated[i] == calculated[wrong[0]])) yield break;
        yield return "also " + findings.Each(wrong[1..], i => Invariant($"{claimed[i]} claimed, {calculated[i]} made"));
    }

    private static IEnumerable<string> Quiet(int followers, int off)
    {
        if (followers > 0) yield return Invariant($"{followers} more {(followers == 1 ? "claim" : "claims")} below {(followers == 1 ? "is" : "are")} off by the same {Math.Abs(off)}");
    }
}
