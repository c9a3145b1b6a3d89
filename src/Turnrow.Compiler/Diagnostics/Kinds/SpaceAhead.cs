using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A stitch that would go into a space unasked.</summary>
public static class SpaceAhead
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "space-ahead",
        "TR0304",
        Severity.Error,
        """
        The row below has chains over the work, and this stitch would come to stand over one. Would you go into the space or over it to
        the next stitch? Both are common, and the counts differ, so it has to be said: `dc in each st` passes over the spaces, `dc in each
        st and sp` puts one in every place, and `dc in next sp` goes into the next space.
        """,
        SmallPattern.With("Curtain",
            """
            piece curtain
              begin with 21 stitches
              row 1 RS: dc across
              row 2: dc, (ch 1, skip 1, dc) across
              row 3: dc across
            """),
        SmallPattern.With("Curtain",
            """
            piece curtain
              begin with 21 stitches
              row 1 RS: dc across
              row 2: dc, (ch 1, skip 1, dc) across
              row 3: dc in each st and sp
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, string word, int chains, StitchItem? across) => chains == 0
        ? new(Kind, span, $"`{word}` comes to another place than the one that it names{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "`in first` is the very first place of the row, and of a special stitch its name means the middle: write `in next …`, which passes over what comes before",
        }
        : new(Kind, span, Invariant($"`{word}` comes to a ch-{chains} space, and it is not said whether to work into it{context.Findings.InSizes(sizes)}"))
        {
            Sizes = context.Findings.Names(sizes),
            Help = "say the places: `in each st and sp`, `in each st`, `in next sp`, `in next dc`",
            Mends = across is { Words: [var stitch] } ?
                [
                    new Mend("work into all stitches and spaces", across.Span, $"{stitch.Text} in each st and sp"),
                    new Mend("work into the stitches alone", across.Span, $"{stitch.Text} in each st"),
                ]
                : [],
        };
}
