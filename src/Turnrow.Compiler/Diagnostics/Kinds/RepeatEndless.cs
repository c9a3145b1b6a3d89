using Turnrow.Compiler.Pieces;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A repeat that uses up nothing.</summary>
public static class RepeatEndless
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "repeat-endless",
        "TR0309",
        Severity.Error,
        """
        `across` means: again and again until the stitches of the row below are used up. What is to be repeated here uses up none of them.
        Chains go over the work, and a stitch `in same` goes where one is already, so the repeat would stay on the spot for ever. Work or
        skip a stitch in each repeat, as in `(ch 1, skip 1, dc) across`, or say how many times.
        """,
        SmallPattern.With("Curtain",
            """
            piece curtain
              begin with 21 stitches
              row 1 RS: dc across
              row 2: dc, (ch 1, dc in same) across
            """),
        SmallPattern.With("Curtain",
            """
            piece curtain
              begin with 21 stitches
              row 1 RS: dc across
              row 2: dc, (ch 1, skip 1, dc) across
            """));

    internal static Diagnostic At(TextSpan span, PieceState piece, int size, string word) =>
        new(Kind, span, $"`{word}` uses up no stitches, so it would never come to the end of the {RowName.Next(piece, size)}")
        {
            Help = $"work or skip a stitch in it, `(ch 1, skip 1, dc) {RowName.ToItsEnd(piece, size)}`, or say how many times",
        };
}
