using Turnrow.Fabric.Bodies;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A file of body measurements that can not be used.</summary>
public static class BodyFile
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "body-file",
        "TR0403",
        Severity.Error,
        """
        A `body` line with a name in quotes reads the measurements from a file beside the pattern, saved from a spreadsheet as comma-separated
        values (CSV). Its first line may say where the numbers are from, `source,measured by me`; then comes `measure,unit,S,M,L` with the names
        of the sizes; then a line a measurement, `bust,cm,86,97,107`. A range, `81-86`, stands for its upper end. The message says which of this
        is missing.
        """,
        SmallPattern.With("Top",
            """
            sizes S, M
            gauge dc: 18 stitches and 9 rows to 10 cm
            body "nowhere.csv"
            count hem is 40 (50)

            piece back
              begin with hem stitches
              row 1 RS: dc across
            """),
        SmallPattern.With("Top",
            """
            sizes S, M
            gauge dc: 18 stitches and 9 rows to 10 cm
            measure bust is 86 (97) cm
            count hem is stitches for bust / 2

            piece back
              begin with hem stitches
              row 1 RS: dc across
            """));

    internal static Diagnostic Missing(TextSpan span, string file) =>
        new(Kind, span, $"there is no file {file} beside the pattern that could be read")
        {
            Help = "put it into the same folder, and write its name as it is there, capitals too",
        };

    internal static Diagnostic At(TextSpan span, string file, BodyTableFault fault) =>
        new(Kind, span, Invariant($"line {fault.Line} of {file} can't be used: ") + What(fault))
        {
            Help = "a line reads bust,cm,86,97,107: the name, the unit, then a number for each size named on the line measure,unit,S,M,L",
        };

    private static string What(BodyTableFault fault) => fault.Kind switch
    {
        BodyTableFaultKind.NoHeading => "the line measure,unit,… with the sizes' names has to come first",
        BodyTableFaultKind.CellsMissing => $"`{fault.Text}` does not have one number for each size",
        BodyTableFaultKind.UnknownUnit => $"the unit is `{fault.Text}`, and it has to be cm or in",
        BodyTableFaultKind.MeasureTwice => $"`{fault.Text}` has a second line, and which of the two counts is not said",
        _ => $"`{fault.Text}` is no number and no range",
    };
}
