using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A sample in a size that the pattern does not have.</summary>
public static class MadeSize
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "made-size",
        "TR0420",
        Severity.Error,
        """
        A `made` line says in which size the finished sample was worked, and the pattern has no size of that name. Without the size nobody
        knows how many stitches and rows the sample has, so it is held against nothing. Write the name as the `sizes` line has it.

        Tip: a pattern in one size gives that size a name for this: `sizes "one size"`, and then `made "one size": …`.
        """,
        SmallPattern.With("Scarf",
            """
            sizes Short, Long
            gauge dc: 18 stitches and 9 rows to 10 cm

            piece scarf
              begin with 36 stitches
              row 1 RS: dc across
              straight to 120 (160) cm

            made Shrt: scarf 20 cm wide, 120 cm high
            """),
        SmallPattern.With("Scarf",
            """
            sizes Short, Long
            gauge dc: 18 stitches and 9 rows to 10 cm

            piece scarf
              begin with 36 stitches
              row 1 RS: dc across
              straight to 120 (160) cm

            made Short: scarf 20 cm wide, 120 cm high
            """));

    internal static Diagnostic At(NameSyntax size, IReadOnlyList<string> sizes)
    {
        if (sizes is [""])
        {
            return new(Kind, size.Span, $"the pattern has no sizes, so there is none called `{size.Text}`")
            {
                Help = "give the one size a name at the top, `sizes \"one size\"`, and write it here",
            };
        }

        var near = Spelling.Nearest(size.Text, sizes);
        return new(Kind, size.Span, $"there is no size called `{size.Text}`")
        {
            Help = near is null ? $"the sizes are {Findings.Join(sizes)}" : $"did you mean `{near}`?",
            Mends = near is null ? [] : [new Mend($"write {near}", size.Span, IsPlain(near) ? near : $"\"{near}\"")],
        };
    }

    private static bool IsPlain(string name) => name.All(char.IsAsciiLetterOrDigit);
}
