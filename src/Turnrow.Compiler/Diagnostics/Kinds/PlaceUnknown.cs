using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A kind of place that is not known.</summary>
public static class PlaceUnknown
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "place-unknown",
        "TR0237",
        Severity.Error,
        """
        A stitch can go into a stitch (`in next st`, `in next dc`), into a space (`in next sp`, `in next ch-3 sp`), or into each of them
        (`in each st and sp`). What stands here is none of these. Name the place by what it is made of, not by where it lies.
        """,
        SmallPattern.With("Granny cloth",
            """
            piece cloth
              begin with 21 stitches
              row 1 RS: dc across
              row 2: dc, (ch 1, skip 1, dc) across
              row 3: dc, (dc in next little sp, dc in next dc) across
            """),
        SmallPattern.With("Granny cloth",
            """
            piece cloth
              begin with 21 stitches
              row 1 RS: dc across
              row 2: dc, (ch 1, skip 1, dc) across
              row 3: dc, (dc in next sp, dc in next dc) across
            """));

    internal static Diagnostic At(IReadOnlyList<NameSyntax> words, bool lastIsPlace)
    {
        var span = words[0].Span.To(words[^1].Span);
        var last = words[^1].Text;
        return new(Kind, span, $"`{string.Join(' ', words.Select(w => w.Text))}` is no kind of place")
        {
            Help = "places are `st`, `sp`, a stitch such as `dc`, or a space by its chains, `ch-3 sp`",
            Mends = lastIsPlace ? [new Mend($"write `{last}`", span, last)] : [],
        };
    }

    internal static Diagnostic OfRate(IReadOnlyList<NameSyntax> words)
    {
        var span = words[0].Span.To(words[^1].Span);
        return new(Kind, span, $"`{string.Join(' ', words.Select(w => w.Text))}` is no kind of place along an edge")
        {
            Help = "write `in each row` for the ends of rows, `in each st` for stitches and chains",
            Mends = [new Mend("write row", span, "row"), new Mend("write st", span, "st")],
        };
    }

    internal static Diagnostic Both(TextSpan span) =>
        new(Kind, span, "of two kinds of place one has to be a stitch and the other a space")
        {
            Help = "write `in each st and sp`",
        };
}
