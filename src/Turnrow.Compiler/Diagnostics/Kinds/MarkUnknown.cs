using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A mark that is not there.</summary>
public static class MarkUnknown
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "mark-unknown",
        "TR0323",
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
        return new(Kind, span, $"no row above is marked `{name}`")
        {
            Help = near is null ? $"mark it where it is to be: mark next row {name}" : $"did you mean `{near}`?",
            Mends = near is null ? [] : [new Mend($"write {near}", span, near)],
        };
    }
}
