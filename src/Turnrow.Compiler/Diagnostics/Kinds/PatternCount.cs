using Turnrow.Compiler.Pieces;
using Turnrow.Fabric.Patterns;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A stitch pattern over a count that is no whole number of repeats.</summary>
public static class PatternCount
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "pattern-count",
        "TR0458",
        Severity.Error,
        """
        A stitch pattern comes out over whole repeats and the few stitches beside them: a multiple of 6 + 1 over 7, 13, 19, 25 … stitches. Here
        there are more than one such count, and not enough for the next. The message names the counts on both sides and what they measure. Let the count
        fit from the beginning, `count hem is stitches for 45 cm, multiple of shells`, or increase evenly in a row before the pattern.
        """,
        SmallPattern.With("Scarf",
            """
            stitch pattern shells over multiple of 6 + 1
              row 1: sc, (skip 2, 5 dc in next, skip 2, sc) across
              row 2: 3 dc in first, skip 2, sc, (skip 2, 5 dc in next, skip 2, sc) until 3 remain, skip 2, 3 dc in next
              row 3: sc, (skip 2, 5 dc in next, skip 2, sc) across
              repeat rows 2 to 3

            piece scarf
              begin with 24 stitches
              straight 8 rows, in shells
            """),
        SmallPattern.With("Scarf",
            """
            stitch pattern shells over multiple of 6 + 1
              row 1: sc, (skip 2, 5 dc in next, skip 2, sc) across
              row 2: 3 dc in first, skip 2, sc, (skip 2, 5 dc in next, skip 2, sc) until 3 remain, skip 2, 3 dc in next
              row 3: sc, (skip 2, 5 dc in next, skip 2, sc) across
              repeat rows 2 to 3

            piece scarf
              begin with 25 stitches
              straight 8 rows, in shells
            """));

    internal static Diagnostic At(Context context, TextSpan span, PieceState piece, StitchPattern pattern, int[] sizes, Func<int, int> places)
    {
        var first = sizes[0];
        var over = pattern.Plus > 0 ? Invariant($"{pattern.Multiple} + {pattern.Plus}") : Invariant($"{pattern.Multiple}");
        return new(Kind, span, Invariant($"{pattern.Name} is worked over a multiple of {over}, and {piece.Name} has {Counted.Stitches(places(first))} here{context.Findings.InSizes(sizes, places)}"))
        {
            Sizes = context.Findings.Names(sizes),
            Ledger = [.. sizes.Select(i => Fitting(context, pattern, places(i), i, sizes.Length > 1))],
            Help = Invariant($"let the count fit, `count hem is stitches for 45 cm, multiple of {pattern.Name}`, or work a row before it that increases to one that does"),
        };
    }

    // "24: 19 (3 repeats, 10.6 cm) or 25 (4 repeats, 13.9 cm) fit"
    private static string Fitting(Context context, StitchPattern pattern, int places, int size, bool several)
    {
        var (below, above) = pattern.Around(places);
        var (name, start) = (context.Findings.SizeNames[size], Counted.Plain(places));
        var label = several && name.Length > 0 ? $"{name}, {start}" : start;
        return below is { } less
            ? $"{label}: {One(context, pattern, less)} or {One(context, pattern, above)} fit"
            : $"{label}: {One(context, pattern, above)} fit";
    }

    private static string One(Context context, StitchPattern pattern, int count)
    {
        var repeats = (count - pattern.Plus) / pattern.Multiple;
        var width = context.Gauges.Of(pattern.Fabric)?.WidthOf(count) is { } cm ? $", {context.Length(cm)}" : string.Empty;
        return Invariant($"{count} ({repeats} {(repeats == 1 ? "repeat" : "repeats")}{width})");
    }
}
