using Turnrow.Fabric.Numbers;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A length that is already passed.</summary>
public static class LengthPassed
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "length-passed",
        "TR0325",
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

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, Func<int, Rational> there, Func<int, Rational> asked) =>
        new(Kind, span, $"the piece is {context.Length(there(sizes[0]))} long already{context.Findings.InSize(sizes[0])}, more than {context.Length(asked(sizes[0]))}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "`to` measures from the beginning of the piece, `for` from here",
        };
}
