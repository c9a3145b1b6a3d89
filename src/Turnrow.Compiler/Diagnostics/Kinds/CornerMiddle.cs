using Turnrow.Fabric.Words;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>What is worked into a corner has no middle.</summary>
public static class CornerMiddle
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "corner-middle",
        "TR0431",
        Severity.Error,
        """
        What is worked into a corner makes the corner of the next row: the middle one of an odd number of stitches, or the space that lies
        between two halves. Two stitches, or four, have neither, and none is chosen for you. Write an odd number, `3 dc in
        corner`; a space in the middle, `(dc, ch 1, dc) in corner`; or say which it is to be, `(dc, mark corner, dc) in corner`. If no later
        row asks for a corner, put `remove corners` into this one.
        """,
        SmallPattern.With("Kerchief",
            """
            piece kerchief
              begin with 9 stitches
              row 1 RS: dc 5, mark corner, dc across
              row 2: dc to corner, 2 dc in corner, dc across
            """),
        SmallPattern.With("Kerchief",
            """
            piece kerchief
              begin with 9 stitches
              row 1 RS: dc 5, mark corner, dc across
              row 2: dc to corner, (dc, ch 1, dc) in corner, dc across
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, string word, string stitch) =>
        new(Kind, span, $"what `{word}` puts into a corner has no middle for the next row's corner{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = $"write an odd number, `3 {stitch} in corner`, a space in the middle, `({stitch}, ch 1, {stitch}) in corner`, or which of them is the corner then, `(2 {stitch}, mark corner) in corner`; where no later row needs the corners, end this one with `remove corners`",
        };

    /// <summary>The stitch that an example of what could be written has.</summary>
    internal static string StitchOf(Context context, Word word) => word switch
    {
        Work work => context.Word(work.Stitch),
        Group { Words: [Work work, ..] } => context.Word(work.Stitch),
        _ => "dc",
    };
}
