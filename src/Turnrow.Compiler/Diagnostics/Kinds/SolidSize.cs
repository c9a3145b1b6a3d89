using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Solids;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A body whose measures do not make one.</summary>
public static class SolidSize
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "solid-size",
        "TR0471",
        Severity.Error,
        """
        A sphere and a dome are told by how wide they are. An egg, a cone and a cylinder need their height too, `8 cm across by 11 cm high`, and an
        egg is at least as high as it is wide. A ring needs its thickness, `15 cm across by 4 cm thick`; it is measured over the outside, so it
        can be half as thick at most, and then has no hole.
        """,
        SmallPattern.With("Egg",
            """
            gauge sc: 20 stitches and 20 rows to 10 cm

            piece egg
              begin with 6 stitches
              round 1: sc around
              solid egg 10 cm across by 7 cm high
            """),
        SmallPattern.With("Egg",
            """
            gauge sc: 20 stitches and 20 rows to 10 cm

            piece egg
              begin with 6 stitches
              round 1: sc around
              solid egg 7 cm across by 10 cm high
            """));

    internal static Diagnostic Other(SolidStatement solid, SolidShape shape)
    {
        var span = solid.Other?.Span ?? solid.Across.Span;
        return shape.Measure switch
        {
            SolidMeasure.None => new(Kind, span, $"how wide it is says all of a {shape.Name}") { Help = $"such a line reads: solid {shape.Name} 10 cm across" },
            SolidMeasure.Thick => new(Kind, span, $"how thick the {shape.Name} is should be said too") { Help = $"such a line reads: solid {shape.Name} 15 cm across by 4 cm thick" },
            _ => new(Kind, span, $"how high the {shape.Name} is should be said too") { Help = $"such a line reads: solid {shape.Name} 8 cm across by 11 cm high" },
        };
    }

    internal static Diagnostic At(Context context, SolidStatement solid, SolidShape shape, int[] sizes, Func<int, Rational> across, Func<int, Rational> other)
    {
        var first = sizes[0];
        var (wide, second) = (across(first), other(first));
        var thick = shape.Measure == SolidMeasure.Thick;
        var limit = wide <= Rational.Zero || second <= Rational.Zero ? "both are above nothing"
            : thick ? $"half its width, {context.Length((wide / 2)!.Value)}, is the most"
            : $"it is at least as high as it is wide, {context.Length(wide)}";
        return new(Kind, solid.Other!.Span, $"{context.Length(second)} {(thick ? "thick" : "high")} is no {shape.Name} of {context.Length(wide)} across{context.Findings.InSize(first)}: {limit}")
        {
            Sizes = context.Findings.Names(sizes),
            Ledger = sizes.Length > 1 ? [context.Findings.Each(sizes, i => $"{context.Length(other(i))} for {context.Length(across(i))}")] : [],
            Help = thick ? "say the width over the outside, and the thickness of the tube" : "say the larger measure behind `by`; for a flat one take a dome, or `shape` lines",
        };
    }
}
