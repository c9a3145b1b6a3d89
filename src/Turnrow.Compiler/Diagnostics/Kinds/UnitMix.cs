using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A length and a plain number mixed.</summary>
public static class UnitMix
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "unit-mix",
        "TR0216",
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

    internal static Diagnostic At(TextSpan span, bool? lengthFirst) =>
        new(Kind, span, lengthFirst switch
        {
            true => "a plain number can't be added to a length: 2 of what?",
            false => "a length can't be added to a plain number",
            null => "two lengths can only be added, subtracted, or one divided by the other",
        })
        {
            Help = lengthFirst is null ? "one of the two is most likely a plain number" : "write the unit behind the number: 2 cm, or 1 in",
        };
}
