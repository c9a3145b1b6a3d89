using Turnrow.Fabric.Pieces;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A pick-up rate that does not come out whole.</summary>
public static class PickUpRemainder
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "pick-up-remainder",
        "TR0349",
        Severity.Error,
        """
        PAGE
        """,
        """
        BAD
        """,
        """
        GOOD
        """);

    internal static Diagnostic At(Context context, TextSpan span, IReadOnlyList<(int Size, PickUpLeg Leg)> uneven)
    {
        var (size, leg) = uneven[0];
        var sizes = uneven.Select(u => u.Size).Distinct().ToArray();
        var what = leg.Stretch.Kind == StretchKind.RowEnds ? "rows" : "stitches";
        return new(Kind, span, Invariant($"{leg.Rate} in {leg.Per} {what} does not come out over {leg.Stretch.Count} {what}{context.Findings.InSize(size)}"))
        {
            Sizes = context.Findings.Names(sizes),
            Help = Invariant($"take a part of the edge whose number of {what} is a multiple of {leg.Per}, or give another rate"),
        };
    }
}
