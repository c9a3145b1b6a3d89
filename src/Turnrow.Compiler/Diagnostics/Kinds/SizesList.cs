using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A list that has not one value a size.</summary>
public static class SizesList
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "sizes-list",
        "TR0210",
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

    internal static Diagnostic At(TextSpan span, Findings findings, int values) =>
        new(Kind, span, findings.Sizes == 1 && findings.SizeNames[0].Length == 0
            ? Invariant($"{values} values, but the pattern has no sizes")
            : Invariant($"{values} values for {findings.Sizes} sizes ({string.Join(", ", findings.SizeNames)})"))
        {
            Help = findings.Sizes == 1 && findings.SizeNames[0].Length == 0
                ? "name the sizes at the top: sizes S, M, L"
                : "write one value for all sizes, or one for each: the first, then the others in brackets",
        };
}
