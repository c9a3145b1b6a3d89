using Turnrow.Compiler.Grading;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Numbers;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A garment that does not have the ease it is meant to have.</summary>
public static class EaseOff
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "ease-off",
        "TR0405",
        Severity.Warning,
        """
        The pattern says how much ease the garment is meant to have, and the finished measurement less the body's is something else. A fit by
        name has a range, and the ease lies outside it; a number is met if the garment comes within two stitches of it. The rows can be worked as they are, but the size will not
        fit as it says. Change the count that makes the width, or the ease; if the fit is meant, accept it: `accept ease-off: "…"` with the
        reason.
        """,
        SmallPattern.With("Top",
            """
            sizes S, M
            gauge dc: 18 stitches and 9 rows to 10 cm
            measure bust is 86 (97) cm
            ease bust is close
            count hem is 90 (100)

            piece back
              begin with hem stitches
              row 1 RS: dc across
              finished bust is 2 x hem stitches
            """),
        SmallPattern.With("Top",
            """
            sizes S, M
            gauge dc: 18 stitches and 9 rows to 10 cm
            measure bust is 86 (97) cm
            ease bust is close
            count hem is stitches for bust / 2 + 2 cm

            piece back
              begin with hem stitches
              row 1 RS: dc across
              finished bust is 2 x hem stitches
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, Ease ease, Rational?[] eases, Value?[] body, Rational?[] finished)
    {
        var first = sizes[0];
        return new(Kind, span, $"the finished {ease.Name} is {context.Length(finished[first]!.Value)}{context.Findings.InSize(first)} on a body of {context.Length(body[first]!.Value.Number)}: {context.Length(eases[first]!.Value)} of ease, where {Wanted(context, ease, first)}")
        {
            Sizes = context.Findings.Names(sizes),
            Ledger = Ledger(context, ease, eases, body, finished),
            Related = [new Related(ease.Span, "the ease is said here")],
            Help = $"change the counts that make the {ease.Name}, or the ease; or accept it with the reason, accept ease-off of {ease.Name}: \"…\"",
        };
    }

    private static List<string> Ledger(Context context, Ease ease, Rational?[] eases, Value?[] body, Rational?[] finished)
    {
        var all = Enumerable.Range(0, eases.Length).ToArray();
        var lines = new List<string>();
        if (all.Length > 1)
        {
            lines.Add($"finished: {context.Findings.Each(all, i => context.Length(finished[i]!.Value))}");
            lines.Add($"body:     {context.Findings.Each(all, i => context.Length(body[i]!.Value.Number))}");
            lines.Add($"ease:     {context.Findings.Each(all, i => context.Length(eases[i]!.Value))}");
        }

        if (ease.Fit is not null) lines.Add($"the rule: {EaseBinder.Source}");
        return lines;
    }

    private static string Wanted(Context context, Ease ease, int size) => (ease.Fit, ease.Least[size], ease.Most[size]) switch
    {
        (null, { } asked, _) => $"{context.Length(asked)} are wanted",
        ({ } fit, { } least, { } most) => $"a {fit} fit has {context.Length(least)} to {context.Length(most)}",
        ({ } fit, { } least, null) => $"an {fit} fit has {context.Length(least)} or more",
        ({ } fit, null, { } most) => $"a {fit} fit has {context.Length(most)} or less",
        _ => "another is wanted",
    };
}
