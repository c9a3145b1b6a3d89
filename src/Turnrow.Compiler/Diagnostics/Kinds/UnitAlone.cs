using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A length in a unit that the file has nowhere else.</summary>
public static class UnitAlone
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "unit-alone",
        "TR0377",
        Severity.Warning,
        """
        Every other length of this file is in one kind of unit, and this one is in another: centimetres among inches, or inches among
        centimetres. An inch is two and a half centimetres, so if the unit is a slip, everything that comes of the length is far too large or too
        small. Change the unit. If it is meant, as for elastic that is sold by the inch, leave it so.
        """,
        SmallPattern.With("Scarf",
            """
            gauge dc: 18 stitches and 9 rows to 10 cm
            measure width is 20 cm
            measure length is 60 in
            count hem is stitches for width + 2 cm

            piece scarf
              begin with hem stitches
              row 1 RS: dc across
              straight to length - 4 cm
            """),
        SmallPattern.With("Scarf",
            """
            gauge dc: 18 stitches and 9 rows to 10 cm
            measure width is 20 cm
            measure length is 150 cm
            count hem is stitches for width + 2 cm

            piece scarf
              begin with hem stitches
              row 1 RS: dc across
              straight to length - 4 cm
            """));

    internal static Diagnostic At(TextSpan span, string unit, string others) =>
        new(Kind, span, $"this is the only length of the file in {unit}; all the others are in {others}")
        {
            Help = "look whether the unit is right; if it is, leave it so",
        };
}
