using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A word that is no stitch.</summary>
public static class UnknownStitch
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "unknown-stitch",
        "TR0202",
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

    internal static Diagnostic At(TextSpan span, string word, IEnumerable<string> known)
    {
        var stitches = known.ToList();
        var near = Spelling.Nearest(word, stitches);
        return new(Kind, span, $"`{word}` is not a stitch")
        {
            Help = near is null ? $"stitches in these terms: {string.Join(", ", stitches)}" : $"did you mean `{near}`?",
            Mends = near is null ? [] : [new Mend($"write {near}", span, near)],
        };
    }
}
