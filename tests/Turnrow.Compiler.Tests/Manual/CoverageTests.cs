using System.Text.RegularExpressions;
using Turnrow.Compiler.Tests.Diagnostics;
using Turnrow.Fabric.Stitches;
using Turnrow.Syntax;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;
using Xunit;

namespace Turnrow.Compiler.Tests.Manual;

/// <summary>The manual leaves nothing out, and names nothing that is not there.</summary>
public sealed partial class CoverageTests
{
    private static readonly IReadOnlyList<LineSyntax> Lines =
        [.. ManualPage.Examples.SelectMany(block => SyntaxReader.Read(new SourceText("example", string.Join('\n', block.Lines))).Lines).Where(line => !line.Broken)];

    private static readonly HashSet<string> Words = ManualPage.Examples
        .SelectMany(block => block.Lines)
        .SelectMany(line => Word().Matches(Expectation.TakenOut(line)).Select(match => match.Value))
        .ToHashSet(StringComparer.Ordinal);

    [Fact]
    public void Every_statement_is_in_an_example()
    {
        var shown = Lines.Select(line => line.Keyword).ToHashSet(StringComparer.Ordinal);
        None(NotationWords.Statements.Select(word => word.Text).Where(word => !shown.Contains(word)));
    }

    [Fact]
    public void Every_word_of_the_grammar_is_in_an_example()
    {
        var grammar = File.ReadAllText(Repository.PathOf("grammar/TurnrowLexer.g4"));
        var words = TokenOfWords().Matches(grammar).Select(match => match.Groups[1].Captures.Select(word => word.Value).ToList()).ToList();
        Assert.True(words.Count > 100, "the grammar's words are written in another way now");
        None(words.Where(ways => !ways.Exists(Words.Contains)).Select(ways => ways[0]));
    }

    [Theory]
    [InlineData("dc")]
    [InlineData("dc 5")]
    [InlineData("dc across")]
    [InlineData("dc until 5 remain")]
    [InlineData("3 dc in next")]
    [InlineData("in first")]
    [InlineData("in last")]
    [InlineData("in same")]
    [InlineData("inc")]
    [InlineData("dec")]
    [InlineData("inc 3")]
    [InlineData("dec 3")]
    [InlineData("hdc dec")]
    [InlineData("dc3tog")]
    [InlineData("(2 dc, ch 2, 2 dc) in next sp")]
    [InlineData("skip 2")]
    [InlineData("ch 3")]
    [InlineData("slip over 5")]
    [InlineData("sl st 5")]
    [InlineData("leave 5")]
    [InlineData("leave the rest")]
    [InlineData("(dc 4, inc) 6 times")]
    [InlineData("(dc 4, inc) across")]
    [InlineData("(dc 4, inc) until 5 remain")]
    [InlineData("in next dc")]
    [InlineData("in next ch-3 sp")]
    [InlineData("in each st")]
    [InlineData("in each st and sp")]
    [InlineData("in each sp")]
    [InlineData("back-loop")]
    [InlineData("front-loop")]
    [InlineData("front-post")]
    [InlineData("back-post")]
    [InlineData("inc 8 evenly")]
    [InlineData("dec 8 evenly")]
    [InlineData("with (ch 2, skip 2) 5 times evenly, 3 at each end")]
    [InlineData("in each st and 2 sc in each sp")]
    public void Every_word_of_a_row_is_in_an_example(string written)
    {
        var rows = ManualPage.Examples.SelectMany(block => block.Lines).Where(line => line.TrimStart().StartsWith("row", StringComparison.Ordinal));
        Assert.Contains(rows, row => Regex.IsMatch(row, $@"(?<!\w){Regex.Escape(written)}(?!\w)"));
    }

    [Theory]
    [InlineData(Terms.US)]
    [InlineData(Terms.UK)]
    public void Every_stitch_is_on_the_page_of_terms(Terms terms)
    {
        var page = ManualPage.All.Single(each => each.Name == "terms.md").Prose;
        None(StitchBook.All.Select(stitch => $"`{stitch.In(terms).Abbreviation}`").Where(code => !page.Contains(code, StringComparison.Ordinal)));
    }

    [Fact]
    public void Links_lead_somewhere()
    {
        var folder = Repository.PathOf(ManualPage.Folder);
        foreach (var page in ManualPage.All)
        {
            foreach (var link in page.Links.Where(link => !link.Contains("://", StringComparison.Ordinal)))
            {
                var (path, heading) = link.Split('#') is [var before, var after] ? (before, after) : (link, null);
                var target = path.Length == 0 ? page.Name : path;
                var full = Path.GetFullPath(Path.Combine(folder, target));
                Assert.True(Path.Exists(full), $"{page.Name}: {link} leads nowhere");
                if (heading is not null && ManualPage.All.FirstOrDefault(each => each.Name == target) is { } there)
                    Assert.True(there.Headings.Contains(heading, StringComparer.Ordinal), $"{page.Name}: {target} has no heading {heading}");
            }
        }
    }

    [Fact]
    public void Every_page_is_linked_from_the_first_one()
    {
        var index = ManualPage.All.Single(page => page.Name == "README.md");
        None(ManualPage.All.Select(page => page.Name).Except(index.Links.Append(index.Name)));
    }

    [Fact]
    public void Every_finding_that_is_named_exists()
    {
        var known = Examples.Kinds.Select(kind => kind.Name).ToHashSet(StringComparer.Ordinal);
        foreach (var page in ManualPage.All)
        {
            var named = Named().Matches(page.Text).Select(match => match.Groups[1].Value);
            None(named.Where(name => !known.Contains(name)).Select(name => $"{page.Name}: {name}"));
        }
    }

    [Fact]
    public void Pages_can_be_read_in_a_minute_or_two()
    {
        const int longest = 900;
        None(ManualPage.All.Where(page => Word().Count(page.Prose) > longest).Select(page => $"{page.Name}: {Word().Count(page.Prose)} words"));
    }

    private static void None(IEnumerable<string> missing) => Assert.Equal("", string.Join('\n', missing));

    [GeneratedRegex(@"[\w-]+")]
    private static partial Regex Word();

    [GeneratedRegex(@"^\w+ *: '([A-Za-z]+)'(?: \| '([A-Za-z]+)')* ;", RegexOptions.Multiline)]
    private static partial Regex TokenOfWords();

    [GeneratedRegex(@"(?:turnrow explain |(?:error|warning):? \[?`?)([a-z]+(?:-[a-z]+)+)\b")]
    private static partial Regex Named();
}
