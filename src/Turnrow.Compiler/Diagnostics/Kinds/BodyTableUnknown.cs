using Turnrow.Fabric.Bodies;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A table of body measurements that is not known.</summary>
public static class BodyTableUnknown
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "body-table",
        "TR0401",
        Severity.Error,
        """
        The `body` line brings in the measurements of bodies, so that `bust` or `upper-arm` can be used without a `measure` line. It knows the
        published standard tables `women`, `men`, `children` (with `youth`) and `babies`, in `cm` or in `in` (inches), and the numbers are those
        printed for that unit. A table of your own stands in a file beside the pattern: `body "my-sizes.csv"`.
        """,
        SmallPattern.With("Top",
            """
            sizes S, M
            gauge dc: 18 stitches and 9 rows to 10 cm
            body woman, cm
            measure bust is 86 (97) cm
            count hem is stitches for bust / 2

            piece back
              begin with hem stitches
              row 1 RS: dc across
            """),
        SmallPattern.With("Top",
            """
            sizes S, M
            gauge dc: 18 stitches and 9 rows to 10 cm
            body women, cm
            count hem is stitches for bust / 2

            piece back
              begin with hem stitches
              row 1 RS: dc across
            """));

    internal static Diagnostic At(TextSpan span, string table)
    {
        var near = Spelling.Nearest(table, BodyTables.Names);
        return new(Kind, span, $"there is no table of body measurements called `{table}`")
        {
            Help = (near is null ? string.Empty : $"did you mean `{near}`? ") + $"the tables are {Findings.Join(BodyTables.Names)}; one of your own is named with its file, body \"my-sizes.csv\"",
            Mends = near is null ? [] : [new Mend($"write {near}", span, near)],
        };
    }

    internal static Diagnostic Unit(TextSpan span) =>
        new(Kind, span, "a body is measured in cm or in inches here")
        {
            Help = "write `cm` or `in`",
            Mends = [new Mend("write cm", span, "cm"), new Mend("write in", span, "in")],
        };
}
