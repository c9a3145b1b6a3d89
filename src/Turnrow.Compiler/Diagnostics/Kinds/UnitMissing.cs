using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A length without a unit.</summary>
public static class UnitMissing
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "unit-missing",
        "TR0217",
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

    internal static Diagnostic At(TextSpan span) =>
        new(Kind, span, "a length is needed here, and this is a plain number")
        {
            Help = "write the unit behind it: 20 cm, or 8 in",
        };
}
