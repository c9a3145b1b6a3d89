using Markdig;
using Markdig.Extensions.Tables;
using Markdig.Renderers;
using Markdig.Renderers.Html;
using Markdig.Renderers.Html.Inlines;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Turnrow.Publishing.Page;

/// <summary>
/// Turns the instructions' Markdown into HTML. What the designer wrote never becomes markup of its own: raw HTML is text, links lead
/// only where <see cref="LinkSchemes"/> lets them, and a picture is a chart of this pattern or its description in words.
/// </summary>
internal sealed class PageMarkdown(IReadOnlyDictionary<string, string> figures)
{
    // Deeper than any prose; what is deeper is shown as it was written.
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().UsePipeTables().DisableHtml().Build();

    private readonly HashSet<string> _used = [];

    /// <summary>The figures that the Markdown does not place.</summary>
    public IEnumerable<string> Unplaced => figures.Where(figure => !_used.Contains(figure.Key)).Select(figure => figure.Value);

    /// <summary>The HTML of a text.</summary>
    public string ToHtml(string markdown)
    {
        MarkdownDocument document;
        try
        {
            document = Markdown.Parse(markdown, Pipeline);
        }
        catch (ArgumentException)
        {
            // Markdig refuses nesting beyond its limit in this way.
            return $"<pre>{System.Net.WebUtility.HtmlEncode(markdown)}</pre>\n";
        }

        foreach (var link in document.Descendants<LinkInline>()) Guard(link);
        using var writer = new StringWriter(System.Globalization.CultureInfo.InvariantCulture) { NewLine = "\n" };
        var renderer = new HtmlRenderer(writer);
        Pipeline.Setup(renderer);
        renderer.ObjectRenderers.Replace<HtmlTableRenderer>(new WideTable());
        renderer.ObjectRenderers.Replace<ParagraphRenderer>(new FigureParagraph(figures));
        renderer.ObjectRenderers.Replace<LinkInlineRenderer>(new FigureRenderer(figures, _used));
        renderer.ObjectRenderers.Replace<AutolinkInlineRenderer>(new PlainAddress());
        renderer.Render(document);
        writer.Flush();
        return writer.ToString();
    }

    private static void Guard(LinkInline link)
    {
        var address = link.GetDynamicUrl?.Invoke() ?? link.Url ?? string.Empty;
        link.GetDynamicUrl = null;
        link.Url = LinkSchemes.Allow(address) ? address : null;
    }

    /// <summary>A table that can be moved sideways where it is wider than the screen.</summary>
    private sealed class WideTable : HtmlTableRenderer
    {
        /// <inheritdoc/>
        protected override void Write(HtmlRenderer renderer, Table table)
        {
            renderer.EnsureLine();
            renderer.WriteLine("<div class=\"table\" tabindex=\"0\">");
            base.Write(renderer, table);
            renderer.WriteLine("</div>");
        }
    }

    /// <summary>A figure by itself needs no paragraph round it.</summary>
    private sealed class FigureParagraph(IReadOnlyDictionary<string, string> figures) : ParagraphRenderer
    {
        /// <inheritdoc/>
        protected override void Write(HtmlRenderer renderer, ParagraphBlock block)
        {
            if (block.Inline is { FirstChild: LinkInline { IsImage: true, NextSibling: null, Url: { } name } } && figures.ContainsKey(name))
                renderer.WriteLeafInline(block);
            else
                base.Write(renderer, block);
        }
    }

    /// <summary>A picture becomes the figure of that name, or its words; a link without an address only its words.</summary>
    private sealed class FigureRenderer(IReadOnlyDictionary<string, string> figures, HashSet<string> used) : LinkInlineRenderer
    {
        /// <inheritdoc/>
        protected override void Write(HtmlRenderer renderer, LinkInline link)
        {
            if (link.IsImage && link.Url is { } name && figures.TryGetValue(name, out var figure))
            {
                if (used.Add(name)) renderer.Write(figure);
            }
            else if (link.IsImage || link.Url is null)
            {
                renderer.WriteChildren(link);
            }
            else
            {
                base.Write(renderer, link);
            }
        }
    }

    /// <summary>An address in angle brackets: a link if it may be one, else its text.</summary>
    private sealed class PlainAddress : AutolinkInlineRenderer
    {
        /// <inheritdoc/>
        protected override void Write(HtmlRenderer renderer, AutolinkInline address)
        {
            if (address.IsEmail || LinkSchemes.Allow(address.Url)) base.Write(renderer, address);
            else renderer.WriteEscape(address.Url);
        }
    }
}
