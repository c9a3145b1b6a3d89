using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A stitch that print turns in two ways.</summary>
public static class TurnUnsaid
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "turn-unsaid",
        "TR0373",
        Severity.Warning,
        """
        At the turn of an hdc row some patterns count the two chains as the first stitch, as older books do, and others do not. The number
        of stitches is the same either way, but the first and last stitch of each row go into other places, and who guesses wrong gains or
        loses a stitch in every row. Say it once at the top: `turn hdc: ch 2 counts` or `turn hdc: ch 2 does not count`.

        Tip: without counting, the edge is a little wavy but no gap opens beside the chain.
        """,
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with 20 stitches
              row 1 RS: hdc across
            """),
        SmallPattern.With("Coaster",
            """
            turn hdc: ch 2 does not count

            piece coaster
              begin with 20 stitches
              row 1 RS: hdc across
            """));

    internal static Diagnostic At(TextSpan span, string stitch, int chains) =>
        new(Kind, span, Invariant($"print turns {stitch} in two ways: the ch {chains} counts as a stitch in older books, and does not in many newer patterns"))
        {
            Help = Invariant($"say which at the top: turn {stitch}: ch {chains} counts, or turn {stitch}: ch {chains} does not count; here it is taken to count"),
        };
}
