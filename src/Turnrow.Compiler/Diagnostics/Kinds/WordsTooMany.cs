using Turnrow.Compiler.Rows;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Words behind a stitch that mean nothing there.</summary>
public static class WordsTooMany
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "words-too-many",
        "TR0236",
        Severity.Error,
        """
        Behind a stitch there can be one number, or one name of a count, or a word like `across`; here is more than that. A comma may be
        missing between two things to do. What says how the stitch is worked stands in front of it, and two words of it make one with a
        hyphen: `back-loop dc across`, `front-post dc 2`.
        """,
        SmallPattern.With("Ribbed cuff",
            """
            piece cuff
              begin with 12 stitches
              row 1 RS: dc across
              row 2: dc back loop across
            """),
        SmallPattern.With("Ribbed cuff",
            """
            piece cuff
              begin with 12 stitches
              row 1 RS: dc across
              row 2: back-loop dc across
            """));

    internal static Diagnostic TwoStitches(TextSpan span, string first, string second) =>
        new(Kind, span, $"`{first}` and `{second}` are two stitches")
        {
            Help = $"put a comma between two things to do; `{second}` by itself says what it is made of, and the manual's page on special stitches how to make another",
        };

    internal static Diagnostic At(IReadOnlyList<NameSyntax> words, int stitch)
    {
        var first = words[stitch];
        var extra = TextSpan.FromBounds(words[stitch + 1].Span.Start, words[^1].Span.End);
        var hook = string.Join('-', words.Skip(stitch + 1).Select(w => w.Text));
        if (StitchWord.HookOf(hook) is null)
        {
            return new(Kind, extra, $"after `{first.Text}` there can be one number or the name of one count")
            {
                Help = "put a comma between two things to do",
            };
        }

        return new(Kind, extra, $"where the hook goes is said in front of `{first.Text}`, not behind it")
        {
            Help = $"write `{hook} {first.Text}`",
            Mends = [new Mend($"write `{hook} {first.Text}`", first.Span.To(extra), $"{hook} {first.Text}")],
        };
    }
}
