using System.Text;

namespace Turnrow.Benchmarks;

/// <summary>The patterns that are measured.</summary>
internal static class Texts
{
    /// <summary>The folder of the whole project.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>Where the waistcoat is.</summary>
    public static string WaistcoatPath { get; } = Path.Combine(Root, "patterns", "fenland-wrap-waistcoat.turnrow");

    /// <summary>The waistcoat of the patterns folder.</summary>
    public static string Waistcoat { get; } = File.ReadAllText(WaistcoatPath);

    /// <summary>Pieces of ten lines each, about a thousand lines in all.</summary>
    public static string ThousandLines()
    {
        var text = new StringBuilder("notation 1\npattern \"Many pieces\"\nterms US\nsizes S, M, L\ngauge dc: 19 stitches and 10 rows to 10 cm\nturn dc: ch 3 counts\n\n");
        for (var i = 1; i <= 100; i++)
        {
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"""
                piece panel-{i}
                  begin with 40 (44, 50) stitches
                  both edges are side
                  row 1 RS: dc across = 40 (44, 50)
                  straight 9 rows
                  leave 3 at both edges
                  row: (dc 3, inc) 4 times, dc across
                  shape 8 rows: dec 1 at both edges every 2 rows
                  row: dc across
                  fasten off

                """);
        }

        return text.ToString().ReplaceLineEndings("\n");
    }

    /// <summary>A blanket of a thousand stitches and so many rows.</summary>
    public static string Blanket(int rows) => $"""
        notation 1
        pattern "Blanket"
        terms US
        turn dc: ch 3 counts

        piece blanket
          begin with 1000 stitches
          row 1 RS: dc across
          rows 2 to {rows}: dc across = 1000
        """.ReplaceLineEndings("\n") + "\n";

    /// <summary>A granny square of so many rounds: groups of three, and four corners.</summary>
    public static string Square(int rounds) => $"""
        notation 1
        pattern "Square"
        terms US
        turn dc: ch 3 counts

        piece square
          begin with ring of 4 chains
          round 1: (3 dc, ch 2, mark corner) 4 times in ring
          round 2: ((3 dc, ch 2, 3 dc) in next corner, ch 1) around
          rounds 3 to {rounds}: ((3 dc, ch 2, 3 dc) in next corner, ch 1, (3 dc in next ch-1 sp, ch 1) until 3 remain before corner) around = {12 * rounds}
        """.ReplaceLineEndings("\n") + "\n";

    /// <summary>One piece in thirty sizes that grows at both edges over so many rows, in each size by another number.</summary>
    public static string Tapers(int rows)
    {
        var sizes = Enumerable.Range(1, 30).ToList();
        var tops = sizes.Select(size => 40 + (rows == 0 ? 0 : 2 * (30 + size)));
        var slope = $"  shape {rows} rows evenly to {tops.First()} ({string.Join(", ", tops.Skip(1))}), at both edges\n";
        return $"""
            notation 1
            pattern "Slopes"
            terms US
            sizes {string.Join(", ", sizes)}
            turn dc: ch 3 counts

            piece sleeve
              begin with 40 stitches
              row 1 RS: dc across = 40

            """.ReplaceLineEndings("\n") + (rows == 0 ? string.Empty : slope);
    }

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Compiler.sln"))) folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("run it from within the project's folder");
    }
}
