using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A yarn that the pattern does not have.</summary>
public static class YarnUnknown
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "yarn-unknown",
        "TR0494",
        Severity.Error,
        """
        A line says to work with a yarn that the pattern does not have. The name is the word right behind `yarn`: `yarn navy "soft wool"` is the
        yarn `navy`. It can stand in a line, `with navy`, in a row, `with navy, sc 5`, in `stripes are navy 2 rows`, and in the key of a picture.
        """,
        SmallPattern.With("Scarf",
            """
            yarn navy "soft wool"
            yarn cream "soft wool"

            piece scarf
              begin with 24 stitches
              row 1 RS: sc across
              with craem
              straight 4 rows
            """),
        SmallPattern.With("Scarf",
            """
            yarn navy "soft wool"
            yarn cream "soft wool"

            piece scarf
              begin with 24 stitches
              row 1 RS: sc across
              with cream
              straight 4 rows
            """));

    internal static Diagnostic Stitch(TextSpan span, string name) =>
        new(Kind, span, $"`{name}` is a stitch, and a letter alone is a yarn")
        {
            Help = $"a letter that is a stitch has it in brackets: `({name})`",
            Mends = [new Mend("put it in brackets", span, $"({name})")],
        };

    internal static Diagnostic At(TextSpan span, string name, IReadOnlyList<string> yarns)
    {
        var near = Spelling.Nearest(name, yarns);
        return new(Kind, span, $"the pattern has no yarn called `{name}`")
        {
            Help = near is not null ? $"did you mean `{near}`?" : yarns.Count > 0 ? $"its yarns are {Findings.Join(yarns)}" : $"write a line for each yarn first: yarn {name} \"soft wool\"",
            Mends = near is null ? [] : [new Mend($"write {near}", span, near)],
        };
    }
}
