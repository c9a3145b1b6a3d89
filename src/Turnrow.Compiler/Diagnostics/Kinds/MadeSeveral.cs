using Turnrow.Compiler.Pieces;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A piece that is made several times, and something that is said of it as if it were one.</summary>
public static class MadeSeveral
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "made-several",
        "TR0443",
        Severity.Error,
        """
        A piece with `make 2` is told once and made twice. Where it is joined to another piece, say which of them: `first sleeve`, `second
        sleeve`. So does a row that goes over it, `piece yoke across back, first sleeve, front, second sleeve`. A seam that closes each by itself
        says it of both at once: `seam sleeve right edge with sleeve left edge`. What is made as often and begins there is told once too, each at its own:
        `piece thumb, make 2 picked up around mitten thumb`. Mirror images, and rows over several pieces, are told piece by piece.
        """,
        SmallPattern.With("Mitten",
            """
            piece mitten, make 2
              begin with 12 stitches
              row 1 RS: sc across
              straight 9 rows
            piece cuff
              begin with 12 stitches
              row 1 RS: sc across
            seam mitten last row with cuff last row
            """),
        SmallPattern.With("Mitten",
            """
            piece mitten, make 2
              begin with 12 stitches
              row 1 RS: sc across
              straight 9 rows
            seam mitten right edge with mitten left edge
            """));

    internal static Diagnostic Which(TextSpan span, string piece, int copies) =>
        new(Kind, span, Invariant($"{piece} is made {copies} times, and it is not said which of them this is"))
        {
            Help = $"write {Each(piece, copies)}",
        };

    internal static Diagnostic WhichInRow(TextSpan span, string piece, int copies, int nth)
    {
        var said = $"{PieceOpening.Ordinals[nth]} {piece}";
        return new(Kind, span, Invariant($"{piece} is made {copies} times, and it is not said which of them this row goes over here"))
        {
            Help = $"write `{said}`; each of them lies in the row once",
            Mends = [new Mend($"write {said}", span, said)],
        };
    }

    internal static Diagnostic Once(TextSpan span, string piece) =>
        new(Kind, span, $"{piece} is made once, so there is no first or second one of it")
        {
            Help = $"write `{piece}`, or `piece {piece}, make 2` where it begins",
            Mends = [new Mend($"write {piece}", span, piece)],
        };

    internal static Diagnostic TooMany(TextSpan span, string piece, int copies) =>
        new(Kind, span, Invariant($"{piece} is made {copies} times, so there is no such one"))
        {
            Help = $"write {Each(piece, copies)}",
        };

    internal static Diagnostic Number(TextSpan span, int count, int most) =>
        new(Kind, span, Invariant($"a piece can't be made {count} times; 2 to {most} are told at once"))
        {
            Help = "leave it out where a piece is made once",
        };

    internal static Diagnostic Begun(TextSpan span, string piece) =>
        new(Kind, span, $"{piece} begins at another piece, and that is not made as often")
        {
            Help = "make both as often, so that each begins at its own; or tell each by itself, the second perhaps `mirrored`",
        };

    internal static Diagnostic Joins(TextSpan span, string piece) =>
        new(Kind, span, $"{piece} is made several times, and all of them would be joined to the same places here")
        {
            Help = "tell each by itself, or make them first and join them with a seam",
        };

    internal static Diagnostic GoesOn(TextSpan span, string piece) =>
        new(Kind, span, $"{piece} is made several times, and `from` can't say which of them goes on")
        {
            Help = "tell each by itself, and the second may be `mirrored`; a row that goes over all of one is written `across first …`",
        };

    private static string Each(string piece, int copies) =>
        string.Join(" or ", PieceOpening.Ordinals.Take(copies).Select(nth => $"`{nth} {piece}`"));
}
