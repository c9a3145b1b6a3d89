using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A divided row that does not come out.</summary>
public static class DivideSum
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "divide-sum",
        "TR0344",
        Severity.Error,
        """
        A `divide` line shares out the whole row, read from its right edge, and every stitch has to belong to a part or be skipped. Here
        the numbers together are not the stitches that the row has, so the parts would lie in the wrong places. Add them up against the
        row's count and change one of them; what lies between two parts is `skip`.
        """,
        SmallPattern.With("Yoke",
            """
            piece yoke
              begin with 30 stitches
              row 1 RS: dc across
              divide: 12 for back, skip 4, 12 for front

            piece back from yoke: back
              row 1: dc across

            piece front from yoke: front
              row 1: dc across
            """),
        SmallPattern.With("Yoke",
            """
            piece yoke
              begin with 30 stitches
              row 1 RS: dc across
              divide: 12 for back, skip 6, 12 for front

            piece back from yoke: back
              row 1: dc across

            piece front from yoke: front
              row 1: dc across
            """));

    internal static Diagnostic At(Context context, DivideStatement statement, int[] sizes, int?[] sums, IReadOnlyList<int?[]> parts, Func<int, int> there)
    {
        var first = sizes[0];
        var off = there(first) - sums[first]!.Value;
        return new(Kind, statement.Parts[0].Span.To(statement.Parts[^1].Span), Invariant($"the parts come to {Counted.Stitches(sums[first]!.Value)}{context.Findings.InSize(first)}, and the row has {there(first)}: {Math.Abs(off)} too {(off > 0 ? "few" : "many")}"))
        {
            Sizes = context.Findings.Names(sizes),
            Ledger =
            [
                Invariant($"{string.Join(" + ", parts.Select(p => Counted.Plain(p[first]!.Value)))} = {sums[first]}"),
                .. sizes.Length > 1 ? (string[])[context.Findings.Each(sizes, i => Invariant($"parts {sums[i]}, row {there(i)}"))] : [],
            ],
            Help = "every stitch of the row belongs to a part or is skipped: change one of the numbers",
        };
    }
}
