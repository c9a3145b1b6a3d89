using Turnrow.Fabric.Words;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>What goes into a ring, and what does not.</summary>
public static class RingPlace
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "ring-place",
        "TR0491",
        Severity.Error,
        """
        A ring is one place, however much goes into it: its first round says how many stitches do, `6 sc in ring`, and a round with corners
        repeats a bracket in it, `(3 dc, ch 2, mark corner) 4 times in ring`. `sc around` would put one stitch in all of it. And only the first
        round or row of a piece that begins with a ring has one: all later ones go into the stitches of the one before.
        """,
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with ring
              round 1: sc around
            """),
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with ring
              round 1: 6 sc in ring
              round 2: inc 6 evenly = 12
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, RowFaultKind kind, string word)
    {
        var some = context.Findings.InSizes(sizes);
        if (kind == RowFaultKind.NoRing)
        {
            return new(Kind, span, $"`{word}` goes into a ring, and there is none below{some}")
            {
                Sizes = context.Findings.Names(sizes),
                Help = "only the first row of a piece that begins with a ring goes into it (`begin with ring`); later ones go into stitches and spaces",
            };
        }

        return new(Kind, span, word.Length > 0 ? $"`{word}` goes along a row, and below is a ring, which is one place{some}" : $"nothing goes into the ring that the piece begins with{some}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "say how many stitches go into it: `6 sc in ring`, `(3 dc, ch 2) 4 times in ring`",
        };
    }
}
