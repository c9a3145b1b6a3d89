using Turnrow.Compiler.Pieces;
using Turnrow.Fabric.Patterns;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A stitch pattern that can't be worked where it is asked for.</summary>
public static class PatternHere
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "pattern-here",
        "TR0459",
        Severity.Error,
        """
        The stitch pattern comes out by itself, but not on what is there: its first row says that it is a right-side row and a wrong-side row comes next,
        or it is written in rounds and the piece is worked in rows, or the row before has spaces where the pattern's row wants stitches. Work a plain
        row first, or begin the pattern where it fits.
        """,
        SmallPattern.With("Scarf",
            """
            stitch pattern shells over multiple of 6 + 1
              row 1 RS: sc, (skip 2, 5 dc in next, skip 2, sc) across
              row 2: 3 dc in first, skip 2, sc, (skip 2, 5 dc in next, skip 2, sc) until 3 remain, skip 2, 3 dc in next
              row 3: sc, (skip 2, 5 dc in next, skip 2, sc) across
              repeat rows 2 to 3

            piece scarf
              begin with 25 stitches
              row 1 RS: sc across
              straight 8 rows, in shells
            """),
        SmallPattern.With("Scarf",
            """
            stitch pattern shells over multiple of 6 + 1
              row 1 RS: sc, (skip 2, 5 dc in next, skip 2, sc) across
              row 2: 3 dc in first, skip 2, sc, (skip 2, 5 dc in next, skip 2, sc) until 3 remain, skip 2, 3 dc in next
              row 3: sc, (skip 2, 5 dc in next, skip 2, sc) across
              repeat rows 2 to 3

            piece scarf
              begin with 25 stitches
              row 1 RS: sc across
              row 2: sc across
              straight 8 rows, in shells
            """));

    internal static Diagnostic OtherSide(Context context, TextSpan span, PieceState piece, StitchPattern pattern, int[] sizes)
    {
        var right = pattern.Rows[0].RightSide == true;
        return new(Kind, span, Invariant($"{pattern.Name} begins with a {(right ? "right" : "wrong")}-side row, and row {piece.Builders[sizes[0]].RowCount + 1} of {piece.Name} is on the other side{context.Findings.InSizes(sizes)}"))
        {
            Sizes = context.Findings.Names(sizes),
            Help = "work one row more or fewer before it",
        };
    }

    internal static Diagnostic OtherWay(Context context, TextSpan span, PieceState piece, StitchPattern pattern, int[] sizes)
    {
        var (one, other) = pattern.IsRound ? ("rounds", "rows") : ("rows", "rounds");
        return new(Kind, span, $"{pattern.Name} is written in {one}, and {piece.Name} is worked in {other} here")
        {
            Sizes = context.Findings.Names(sizes),
            Help = $"write the pattern a second time, in {other}: most need other stitches beside the repeats then",
        };
    }

    internal static Diagnostic At(Context context, TextSpan span, PieceState piece, InPattern of, int[] sizes, Func<int, RowFailure> failureOf)
    {
        var first = failureOf(sizes[0]);
        return new(Kind, span, Invariant($"row {of.Index + 1} of {of.Pattern.Name} can't be worked as {RowName.Of(piece, sizes[0], first.Row)} of {piece.Name}{context.Findings.InSizes(sizes)}: {PatternFault.Reason(context, first.Fault, first.Places)}"))
        {
            Sizes = context.Findings.Names(sizes),
            Help = "work a plain row before the pattern, or shape only where whole repeats come or go",
        };
    }
}
