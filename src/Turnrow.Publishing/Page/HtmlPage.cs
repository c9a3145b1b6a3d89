using System.Globalization;
using System.Net;
using System.Text;

namespace Turnrow.Publishing.Page;

/// <summary>A figure of the page.</summary>
/// <param name="File">The file it is published as, which is how the Markdown names it.</param>
/// <param name="Svg">The picture.</param>
/// <param name="Width">Its width in pixels.</param>
internal sealed record PageFigure(string File, string Svg, double Width);

/// <summary>What a page is made of. More to choose from (sizes, terms, units) will be more of these, not another page.</summary>
/// <param name="Title">The pattern's title.</param>
/// <param name="Language">The language's tag: <c>en-US</c>.</param>
/// <param name="Markdown">The written instructions.</param>
/// <param name="Figures">Charts, in the order of the pieces.</param>
internal sealed record PageContent(string Title, string Language, string Markdown, IReadOnlyList<PageFigure> Figures);

/// <summary>
/// Makes the page: one file that needs no network and runs no script. The policy in its head has the browser hold it to that.
/// </summary>
internal static class HtmlPage
{
    private const double SmallestScale = 0.7;
    private const string Policy = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

    /// <summary>The whole file.</summary>
    public static string Of(PageContent content)
    {
        var markdown = new PageMarkdown(content.Figures.ToDictionary(static f => f.File, FigureOf));
        var text = new StringBuilder();
        text.Append("<!DOCTYPE html>\n<html lang=\"").Append(WebUtility.HtmlEncode(content.Language)).Append("\">\n<head>\n<meta charset=\"utf-8\">\n");
        text.Append("<meta http-equiv=\"Content-Security-Policy\" content=\"").Append(Policy).Append("\">\n");
        text.Append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
        text.Append("<title>").Append(WebUtility.HtmlEncode(content.Title)).Append("</title>\n");
        text.Append("<style>\n").Append(PageStyle.Css).Append("</style>\n</head>\n<body>\n<main>\n");
        text.Append(markdown.ToHtml(content.Markdown));
        AppendUnplaced(text, [.. markdown.Unplaced]);
        return text.Append("</main>\n</body>\n</html>\n").ToString();
    }

    private static void AppendUnplaced(StringBuilder text, IReadOnlyList<string> figures)
    {
        if (figures.Count == 0) return;
        text.Append("<h2>Charts</h2>\n");
        foreach (var figure in figures) text.Append(figure);
    }

    // A scroll bar needs the keyboard too: hence the tab stop. The style says how narrow the chart may become and still be read.
    private static string FigureOf(PageFigure figure)
    {
        var narrowest = Math.Round(figure.Width * SmallestScale).ToString(CultureInfo.InvariantCulture);
        return $"<figure class=\"chart\" tabindex=\"0\" style=\"--narrowest: {narrowest}px\">\n{figure.Svg}</figure>\n";
    }
}
