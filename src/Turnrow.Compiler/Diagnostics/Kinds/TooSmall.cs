using Turnrow.Fabric.Numbers;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A number that is too small.</summary>
public static class TooSmall
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "too-small",
        "TR0213",
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

    internal static Diagnostic At(TextSpan span, Findings findings, int[] sizes, int least, Func<int, Rational> value) =>
        new(Kind, span, Invariant($"this must be {least} or more, and is {findings.Each(sizes, i => value(i).ToString())}"))
        {
            Sizes = findings.Names(sizes),
            Help = "look at the numbers that it is made of, in these sizes",
        };
}
