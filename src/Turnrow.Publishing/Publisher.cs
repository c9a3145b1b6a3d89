using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Charts;
using Turnrow.Publishing.Instructions;
using Turnrow.Publishing.Page;
using Turnrow.Publishing.Tables;

namespace Turnrow.Publishing;

/// <summary>What is to be published.</summary>
/// <param name="Name">The files' name without an ending.</param>
/// <param name="Terms">The terms to write in.</param>
/// <param name="Size">Index of the size that charts are drawn for.</param>
public sealed record PublishOptions(string Name, Terms Terms, int Size)
{
    /// <summary>The line of the file that made a row, for the tables; null to leave lines out.</summary>
    public Func<Row, int>? LineOf { get; init; }
}

/// <summary>A file to be written.</summary>
/// <param name="Name">Its name, without a folder.</param>
/// <param name="Text">Its whole text; line ends are \n.</param>
public sealed record PublishedFile(string Name, string Text);

/// <summary>Makes everything that is published of a pattern. It reads the row model and counts nothing itself.</summary>
public static class Publisher
{
    /// <summary>All files of a pattern.</summary>
    public static IReadOnlyList<PublishedFile> Publish(Pattern pattern, PublishOptions options)
    {
        var instructions = WrittenInstructions.Write(pattern, options.Terms);
        var charts = ChartBook.Of(pattern, options);
        var title = pattern.Title.Length > 0 ? pattern.Title : options.Name;
        var language = options.Terms == Terms.US ? "en-US" : "en-GB";
        return
        [
            new($"{options.Name}.md", instructions),
            new($"{options.Name}.html", HtmlPage.Of(new PageContent(title, language, instructions, [.. charts.Select(static c => new PageFigure(c.Key, c.Value.Svg, c.Value.Width))]))),
            new($"{options.Name}.counts.csv", CountsCsv.Write(pattern)),
            new($"{options.Name}.rows.json", RowsJson.Write(RowTable.Of(pattern, options.LineOf))),
            .. charts.Select(static c => new PublishedFile(c.Key, c.Value.Svg)),
        ];
    }
}
