using Turnrow.Fabric.Numbers;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A length that no piece of a sample can have.</summary>
public static class MadeLengthWrong
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "made-length",
        "TR0421",
        Severity.Error,
        """
        A `made` line gives what a piece of the finished sample measures, and no piece measures nothing, or more than 100 metres. Lay the
        piece flat, measure it where it is widest and from its first row to its last, and write what the tape says with its unit.

        Tip: the line may give one of the two alone, `made S: back 45.5 cm wide`.
        """,
        SmallPattern.With("Scarf",
            """
            sizes Short, Long
            gauge dc: 18 stitches and 9 rows to 10 cm

            piece scarf
              begin with 36 stitches
              row 1 RS: dc across
              straight to 120 (160) cm

            made Short: scarf 0 cm wide, 120 cm high
            """),
        SmallPattern.With("Scarf",
            """
            sizes Short, Long
            gauge dc: 18 stitches and 9 rows to 10 cm

            piece scarf
              begin with 36 stitches
              row 1 RS: dc across
              straight to 120 (160) cm

            made Short: scarf 20 cm wide, 120 cm high
            """));

    /// <summary>The longest that is believed, in centimetres.</summary>
    internal static Rational Most => 10_000;

    internal static Diagnostic At(MadePartSyntax part) =>
        new(Kind, part.Span, $"no piece is so {(part.Wide ? "wide" : "high")}: a measurement is above 0, and at most 100 m")
        {
            Help = "write what the tape says, with its unit: `45.5 cm wide`, `18 in wide`",
        };
}
