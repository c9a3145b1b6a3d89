using System.Text;
using Turnrow.Fabric.Patterns;
using Turnrow.Syntax;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Cli.Reports;

/// <summary>A pattern's text with a maker's own gauge in place of the designer's.</summary>
/// <param name="Shown">The text with her numbers in the gauge line.</param>
/// <param name="Worked">The same, every character in the same place, without the counts that are claimed in plain numbers.</param>
/// <param name="ClaimsLeftOut">How many lines claimed such a count.</param>
internal sealed record MakersText(string Shown, string Worked, int ClaimsLeftOut)
{
    private const string Before = "gauge dc: ";

    /// <summary>Makes the text.</summary>
    /// <param name="tree">The pattern, read.</param>
    /// <param name="pattern">The pattern, understood.</param>
    /// <param name="gauge">The line to be changed.</param>
    /// <param name="stitches">Her stitches, as the notation writes numbers; null to leave them.</param>
    /// <param name="rows">Her rows; null to leave them.</param>
    public static MakersText Of(SyntaxTree tree, Pattern pattern, GaugeStatement gauge, string? stitches, string? rows)
    {
        var numbers = new List<(TextSpan Span, string Text)>();
        if (stitches is not null) numbers.Add((gauge.Stitches.Count.Span, stitches));
        if (rows is not null) numbers.Add((gauge.Rows.Count.Span, rows));
        var claims = PlainClaims(tree, pattern).Select(span => (span, Blank(tree.Source.ToString(span)))).ToList();
        return new MakersText(Edited(tree.Source.Text, numbers), Edited(tree.Source.Text, [.. numbers, .. claims]), claims.Count);
    }

    /// <summary>A number as it was typed, if a gauge line may hold it and it is above 0; null if not.</summary>
    public static string? Number(string typed)
    {
        var tree = SyntaxReader.Read(new SourceText(string.Empty, $"{Before}{typed} stitches and 1 rows to 1 cm"));
        return tree is { Diagnostics.Count: 0, Lines: [{ Broken: false, Statement: GaugeStatement gauge }] }
            && gauge.Stitches.Count is { Numerator: > 0 } count && count.Span == new TextSpan(Before.Length, typed.Length)
            ? typed
            : null;
    }

    // A claim that names a count moves with the gauge; one in plain numbers is the designer's count and none of the maker's.
    private static IEnumerable<TextSpan> PlainClaims(SyntaxTree tree, Pattern pattern)
    {
        var names = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var count in pattern.Counts) names.Add(count.Name);
        var at = 0;
        foreach (var line in tree.Lines)
        {
            (int Start, bool Named)? claim = null;
            while (at < tree.Tokens.Count && tree.Tokens[at].Span.Start < line.Span.Start) at++;
            for (; at < tree.Tokens.Count && tree.Tokens[at].Span.Start < line.Span.End; at++)
            {
                var text = tree.Source.Text.AsSpan(tree.Tokens[at].Span.Start, tree.Tokens[at].Span.Length);
                if (claim is null && tree.Tokens[at].Kind == TokenKind.Sign && text is "=") claim = (tree.Tokens[at].Span.Start, false);
                else if (claim is { Named: false } plain && names.Contains(text.ToString())) claim = (plain.Start, true);
            }

            if (!line.Broken && claim is { Named: false } found) yield return TextSpan.FromBounds(found.Start, line.Span.End);
        }
    }

    // Line ends stay where they are.
    private static string Blank(string text) => string.Create(text.Length, text, static (blank, from) =>
    {
        for (var i = 0; i < blank.Length; i++) blank[i] = from[i] is '\n' or '\r' ? from[i] : ' ';
    });

    private static string Edited(string text, IReadOnlyList<(TextSpan Span, string Text)> edits)
    {
        var edited = new StringBuilder(text.Length);
        var from = 0;
        foreach (var (span, put) in edits.OrderBy(edit => edit.Span.Start))
        {
            edited.Append(text, from, span.Start - from).Append(put);
            from = span.End;
        }

        return edited.Append(text, from, text.Length - from).ToString();
    }
}
