using Turnrow.Fabric.Numbers;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Stitches picked up evenly that are far longer or shorter than the edge.</summary>
public static class PickUpFlat
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "pick-up-flat",
        "TR0441",
        Severity.Warning,
        """
        So many stitches are picked up along an edge, and by the gauges they are a sixth longer or shorter than the edge is, or more. Too many
        of them ripple, too few draw the edge in. Take about as many as would lie flat; or, if a frill or a gathered edge is meant, accept it
        with the reason.
        """,
        SmallPattern.With("Mitten",
            """
            gauge sc: 20 stitches and 20 rows to 10 cm

            piece cuff
              begin with 12 stitches
              row 1 RS: sc across
              straight 29 rows

            piece border picked up along cuff right edge: 20 sc evenly
              row 2: sc across
            """),
        SmallPattern.With("Mitten",
            """
            gauge sc: 20 stitches and 20 rows to 10 cm

            piece cuff
              begin with 12 stitches
              row 1 RS: sc across
              straight 29 rows

            piece border picked up along cuff right edge: 28 sc evenly
              row 2: sc across
            """));

    internal static Diagnostic At(Context context, RateSyntax rate, int[] sizes, Rational?[] wide, Rational?[] lengths, Func<int, int> flat)
    {
        var first = sizes[0];
        var longer = wide[first]!.Value > lengths[first]!.Value;
        return new(Kind, rate.Span, $"by the gauge these stitches are {context.Length(wide[first]!.Value)} long{context.Findings.InSize(first)}, and the edge is {context.Length(lengths[first]!.Value)}: they would {(longer ? "ripple" : "draw it in")}")
        {
            Sizes = context.Findings.Names(sizes),
            Ledger = sizes.Length > 1
                ?
                [
                    $"stitches: {context.Findings.Each(sizes, i => context.Length(wide[i]!.Value))}",
                    $"edge:     {context.Findings.Each(sizes, i => context.Length(lengths[i]!.Value))}",
                ]
                : [],
            Help = $"about {context.Findings.Each(sizes, i => Invariant($"{flat(i)}"))} would lie flat; if it is meant, accept pick-up-flat with the reason",
        };
    }
}
