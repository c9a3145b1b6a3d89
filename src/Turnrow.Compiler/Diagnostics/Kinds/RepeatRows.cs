using Turnrow.Compiler.Pieces;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A repeat of rows that are not there.</summary>
public static class RepeatRows
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "repeat-rows",
        "TR0318",
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

    internal static Diagnostic At(Context context, TextSpan span, PieceState piece, int[] sizes) =>
        new(Kind, span, Invariant($"{piece.Name} has {piece.Builders[sizes[0]].RowCount} rows here{context.Findings.InSize(sizes[0])}: these are not all there to repeat"))
        {
            Sizes = context.Findings.Names(sizes),
            Help = "only rows that stand above can be repeated, the lower number first",
        };
}
