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

    internal static Diagnostic At(TextSpan span, string stitch, int chains, TextSpan header, string lineEnd)
    {
        var line = Invariant($"turn {stitch}: ch {chains}");
        return new(Kind, span, Invariant($"the ch {chains} at the turn of {stitch} counts as a stitch in some patterns and not in others, and this one does not say"))
        {
            Help = $"write at the top `{line} counts`, as it is taken to be for now, or `{line} does not count`",
            Mends =
            [
                new Mend($"`{line} counts`", header, $"{line} counts{lineEnd}{lineEnd}"),
                new Mend($"`{line} does not count`", header, $"{line} does not count{lineEnd}{lineEnd}"),
            ],
        };
    }
}
