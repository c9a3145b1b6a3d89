using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Fabric.Patterns;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Values;

/// <summary>By which gauge a length is counted: the stitch that is named, or the pattern's only one.</summary>
internal static class GaugeChoice
{
    /// <summary>The gauge; null, and reported, if it is not there or could be any of several.</summary>
    public static Gauge? For(Context context, NameSyntax? stitch, TextSpan span, bool rows)
    {
        if (stitch is not null) return Named(context, stitch);
        if (context.Gauges.Gauges.Count == 1) return context.Gauges.Gauges[0];
        if (context.GaugesInDoubt) return null;
        context.Findings.Add(context.Gauges.Gauges.Count == 0
            ? GaugeMissing.At(span, null)
            : GaugeUnclear.At(span, [.. context.Gauges.Gauges.Select(g => context.Word(g.Stitch))], rows));
        return null;
    }

    private static Gauge? Named(Context context, NameSyntax word)
    {
        if (context.StitchOf(word) is not { } stitch) return null;
        if (context.Gauges.Of(stitch) is { } gauge) return gauge;
        if (!context.GaugesInDoubt) context.Findings.Add(GaugeMissing.At(word.Span, word.Text));
        return null;
    }
}
