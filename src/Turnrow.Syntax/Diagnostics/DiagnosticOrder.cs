namespace Turnrow.Syntax.Diagnostics;

/// <summary>The order in which diagnostics are shown: as their places stand in the file.</summary>
public static class DiagnosticOrder
{
    /// <summary>By place, then by code; those that agree in both stay in the order in which they were found.</summary>
    public static IReadOnlyList<Diagnostic> ByPosition(IReadOnlyList<Diagnostic> diagnostics)
    {
        var order = new int[diagnostics.Count];
        for (var i = 0; i < order.Length; i++) order[i] = i;
        Array.Sort(order, (a, b) => Compare(diagnostics, a, b));
        var sorted = new Diagnostic[order.Length];
        for (var i = 0; i < order.Length; i++) sorted[i] = diagnostics[order[i]];
        return sorted;
    }

    private static int Compare(IReadOnlyList<Diagnostic> diagnostics, int a, int b)
    {
        var (left, right) = (diagnostics[a], diagnostics[b]);
        var byStart = left.Span.Start.CompareTo(right.Span.Start);
        if (byStart != 0) return byStart;
        var byCode = string.CompareOrdinal(left.Kind.Code, right.Kind.Code);
        return byCode != 0 ? byCode : a.CompareTo(b);
    }
}
