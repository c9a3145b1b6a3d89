using Turnrow.Fabric.Bodies;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A size that the table of body measurements does not have.</summary>
public static class BodySize
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "body-size",
        "TR0402",
        Severity.Error,
        """
        The `body` line takes each measurement from the column of the table that has the size's name, and the table has no column of this name.
        Give the size the table's name, or leave the `body` line out and write the measurements yourself (`measure bust is 86 (97) cm`), or keep
        a table of your own in a file beside the pattern.
        """,
        SmallPattern.With("Top",
            """
            sizes Small, Large
            gauge dc: 18 stitches and 9 rows to 10 cm
            body women, cm
            count hem is 40 (50)

            piece back
              begin with hem stitches
              row 1 RS: dc across
            """),
        SmallPattern.With("Top",
            """
            sizes S, L
            gauge dc: 18 stitches and 9 rows to 10 cm
            body women, cm
            count hem is 40 (50)

            piece back
              begin with hem stitches
              row 1 RS: dc across
            """));

    internal static Diagnostic At(Findings findings, TextSpan span, int[] missing, BodyTable table) =>
        new(Kind, span, $"the table has no {(missing.Length == 1 ? "size" : "sizes")} {Findings.Join([.. missing.Select(i => findings.SizeNames[i].Length == 0 ? "without a name" : findings.SizeNames[i])])}")
        {
            Sizes = findings.Names(missing),
            Help = $"its sizes are {Findings.Join([.. table.Sizes.Select(names => names[0])])}; name yours so on the `sizes` line",
        };
}
