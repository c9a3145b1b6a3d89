using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A line for a size that the pattern does not have.</summary>
public static class SizeUnknown
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "size-unknown",
        "TR0362",
        Severity.Error,
        """
        `for L to 3X: straight 2 rows` is done in the sizes named and not in the others; so each name has to be one that the `sizes` line has,
        letter for letter. With a size that is not there nobody knows which sizes have the rows. Look for a slip of spelling. A name with
        anything but letters and digits stands in quotes, as in the `sizes` line.
        """,
        SmallPattern.With("Vest",
            """
            sizes S, M, L

            piece back
              begin with 30 (32, 34) stitches
              row 1 RS: dc across
              for XL: straight 2 rows
              straight 4 rows
            """),
        SmallPattern.With("Vest",
            """
            sizes S, M, L

            piece back
              begin with 30 (32, 34) stitches
              row 1 RS: dc across
              for L: straight 2 rows
              straight 4 rows
            """));

    internal static Diagnostic At(NameSyntax size, IReadOnlyList<string> sizes)
    {
        if (sizes is [""])
        {
            return new(Kind, size.Span, $"the pattern has no sizes, so there is none called `{size.Text}`")
            {
                Help = "name them at the top (`sizes S, M, L`), or leave the `for` out",
            };
        }

        var near = Spelling.Nearest(size.Text, sizes);
        return new(Kind, size.Span, $"there is no size called `{size.Text}`")
        {
            Help = near is null ? $"the sizes are {Findings.Join(sizes)}" : $"did you mean `{near}`?",
            Mends = near is null ? [] : [new Mend($"write {near}", size.Span, near.All(char.IsAsciiLetterOrDigit) ? near : $"\"{near}\"")],
        };
    }
}
