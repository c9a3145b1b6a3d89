using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A length and a plain number mixed.</summary>
public static class UnitMix
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "unit-mix",
        "TR0216",
        Severity.Error,
        """
        Lengths and plain numbers do not mix in a sum: 20 cm and 2 of what? Two lengths can be added or taken from each other, a length
        can be multiplied or divided by a plain number, and a length divided by a length is a plain number. Mostly a unit was forgotten:
        write `2 cm` or `1 in`.
        """,
        SmallPattern.With("Scarf",
            """
            gauge dc: 18 stitches and 9 rows to 10 cm
            measure chest is 80 cm
            count width is stitches for chest + 4

            piece scarf
              begin with width stitches
              row 1 RS: dc across
            """),
        SmallPattern.With("Scarf",
            """
            gauge dc: 18 stitches and 9 rows to 10 cm
            measure chest is 80 cm
            count width is stitches for chest + 4 cm

            piece scarf
              begin with width stitches
              row 1 RS: dc across
            """));

    internal static Diagnostic At(TextSpan span, bool? lengthFirst) =>
        new(Kind, span, lengthFirst switch
        {
            true => "a plain number can't be added to a length: 2 of what?",
            false => "a length can't be added to a plain number",
            null => "two lengths can only be added, subtracted, or one divided by the other",
        })
        {
            Help = lengthFirst is null ? "one of the two is most likely a plain number" : "write the unit behind the number: 2 cm, or 1 in",
        };
}
