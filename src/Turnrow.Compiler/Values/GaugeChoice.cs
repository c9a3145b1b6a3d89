using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Fabric.Patterns;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Values;

/// <summary>By which gauge a length is counted: the stitch that is named, or the pattern's only one.</summary>
internal static class GaugeChoice
{
    /// <summary>The gauge; null, and reported, if it is not there or could be any of several.</summary>
    /// <param name="context">The pattern's gauges.</param>
    /// <param name="stitch">The stitch that is named; null for none.</param>
    /// <param name="length">Where the length stands …</param>
    /// <param name="word">… and the word that says what it becomes: <c>stitches</c>, <c>rows</c>.</param>
    /// <param name="rows">True if it becomes rows.</param>
    public static Gauge? For(Context context, NameSyntax? stitch, TextSpan length, TextSpan word, bool rows)
    {
        if (stitch is not null) return Named(context, stitch);
        if (context.Gauges.Gauges.Count == 1) return context.Gauges.Gauges[0];
        if (context.GaugesInDoubt) return null;
        context.Findings.Add(context.Gauges.Gauges.Count == 0
            ? GaugeMissing.At(length, null)
            : GaugeUnclear.At(word, [.. context.Gauges.Gauges.Select(g => context.Word(g.Stitch))], rows));
        return null;
    }

    private static Gauge? Named(Context context, NameSyntax word)
    {
        if (context.FabricOf(word) is not { } stitch) return null;
        if (context.Gauges.Of(stitch) is { } gauge) return gauge;
        if (!context.GaugesInDoubt) context.Findings.Add(GaugeMissing.At(word.Span, word.Text));
        return null;
    }
}
