using Turnrow.Publishing.Page;
using Xunit;

namespace Turnrow.Publishing.Tests.Page;

public sealed class HtmlPageTests
{
    [Fact]
    public void Title_and_language_are_set_and_escaped()
    {
        var page = HtmlPage.Of(new PageContent("A <b>\"wrap\"</b> & 'tie'", "en-GB", "# x\n", []));
        Assert.Contains("<html lang=\"en-GB\">", page, StringComparison.Ordinal);
        Assert.Contains("<title>A &lt;b&gt;&quot;wrap&quot;&lt;/b&gt; &amp; &#39;tie&#39;</title>", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("a <img src=x onerror=alert(1)> b")]
    [InlineData("<svg onload=alert(1)>")]
    [InlineData("<div>\n\n**x**\n\n</div>")]
    public void Raw_markup_is_text(string prose)
    {
        var body = Body(prose);
        Assert.DoesNotContain("<script", body, StringComparison.Ordinal);
        Assert.DoesNotContain("<img", body, StringComparison.Ordinal);
        Assert.DoesNotContain("<svg", body, StringComparison.Ordinal);
        Assert.DoesNotContain("<div>", body, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("[x](javascript:alert(1))")]
    [InlineData("[x](JaVaScRiPt:alert(1))")]
    [InlineData("[x](&#106;avascript:alert(1))")]
    [InlineData("[x](<java\tscript:alert(1)>)")]
    [InlineData("[x](data:text/html;base64,PHNjcmlwdD4=)")]
    [InlineData("[x](vbscript:msgbox)")]
    [InlineData("[x](file:///etc/passwd)")]
    [InlineData("[x](//example.org/x)")]
    [InlineData("[x][1]\n\n[1]: javascript:alert(1)")]
    [InlineData("<javascript:alert(1)>")]
    [InlineData("![x](https://example.org/spy.png)")]
    [InlineData("![x](javascript:alert(1))")]
    public void A_link_that_may_not_be_followed_is_only_its_words(string prose)
    {
        var body = Body(prose);
        Assert.DoesNotContain("href", body, StringComparison.Ordinal);
        Assert.DoesNotContain("src=", body, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("[x](https://example.org/a?b=c:d)", "https://example.org/a?b=c:d")]
    [InlineData("[x](http://example.org)", "http://example.org")]
    [InlineData("[x](mailto:maker@example.org)", "mailto:maker@example.org")]
    [InlineData("[x](notes.html#back)", "notes.html#back")]
    [InlineData("[x](#back)", "#back")]
    [InlineData("<https://example.org>", "https://example.org")]
    public void A_link_that_may_be_followed_is_one(string prose, string address) =>
        Assert.Contains($"href=\"{address}\"", Body(prose), StringComparison.Ordinal);

    [Fact]
    public void A_chart_stands_where_the_instructions_name_it_and_once()
    {
        var figure = new PageFigure("x.back.svg", "<svg id=\"b\"></svg>\n", 400);
        var page = HtmlPage.Of(new PageContent("x", "en", "Here:\n\n![Back](x.back.svg)\n\nThere: ![again](x.back.svg)\n", [figure]));
        var svg = page.IndexOf("<svg", StringComparison.Ordinal);
        Assert.InRange(svg, page.IndexOf("Here:", StringComparison.Ordinal), page.IndexOf("There:", StringComparison.Ordinal));
        Assert.Equal(svg, page.LastIndexOf("<svg", StringComparison.Ordinal));
        Assert.DoesNotContain("<p><figure", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<h2>Charts</h2>", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_chart_that_nothing_names_comes_at_the_end()
    {
        var page = HtmlPage.Of(new PageContent("x", "en", "text\n", [new PageFigure("x.back.svg", "<svg></svg>\n", 400)]));
        Assert.Contains("<h2>Charts</h2>\n<figure class=\"chart\"", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_fetched_and_nothing_runs()
    {
        var page = HtmlPage.Of(new PageContent("x", "en", "# x\n", []));
        Assert.Contains("Content-Security-Policy\" content=\"default-src 'none'", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", page, StringComparison.Ordinal);
        Assert.DoesNotContain("http", page[page.IndexOf("<meta name=\"viewport", StringComparison.Ordinal)..], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(">", 100_000)]
    [InlineData("[", 100_000)]
    [InlineData("![", 50_000)]
    [InlineData("*", 100_000)]
    [InlineData("- ", 20_000)]
    [InlineData("`a", 20_000)]
    [InlineData("(", 100_000)]
    [InlineData("*a_", 30_000)]
    public void Prose_of_any_depth_ends_well(string text, int times) =>
        Assert.NotEmpty(Body(string.Concat(Enumerable.Repeat(text, times))));

    private static string Body(string markdown)
    {
        var page = HtmlPage.Of(new PageContent("x", "en", markdown, []));
        return page[page.IndexOf("<main>", StringComparison.Ordinal)..];
    }
}
