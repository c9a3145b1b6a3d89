namespace Turnrow.Syntax.Diagnostics.Kinds;

/// <summary>The small pattern that most examples of this project's pages are made of.</summary>
internal static class Coaster
{
    /// <summary>A whole pattern with a few lines of one's own.</summary>
    /// <param name="rows">Lines behind row 1, which has 20 stitches.</param>
    /// <param name="header">Lines in front of the piece.</param>
    public static string With(string rows, string header = "") =>
        $"""
        notation 1
        pattern "Coaster"
        terms US
        hook 4 mm
        gauge dc: 18 stitches and 9 rows to 10 cm
        turn dc: ch 3 counts
        {header}
        piece coaster
          begin with 20 stitches
          row 1 RS: dc across = 20
          {rows}
          fasten off

        """;
}
