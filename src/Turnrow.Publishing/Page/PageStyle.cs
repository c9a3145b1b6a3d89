namespace Turnrow.Publishing.Page;

/// <summary>How the page looks, on a screen and on paper.</summary>
internal static class PageStyle
{
    /// <summary>The style sheet.</summary>
    public const string Css = """
        :root { color-scheme: light; --ink: #1a1a1a; --soft: #595959; --rule: #bdbdbd; --tint: #f2f2ef; }
        * { box-sizing: border-box; }
        body { margin: 0; color: var(--ink); background: #fff; font: 1.0625rem/1.55 Georgia, "Times New Roman", serif; }
        main { max-width: 46rem; margin: 0 auto; padding: 1.5rem 1.25rem 4rem; overflow-wrap: break-word; }
        h1, h2, h3, h4 { font-family: system-ui, -apple-system, "Segoe UI", Arial, sans-serif; line-height: 1.25; margin: 2em 0 .5em; }
        h1 { font-size: 1.9rem; margin-top: .3em; }
        h2 { font-size: 1.35rem; padding-bottom: .2em; border-bottom: 2px solid var(--ink); }
        h3 { font-size: 1.1rem; }
        p, ul, ol { margin: .55em 0; }
        ul, ol { padding-left: 1.5em; }
        strong { font-weight: 700; }
        a { color: inherit; }
        blockquote { margin: 1em 0; padding: .1em 1em; border-left: 4px solid var(--rule); color: var(--soft); }
        pre { white-space: pre-wrap; }
        code { font-size: .95em; }
        .table { overflow-x: auto; margin: 1em 0; }
        table { border-collapse: collapse; font-variant-numeric: tabular-nums; }
        th, td { padding: .3em .7em; border: 1px solid var(--rule); text-align: left; vertical-align: top; }
        th { background: var(--tint); }
        figure { margin: 1.5em 0; }
        .chart { overflow-x: auto; border: 1px solid var(--rule); }
        .chart:focus-visible, .table:focus-visible { outline: 3px solid var(--ink); }
        .chart svg { display: block; margin: 0 auto; min-width: var(--narrowest); }
        @media (max-width: 40rem) {
          body { font-size: 1rem; }
          main { padding: 1rem .9rem 3rem; }
        }
        @page { size: A4; margin: 16mm 15mm 18mm; }
        @media print {
          body { font-size: 10.5pt; line-height: 1.4; }
          main { max-width: none; padding: 0; }
          h1, h2, h3, h4 { break-after: avoid; }
          p, li, tr, pre, blockquote { break-inside: avoid; }
          p, li { orphans: 3; widows: 3; }
          .table { overflow: visible; }
          thead { display: table-header-group; }
          .chart { break-inside: avoid; overflow: visible; border: 0; margin: 0 0 8mm; }
          .chart svg { min-width: 0; max-height: 250mm; }
        }

        """;
}
