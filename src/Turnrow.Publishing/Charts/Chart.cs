using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Charts.Drawing;
using Turnrow.Publishing.Charts.Layout;
using Turnrow.Publishing.Charts.Layout.Rounds;

namespace Turnrow.Publishing.Charts;

/// <summary>A chart that is drawn.</summary>
/// <param name="Svg">The whole SVG file.</param>
/// <param name="Heading">Its heading.</param>
/// <param name="Width">Its width in pixels.</param>
internal sealed record ChartFile(string Svg, string Heading, double Width);

/// <summary>Draws the chart of one piece in one size as SVG.</summary>
internal static class Chart
{
    private const double Side = 78;
    private const double HeadingSize = 17;
    private const double HeadingRoom = 44;
    private const double LegendRoom = 14;
    private const double Margin = 12;
    private const double Narrowest = 460;

    /// <summary>The chart; null if the piece has no rows.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="id">What its identifiers begin with, unique among the charts of a page.</param>
    /// <param name="size">The size's name; empty for a pattern without sizes.</param>
    /// <param name="terms">The terms of legend and counts.</param>
    /// <param name="counting">What a row's count takes in.</param>
    /// <param name="yarns">The yarns to be told apart; null where one alone is worked with.</param>
    public static ChartFile? Of(Piece piece, string id, string size, Terms terms, Counting counting = Counting.Usual, IReadOnlyList<string>? yarns = null)
    {
        var rounds = RoundStack.Of(piece);
        var bands = ChartLayout.Of(piece, terms, rounds?.Count ?? 0);
        if (rounds is null && bands is null) return null;
        var body = new SvgWriter();
        var legend = new Legend();
        var text = new ChartText(piece, rounds, bands, size, terms, counting);
        var width = WidthOf(rounds, bands, text);
        new Paper(body, width).Write(Margin, Margin + (HeadingSize / 2), HeadingSize, "start", text.Heading, bold: true);
        var foot = HeadingRoom;
        if (rounds is not null) foot = new RoundsSheet(rounds, piece, body, legend, yarns ?? [], width, counting).Draw(foot, text.Begins, text.PartDrawn, text.LeftOut);
        if (bands is not null)
        {
            foot += bands.Height;
            DrawBands(new Sheet(bands, terms, counting, body, width, foot) { Legend = legend, Yarns = yarns ?? [] }, piece);
            foot += BasePainter.Room;
        }

        var legendTop = foot + LegendRoom;
        var height = new LegendPainter(body, terms, piece.Rows.All(static r => r.IsRound), yarns ?? []).Draw(legend.Entries, Margin, legendTop, width - (2 * Margin));
        return new ChartFile(Envelope("chart-" + id, (text.Heading, text.Sight, text.Description), width, legendTop + height + Margin, body), text.Heading, width);
    }

    private static double WidthOf(RoundStack? rounds, ChartLayout? bands, ChartText text)
    {
        var width = Narrowest;
        if (bands is not null) width = Math.Max(width, bands.Axis.Width + (2 * Side));
        if (rounds is not null) width = Math.Max(width, rounds.Extent.Width + (2 * (RoundsPainter.Room + Margin)));
        width = Math.Max(width, ChartScale.TextWidth(text.Longest, ChartScale.Label) + (2 * Margin) + Side);
        return Math.Max(width, ChartScale.TextWidth(text.Heading, HeadingSize) + (2 * Margin));
    }

    private static void DrawBands(Sheet sheet, Piece piece)
    {
        var rows = new RowPainter(sheet);
        var bands = sheet.Layout.Bands;
        foreach (var band in bands.OfType<RowBand>()) rows.Shade(band);
        var yarns = new YarnPainter(sheet);
        foreach (var band in bands.OfType<RowBand>()) yarns.Draw(band);
        if (bands[0] is RowBand first) new BasePainter(sheet).Draw(first);
        foreach (var band in bands.OfType<RowBand>()) new WaitingPainter(sheet, band).DrawLeaders();
        var hidden = new HiddenPainter(sheet);
        for (var i = 0; i < bands.Count; i++)
        {
            if (bands[i] is RowBand row) rows.Draw(row, piece.FastenedOff && i == bands.Count - 1);
            else hidden.Draw((HiddenBand)bands[i]);
        }
    }

    /// <summary>The whole file round what is drawn.</summary>
    /// <param name="id">What its identifiers begin with.</param>
    /// <param name="text">Its heading, what is to be seen, and the same in words for those who do not see it.</param>
    /// <param name="width">Its width in pixels.</param>
    /// <param name="height">Its height.</param>
    /// <param name="body">What is drawn.</param>
    internal static string Envelope(string id, (string Heading, string Sight, string Description) text, double width, double height, SvgWriter body)
    {
        var svg = new SvgWriter();
        svg.Comment(text.Sight);
        svg.Open("svg").With("xmlns", "http://www.w3.org/2000/svg").With("viewBox", $"0 0 {Decimals.Of(width)} {Decimals.Of(height)}")
            .With("width", width).With("height", height).With("style", "max-width:100%;height:auto")
            .With("role", "img").With("aria-labelledby", $"{id}-title {id}-desc")
            .With("color", "#111").With("fill", "currentColor").With("stroke-width", 1.3)
            .With("stroke-linecap", "round").With("stroke-linejoin", "round");
        svg.Open("title").With("id", id + "-title").Text(text.Heading).Close();
        svg.Open("desc").With("id", id + "-desc").Text(text.Description).Close();
        svg.Open("rect").With("width", width).With("height", height).With("fill", "#fff").Close();
        svg.Open("g").With("font-family", "sans-serif");
        svg.Insert(body);
        svg.Close().Close();
        return svg.ToString();
    }
}
