using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A piece that is joined to nothing.</summary>
public static class PieceUnjoined
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "piece-unjoined",
        "TR0372",
        Severity.Warning,
        """
        This piece is neither joined to another by a seam, nor picked up along one, nor does a part of it go on. In a garment that mostly
        means that a seam was forgotten, and the maker would be left with a sleeve in her hand. Write the `seam` line. If the piece is
        really by itself, like a belt, leave it: this is only a reminder. Once `weave in ends` says that the pattern is whole, the same is said of
        several pieces that are joined to each other and to none of the others.
        """,
        SmallPattern.With("Cushion",
            """
            piece front
              begin with 12 stitches
              row 1 RS: dc across

            piece back
              begin with 12 stitches
              row 1 RS: dc across

            piece pocket
              begin with 6 stitches
              row 1 RS: dc across

            seam front foundation with back foundation
            """),
        SmallPattern.With("Cushion",
            """
            piece front
              begin with 12 stitches
              row 1 RS: dc across

            piece back
              begin with 12 stitches
              row 1 RS: dc across

            piece pocket
              begin with 6 stitches
              row 1 RS: dc across

            seam front foundation with back foundation
            seam pocket right edge with front right edge
            """));

    internal static Diagnostic At(TextSpan span, string name) =>
        new(Kind, span, $"{name} is joined to no other piece")
        {
            Help = "write a `seam` line that joins it; if it is worn by itself, leave it so",
        };

    internal static Diagnostic Group(TextSpan span, IReadOnlyList<string> names, string others) =>
        new(Kind, span, $"{Findings.Join(names)} are joined to each other, and to nothing that is joined to {others}")
        {
            Help = "write a `seam` line that joins them; if the pattern is for two things, leave it so",
        };
}
