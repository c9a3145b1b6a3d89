using Turnrow.Fabric.Words;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>The corner is not where the words have it.</summary>
public static class CornerDistance
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "corner-distance",
        "TR0434",
        Severity.Error,
        """
        `in corner` means the very next place: the way to it is said in words of its own, so that a count that is off shows. Here stitches
        come before the corner; or so many were to remain before it, and it is nearer than that. `dc to corner` goes right up to it, `dc until
        2 remain before corner` stops two short of it.
        """,
        SmallPattern.With("Kerchief",
            """
            piece kerchief
              begin with 9 stitches
              row 1 RS: dc 5, mark corner, dc across
              row 2: dc 3, 3 dc in corner, dc across
            """),
        SmallPattern.With("Kerchief",
            """
            piece kerchief
              begin with 9 stitches
              row 1 RS: dc 5, mark corner, dc across
              row 2: dc to corner, 3 dc in corner, dc across
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, string word, RowFault fault)
    {
        var before = $"{Counted.Places(fault.There)} {(fault.There == 1 ? "comes" : "come")} before the corner";
        return new(Kind, span, $"`{word}`: {(fault.There == 0 ? "no place comes before the corner" : before)}{context.Findings.InSize(sizes[0])}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = fault.Kind == RowFaultKind.CornerNotNext
                ? "go up to it first: `dc to corner`"
                : "let fewer remain, or look at the rows before: the corner may be marked too near the edge",
        };
    }
}
