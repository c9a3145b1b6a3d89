using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A piece that is joined to nothing.</summary>
public static class PieceUnjoined
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "piece-unjoined",
        "TR0372",
        Severity.Warning,
        """
        PAGE
        """,
        """
        BAD
        """,
        """
        GOOD
        """);

    internal static Diagnostic At(TextSpan span, string name) =>
        new(Kind, span, $"{name} is joined to no other piece")
        {
            Help = "join it by a `seam` line, if it is part of the garment",
        };
}
