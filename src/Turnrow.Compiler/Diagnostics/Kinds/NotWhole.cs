using Turnrow.Fabric.Numbers;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A count that is not a whole number.</summary>
public static class NotWhole
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "not-whole",
        "TR0212",
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

    internal static Diagnostic At(TextSpan span, Findings findings, int[] sizes, Func<int, Rational> value) =>
        new(Kind, span, $"a count must be a whole number, and this is {findings.Each(sizes, i => value(i).ToString())}")
        {
            Sizes = findings.Names(sizes),
            Help = "choose other numbers, or define it by a `count` line that says how to round: `count half is hem / 2, rounded down`",
        };
}
