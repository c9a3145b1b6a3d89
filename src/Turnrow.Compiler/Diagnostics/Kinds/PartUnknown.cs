using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A part that `divide` did not name.</summary>
public static class PartUnknown
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "part-unknown",
        "TR0343",
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

    internal static Diagnostic At(TextSpan span, string name, string piece, IEnumerable<string> known)
    {
        var parts = known.ToList();
        var near = Spelling.Nearest(name, parts);
        return new(Kind, span, $"{piece} has no part `{name}`")
        {
            Help = near is not null ? $"did you mean `{near}`?" : parts.Count > 0 ? $"its parts are {Findings.Join(parts)}" : $"name it in {piece}: divide: 22 for {name}, …",
            Mends = near is null ? [] : [new Mend($"write {near}", span, near)],
        };
    }
}
