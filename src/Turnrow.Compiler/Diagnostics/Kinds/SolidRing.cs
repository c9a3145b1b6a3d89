using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A ring whose last round does not meet its first.</summary>
public static class SolidRing
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "solid-ring",
        "TR0447",
        Severity.Warning,
        """
        A ring is worked from its hole outwards, over and back in again, and its last round is sewn to its first. As many stitches as go round the hole
        stand in the last round; where the piece was begun with another number, one in ten or more of them have nothing to be sewn to, and the second
        round jumps. Begin with as many as the last round has, or make the ring of another size.
        """,
        SmallPattern.With("Ring",
            """
            gauge sc: 20 stitches and 22 rows to 10 cm

            piece ring
              begin with 24 stitches
              round 1: sc around
              solid ring 15 cm across by 5 cm thick
            """),
        SmallPattern.With("Ring",
            """
            gauge sc: 20 stitches and 22 rows to 10 cm

            piece ring
              begin with 32 stitches
              round 1: sc around
              solid ring 15 cm across by 5 cm thick
            """));

    internal static Diagnostic At(Context context, SolidStatement solid, int[] sizes, Func<int, (int Begun, int Last)> rounds)
    {
        var (begun, last) = rounds(sizes[0]);
        return new(Kind, solid.Span, Invariant($"the last round of this ring has {Counted.Stitches(last)}{context.Findings.InSize(sizes[0])}, and the round that it is sewn to has {begun}"))
        {
            Sizes = context.Findings.Names(sizes),
            Ledger = sizes.Length > 1 ? [context.Findings.Each(sizes, i => Invariant($"{rounds(i).Begun} and {rounds(i).Last}"))] : [],
            Help = Invariant($"begin with {Counted.Stitches(last)}{context.Findings.InSize(sizes[0])}, or make the ring of another size"),
        };
    }
}
