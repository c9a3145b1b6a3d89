using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A body of which a round would have to grow or shrink by too much.</summary>
public static class SolidSteep
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "solid-steep",
        "TR0473",
        Severity.Error,
        """
        Each round of a body has as many stitches as go round it there. From one round to the next a count can double, with two stitches in
        each, or halve, with two together all round; more can't be worked. This happens where the round before the body has not the width that the
        body begins with, or where the rounds are very high for their stitches. Begin with another count, or bring the count there first.
        """,
        SmallPattern.With("Ball",
            """
            gauge sc: 20 stitches and 20 rows to 10 cm

            piece ball
              begin with 3 stitches
              round 1: sc around
              solid sphere 10 cm across
            """),
        SmallPattern.With("Ball",
            """
            gauge sc: 20 stitches and 20 rows to 10 cm

            piece ball
              begin with 6 stitches
              round 1: sc around
              solid sphere 10 cm across
            """));

    internal static Diagnostic At(Context context, SolidStatement solid, int[] sizes, Func<int, (int Round, int Before, int Wanted)> steep)
    {
        var (round, before, wanted) = steep(sizes[0]);
        var (limit, way) = wanted > before ? (2 * before, "two in each") : ((before + 1) / 2, "two together all round");
        return new(Kind, solid.Span, Invariant($"round {round} of this {solid.Shape.Text} has {Counted.Stitches(wanted)} round it{context.Findings.InSize(sizes[0])}, but {before} can become {limit} at {(wanted > before ? "most" : "least")}, by {way}"))
        {
            Sizes = context.Findings.Names(sizes),
            Ledger = sizes.Length > 1 ? [context.Findings.Each(sizes, i => Invariant($"{steep(i).Before} to {steep(i).Wanted}"))] : [],
            Help = wanted > before ? "begin with more, or bring the count there in rounds before this line" : "end with fewer before this line, or make the body larger",
        };
    }
}
