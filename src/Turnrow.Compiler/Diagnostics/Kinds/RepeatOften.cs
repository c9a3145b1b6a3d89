using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A repeat of rows in a piece that does not say how often.</summary>
public static class RepeatOften
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "repeat-often",
        "TR0463",
        Severity.Error,
        """
        In a piece a repeat says how often its rows are worked again: `repeat rows 3 to 6, 9 more times`, or `10 times in all`. Without that it stands
        in a stitch pattern, where it says which rows come again and again.
        """,
        SmallPattern.With("Scarf",
            """
            piece scarf
              begin with 24 stitches
              row 1 RS: dc across
              row 2: sc across
              repeat rows 1 to 2
            """),
        SmallPattern.With("Scarf",
            """
            piece scarf
              begin with 24 stitches
              row 1 RS: dc across
              row 2: sc across
              repeat rows 1 to 2, 9 more times
            """));

    internal static Diagnostic At(TextSpan span) => new(Kind, span, "this repeat does not say how often")
    {
        Help = "write `, 9 more times` behind it, or `, 10 times in all`",
        Mends = [new Mend("say how often", new TextSpan(span.End, 0), ", 9 more times")],
    };
}
