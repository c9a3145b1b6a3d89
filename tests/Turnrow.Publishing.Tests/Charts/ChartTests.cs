using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Turnrow.Publishing.Charts;
using Turnrow.Publishing.Charts.Drawing;
using Turnrow.Publishing.Trade;
using Xunit;

namespace Turnrow.Publishing.Tests.Charts;

public sealed class ChartTests
{
    [Fact]
    public void Each_sign_of_the_trade_looks_as_it_did() =>
        Golden.Matches("tests/Turnrow.Publishing.Tests/Golden/sampler.svg", Svg(SamplePieces.Sampler(), Terms.US));

    [Fact]
    public void The_legend_speaks_the_terms_asked_for()
    {
        var svg = Svg(SamplePieces.Sampler(), Terms.UK);
        Assert.Contains("double crochet (dc)", svg, StringComparison.Ordinal);
        Assert.Contains("triple", svg + Svg(SamplePieces.Plain(SamplePieces.Begun("x", 5), StitchBook.DoubleTreble, 2).Finish(), Terms.UK), StringComparison.Ordinal);
        Assert.Contains("htr2tog", svg, StringComparison.Ordinal);
        Assert.DoesNotContain("hdc", svg, StringComparison.Ordinal);
    }

    [Fact]
    public void A_title_that_is_markup_stays_text()
    {
        var piece = SamplePieces.Plain(SamplePieces.Begun("<b> & \"back\" --> 'x'\u0001", 5), StitchBook.Double, 2).Finish();
        var svg = Chart.Of(piece, Names.Filed(piece.Name), "<S> & --", Terms.US)!.Svg;
        var root = XDocument.Parse(svg).Root!;
        XNamespace space = "http://www.w3.org/2000/svg";
        Assert.Contains("<b> & \"back\"", root.Element(space + "title")!.Value, StringComparison.Ordinal);
        Assert.DoesNotContain("<b>", svg, StringComparison.Ordinal);
    }

    [Fact]
    public void A_comment_can_not_be_ended_from_inside() =>
        Assert.Equal("<!-- a - - - -&gt; b -->\n", new SvgWriter().Comment("a - ---> b").ToString());

    [Fact]
    public void It_says_in_words_what_it_shows()
    {
        var svg = Svg(SamplePieces.Back(), Terms.US);
        Assert.StartsWith("<!-- To be seen: 36 rows from the foot up, 77 stitches in the first and 69 stitches in the last", svg, StringComparison.Ordinal);
        Assert.Contains("role=\"img\" aria-labelledby=\"chart-back-title chart-back-desc\"", svg, StringComparison.Ordinal);
        Assert.Contains("Row 21, right side, from the right: 4 stitches left at its start, 69 dc, 4 stitches left at its end.", svg, StringComparison.Ordinal);
    }

    [Fact]
    public void A_row_is_numbered_where_it_starts()
    {
        var svg = Svg(SamplePieces.Back(), Terms.US);
        Assert.True(XOf(svg, "1 RS") > XOf(svg, "2 WS"));
        Assert.True(XOf(svg, "21 RS") > XOf(svg, "22 WS"));
    }

    [Fact]
    public void A_foundation_shows_every_chain_that_is_made()
    {
        // 12 stitches are 14 chains when three of them stand for the first: each oval is one path of four curves.
        var svg = Svg(SamplePieces.Plain(SamplePieces.Begun("x", 12), StitchBook.Double, 1).Finish(), Terms.US);
        var row = Regex.Match(svg, "data-row=\"1\">\n<path d=\"([^\"]*)\"").Groups[1].Value;
        Assert.Equal(14, row.Count(static c => c == 'C') / 4);
    }

    [Fact]
    public void A_blanket_of_a_million_stitches_is_as_quick_as_a_scarf()
    {
        var clock = System.Diagnostics.Stopwatch.StartNew();
        var svg = Svg(SamplePieces.Plain(SamplePieces.Begun("blanket", 1000), StitchBook.Double, 1000).Finish(), Terms.US);
        Assert.Contains("rows 4–999 like rows 2 and 3", svg, StringComparison.Ordinal);
        Assert.Contains(" dc</text>", svg, StringComparison.Ordinal);
        Assert.True(svg.Length < 20_000);
        var mesh = SamplePieces.Begun("net", 1_000_001);
        SamplePieces.Row(mesh, Work.Plain(StitchBook.Double, Amount.Of(1)), new Repeat([new Chains(1), new Skip(1), Work.Plain(StitchBook.Double, Amount.Of(1))], Amount.Across));
        var net = Svg(mesh.Finish(), Terms.US);
        Assert.True(net.Length < 40_000);
        Assert.Matches(@">4\d\d\d\d\d sp, 4\d\d\d\d\d dc|>4\d\d\d\d\d dc, 4\d\d\d\d\d sp", net);
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(3), clock.Elapsed.ToString());
    }

    [Fact]
    public void Rows_that_are_not_known_are_left_open()
    {
        var piece = new PieceBuilder("x", new Dictionary<Stitch, TurnRule>());
        piece.BeginUnknown();
        piece.WorkRow(ShapedPlan.Plain(StitchBook.Double), default, 0);
        piece.Trust(8);
        piece.WorkRow(ShapedPlan.Plain(StitchBook.Double), default, 1);
        var svg = Svg(piece.Finish(), Terms.US);
        Assert.Contains(">(?)<", svg, StringComparison.Ordinal);
        Assert.Contains(">(8)<", svg, StringComparison.Ordinal);
    }

    [Fact]
    public void A_piece_without_rows_has_no_chart() =>
        Assert.Null(Chart.Of(SamplePieces.Begun("x", 5).Finish(), "x", "", Terms.US));

    [Fact]
    public void The_culture_changes_no_byte()
    {
        var before = CultureInfo.CurrentCulture;
        var svg = Svg(SamplePieces.Sampler(), Terms.US);
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("") { NumberFormat = { NumberDecimalSeparator = ",", NegativeSign = "−" } };
            Assert.Equal(svg, Svg(SamplePieces.Sampler(), Terms.US));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static double XOf(string svg, string text) =>
        double.Parse(Regex.Match(svg, $"<text x=\"([0-9.]+)\"[^>]*>{text}</text>").Groups[1].Value, CultureInfo.InvariantCulture);

    private static string Svg(Piece piece, Terms terms) => Chart.Of(piece, piece.Name, "XS", terms)!.Svg;
}
