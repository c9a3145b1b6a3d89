using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>An edge name that the piece does not have.</summary>
public static class EdgeUnknown
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "edge-unknown",
        "TR0320",
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

    internal static Diagnostic At(TextSpan span, string name, string piece, string? right, string? left, IEnumerable<string> known)
    {
        var names = known.Distinct(StringComparer.OrdinalIgnoreCase).ToList();
        var near = Spelling.Nearest(name, names);
        return new(Kind, span, names.Contains(name, StringComparer.OrdinalIgnoreCase)
            ? $"no edge of {piece} is called `{name}` any more: the right edge is now {right ?? "unnamed"}, the left one {left ?? "unnamed"}"
            : $"no edge of {piece} is called `{name}`")
        {
            Help = near is not null && !string.Equals(near, name, StringComparison.OrdinalIgnoreCase) ? $"did you mean `{near}`?"
                : names.Count > 0 ? $"its edges are {Findings.Join(names)}; or say `right edge` or `left edge`"
                : $"name it first (right edge is {name}), or say `right edge` or `left edge`",
            Mends = near is null || string.Equals(near, name, StringComparison.OrdinalIgnoreCase) ? [] : [new Mend($"write {near}", span, near)],
        };
    }
}
