using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A piece that is not there.</summary>
public static class UnknownPiece
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "unknown-piece",
        "TR0204",
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
        return new(Kind, span, $"there is no piece `{name}`")
        {
            Help = near is null ? "a piece must be opened, with a line that begins with `piece`, before another line can name it" : $"did you mean `{near}`?",
            Mends = near is null ? [] : [new Mend($"write {near}", span, near)],
        };
    }
}
