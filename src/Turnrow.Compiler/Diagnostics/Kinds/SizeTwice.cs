using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A line for a size that it names twice.</summary>
public static class SizeTwice
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "size-twice",
        "TR0364",
        Severity.Error,
        """
        A line for some sizes names one of them twice. It would be done once in that size; but most likely another size is meant by one of the
        two. Take one away, or correct it.
        """,
        SmallPattern.With("Vest",
            """
            sizes S, M, L

            piece back
              begin with 30 (32, 34) stitches
              row 1 RS: dc across
              for S, S to M: straight 2 rows
              straight 4 rows
            """),
        SmallPattern.With("Vest",
            """
            sizes S, M, L

            piece back
              begin with 30 (32, 34) stitches
              row 1 RS: dc across
              for S to M: straight 2 rows
              straight 4 rows
            """));

    internal static Diagnostic At(TextSpan span, string size) =>
        new(Kind, span, $"size `{size}` is named twice in this line")
        {
            Help = "name each size once",
        };
}
