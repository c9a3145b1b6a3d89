using Turnrow.Compiler.Header;
using Turnrow.Fabric.Numbers;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A count that lies farther from its length than the pattern wants.</summary>
public static class CountFar
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "count-far",
        "TR0410",
        Severity.Warning,
        """
        A length becomes the nearest count that is allowed: an odd one, or a multiple of the stitch pattern. In this size that count
        measures more, or less, than the length by a greater distance than the line allows with `within`. The message names the counts beside it and
        what they measure. Take another multiple, another length, or allow more.
        """,
        SmallPattern.With("Cowl",
            """
            gauge dc: 18 stitches and 9 rows to 10 cm
            count brim is stitches for 56 cm, multiple of 24 + 1, within 1 cm

            piece cowl
              begin with brim stitches
              row 1 RS: dc across
            """),
        SmallPattern.With("Cowl",
            """
            gauge dc: 18 stitches and 9 rows to 10 cm
            count brim is stitches for 56 cm, multiple of 5 + 1, within 1 cm

            piece cowl
              begin with brim stitches
              row 1 RS: dc across
            """));

    internal static Diagnostic At(Context context, CountStatement statement, int[] sizes, CountDistance far)
    {
        var first = sizes[0];
        var count = far.Counts[first]!.Value;
        var off = (far.Measured[first]!.Value - far.Asked[first]!.Value)!.Value;
        var what = statement.Of == CountOf.Rows ? "rows" : "stitches";
        return new(Kind, statement.Name.Span, Invariant($"{count} {what} measure {context.Length(far.Measured[first]!.Value)}{context.Findings.InSize(first)}, {context.Length(off.Magnitude())} {(off > Rational.Zero ? "more" : "less")} than {context.Length(far.Asked[first]!.Value)}, and {context.Length(far.Most[first]!.Value)} is allowed"))
        {
            Sizes = context.Findings.Names(sizes),
            Ledger = sizes.Length > 1 ? [context.Findings.Each(sizes, i => Invariant($"{far.Counts[i]!.Value}, which measure {context.Length(far.Measured[i]!.Value)} for {context.Length(far.Asked[i]!.Value)}"))] : [],
            Help = Beside(context, far, first, off > Rational.Zero, what) + "choose another multiple or length, or allow more behind `within`",
        };
    }

    // The next allowed count on the length's other side, and the nearest of all.
    private static string Beside(Context context, CountDistance far, int size, bool tooWide, string what)
    {
        var others = new List<string>();
        var other = far.Counts[size]!.Value + (tooWide ? -far.Allowed(size).Every : far.Allowed(size).Every);
        if (far.Allowed(size).Every > 1 && other > 0 && far.Measure(other) is { } one) others.Add(Invariant($"the next that fits on the other side, {other}, measures {context.Length(one)}"));
        if (far.Free(size) is { } free && free != far.Counts[size] && far.Measure(free) is { } two) others.Add(Invariant($"{free} {what}, which do not fit, would measure {context.Length(two)}"));
        return others.Count == 0 ? string.Empty : string.Join("; ", others) + ": ";
    }
}
