using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A kind of place that does not come any more.</summary>
public static class NoSuchPlace
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "no-such-place",
        "TR0305",
        Severity.Error,
        """
        The row asks for a kind of place that does not come any more in the row below: a space where there is none, or the third of a kind
        that is there twice. Going to the next such place never goes back. Look at the row below, counted along in the direction you work:
        either it was to make more of these places, or this row wants one too many.
        """,
        SmallPattern.With("Curtain",
            """
            piece curtain
              begin with 9 stitches
              row 1 RS: dc across
              row 2: dc 4, ch 1, skip 1, dc 4
              row 3: dc 4, dc in next sp, dc 3, dc in next sp
            """),
        SmallPattern.With("Curtain",
            """
            piece curtain
              begin with 9 stitches
              row 1 RS: dc across
              row 2: dc 4, ch 1, skip 1, dc 4
              row 3: dc 4, dc in next sp, dc 3, dc in next st
            """));

    internal static Diagnostic Behind(Context context, TextSpan span, int[] sizes, string word, string place, int chains) =>
        new(Kind, span, Invariant($"`{word}` comes to a ch-{chains} space before the {place}{context.Findings.InSizes(sizes)}, and never goes past a space of another size"))
        {
            Sizes = context.Findings.Names(sizes),
            Help = Invariant($"say what becomes of the ch-{chains} space: work into it, or `skip` up to it and past it; `in next sp` goes to a space of any size"),
        };

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, string word, string place) =>
        new(Kind, span, $"`{word}` finds no {place} in what is left of the row below{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "count these places along the row below: it makes fewer than this row asks for, or they are behind you already",
        };
}
