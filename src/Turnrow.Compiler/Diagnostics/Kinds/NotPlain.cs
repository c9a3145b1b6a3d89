using Turnrow.Compiler.Pieces;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>`straight` or `shape` after a row that is not plain.</summary>
public static class NotPlain
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "not-plain",
        "TR0313",
        Severity.Error,
        """
        `straight` and `shape` go on as the last row did: one plain stitch into each place, always the same. The last row here is no such
        row: it has several kinds of stitch, or holes, or stitches are passed over. So it can't be told what going on
        would be. Increases and decreases of one stitch leave no doubt: after `dc inc 6 evenly` it is that stitch in each. Work one plain row first, or repeat the rows of your stitch pattern: `repeat rows 2 to 3, 5 more times`.
        """,
        SmallPattern.With("Curtain",
            """
            piece curtain
              begin with 21 stitches
              row 1 RS: dc across
              row 2: dc, (ch 1, skip 1, dc) across
              straight 4 rows
            """),
        SmallPattern.With("Curtain",
            """
            piece curtain
              begin with 21 stitches
              row 1 RS: dc across
              row 2: dc, (ch 1, skip 1, dc) across
              row 3: dc in each st and sp
              straight 4 rows
            """));

    internal static Diagnostic At(Context context, TextSpan span, string word, PieceState piece, int[] sizes, Func<int, int> row) =>
        new(Kind, span, Invariant($"{RowName.Of(piece, sizes[0], row(sizes[0]))} is not one plain stitch into each place{(sizes.Length == context.Sizes ? string.Empty : context.Findings.InSizes(sizes, row))}, so `{word}` can't go on with it"))
        {
            Sizes = context.Findings.Names(sizes),
            Help = Invariant($"work a plain {RowName.Next(piece, sizes[0])} first (`{RowName.Next(piece, sizes[0])}: dc in each st and sp`), or work this one again (`repeat {RowName.Of(piece, sizes[0], row(sizes[0]))}, 5 more times`)"),
        };
}
