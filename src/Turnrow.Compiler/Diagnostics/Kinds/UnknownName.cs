using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A name that is defined nowhere.</summary>
public static class UnknownName
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "unknown-name",
        "TR0201",
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

    internal static Diagnostic At(TextSpan span, string name, IEnumerable<string> known)
    {
        var near = Spelling.Nearest(name, known);
        return new(Kind, span, $"`{name}` is not defined")
        {
            Help = near is null ? $"define it above the first piece: count {name} is 12, or measure {name} is 30 cm" : $"did you mean `{near}`?",
            Mends = near is null ? [] : [new Mend($"write {near}", span, near)],
        };
    }
}
