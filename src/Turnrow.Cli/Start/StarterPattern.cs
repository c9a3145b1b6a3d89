using System.Text;

namespace Turnrow.Cli.Start;

/// <summary>The pattern that <c>turnrow new</c> writes: complete, small, and every line says what it does.</summary>
internal static class StarterPattern
{
    private const string Body = """
        version 0.1
        terms US                          # the words below: US sc is UK dc
        sizes S, M, L                     # from here on 5 (6, 7) is S, then M, then L

        # A line that begins with # is a note to yourself. A line that begins with > is printed for the maker.
        > A flat pouch, worked in two halves from the opening down and joined at the sides and the bottom.

        yarn main "worsted wool", weight 4, 100 g, 200 m
        hook 5 mm
        gauge sc: 14 stitches and 16 rows to 10 cm      # count them on your own swatch

        # A length becomes stitches by the gauge; `odd` asks for the nearest odd number.
        measure opening is 15 (18, 21) cm
        count width is stitches for opening, odd

        piece front
          begin with width stitches       # the foundation chain is worked out for you
          both edges are side             # a name for the edges, so that they can be joined below
          row 1 RS: sc across             = width
          straight to 10 (11, 12) cm, even rows
          # `=` claims a count. One that does not come out is an error that shows the arithmetic.
          shape 8 rows: dec 1 at both edges every 2 rows = width - 8
          fasten off

        piece back is front mirrored

        # What is sewn together has to have as many rows, or stitches, on either side.
        seam front right side with back left side
        seam front left side with back right side
        seam front last row with back last row
        weave in ends
        """;

    /// <summary>The whole text of the pattern.</summary>
    /// <param name="title">Its title, from <see cref="TitleOf"/>.</param>
    public static string Text(string title) => $"notation 1\npattern \"{title}\"\n{Body.ReplaceLineEndings("\n")}\n";

    /// <summary>The title for a file's name: <c>summer-bag</c> is Summer Bag. Empty if there is no letter or digit in it.</summary>
    public static string TitleOf(string name)
    {
        var title = new StringBuilder();
        var begins = true;
        foreach (var rune in Path.GetFileName(name).EnumerateRunes())
        {
            if (!Rune.IsLetterOrDigit(rune))
            {
                begins = true;
                continue;
            }

            if (begins && title.Length > 0) title.Append(' ');
            title.Append((begins ? Rune.ToUpperInvariant(rune) : rune).ToString());
            begins = false;
        }

        return title.ToString();
    }
}
