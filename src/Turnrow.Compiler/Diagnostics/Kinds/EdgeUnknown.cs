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
        An edge is called here by a name that the piece does not give it, or not any more. Edges get their names by lines such as `right
        edge is neck`; after `from here right edge is armhole` the rows to come have the new name only. Look for a slip of spelling, name
        the edge first, or say `right edge` or `left edge`, as the piece lies with its right side facing you and its first row at the
        bottom.
        """,
        SmallPattern.With("Vest",
            """
            piece front
              begin with 30 stitches
              left edge is neck
              row 1 RS: dc across
              shape 8 rows: dec 1 at nek every 2 rows
            """),
        SmallPattern.With("Vest",
            """
            piece front
              begin with 30 stitches
              left edge is neck
              row 1 RS: dc across
              shape 8 rows: dec 1 at neck every 2 rows
            """));

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
                : $"name it first (`right edge is {name}`), or say `right edge` or `left edge`",
            Mends = near is null || string.Equals(near, name, StringComparison.OrdinalIgnoreCase) ? [] : [new Mend($"write {near}", span, near)],
        };
    }
}
