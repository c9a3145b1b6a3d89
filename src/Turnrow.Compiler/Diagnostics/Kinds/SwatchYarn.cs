using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A swatch of a yarn that the pattern does not have.</summary>
public static class SwatchYarn
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "swatch-yarn",
        "TR0411",
        Severity.Error,
        """
        A `swatch` line may say behind a comma of which yarn it is, and the pattern has no yarn of that name. The name is the word right behind
        `yarn`: `yarn main "soft wool"` is the yarn `main`. With one yarn alone it need not be said.
        """,
        SmallPattern.With("Scarf",
            """
            yarn main "soft wool", 50 g, 120 m
            swatch dc: 20 stitches and 10 rows weigh 4.2 g, mian

            piece scarf
              begin with 24 stitches
              row 1 RS: dc across
            """),
        SmallPattern.With("Scarf",
            """
            yarn main "soft wool", 50 g, 120 m
            swatch dc: 20 stitches and 10 rows weigh 4.2 g, main

            piece scarf
              begin with 24 stitches
              row 1 RS: dc across
            """));

    internal static Diagnostic At(TextSpan span, string name, IReadOnlyList<string> yarns)
    {
        var near = Spelling.Nearest(name, yarns);
        return new(Kind, span, $"the pattern has no yarn called `{name}`")
        {
            Help = near is not null ? $"did you mean `{near}`?" : yarns.Count > 0 ? $"its yarns are {Findings.Join(yarns)}" : "write a `yarn` line first",
            Mends = near is null ? [] : [new Mend($"write {near}", span, near)],
        };
    }
}
