using Turnrow.Compiler.Pieces;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A side that is not the row's own.</summary>
public static class RowSide
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "row-side",
        "TR0311",
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

    internal static Diagnostic At(Context context, TextSpan span, PieceState piece, int[] sizes, bool rightSide) =>
        new(Kind, span, Invariant($"row {piece.Builders[sizes[0]].RowCount + 1} of {piece.Name} is a {(rightSide ? "wrong" : "right")}-side row{context.Findings.InSizes(sizes)}"))
        {
            Sizes = context.Findings.Names(sizes),
            Help = "rows turn by turns; a row more or fewer above would change the side, or take the side out here",
        };
}
