using Turnrow.Compiler.Diagnostics;
using Turnrow.Syntax.Diagnostics;
using Xunit;

namespace Turnrow.Compiler.Tests.Diagnostics;

/// <summary>Each diagnostic has a page with two examples: compiled, the bad one gives it and no other, the good one gives none.</summary>
public sealed class PageTests
{
    public static TheoryData<string> Names => [.. Examples.Kinds.Select(kind => kind.Name)];

    public static TheoryData<string> CompilerNames => [.. CompilerDiagnostics.All.Select(kind => kind.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_bad_example_gives_it_and_no_other(string name)
    {
        var found = Examples.Found(Examples.Bad(Examples.Kind(name)));
        Assert.NotEmpty(found);
        Assert.All(found, diagnostic => Assert.Equal(name, diagnostic.Kind.Name));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_good_example_is_a_whole_pattern_and_clean(string name)
    {
        var compilation = Compilation.Of(new("good", Examples.Kind(name).Good));
        Assert.Empty(compilation.Diagnostics);
        Assert.NotEmpty(compilation.Pattern.Pieces);
        Assert.NotEqual(Examples.Kind(name).Good, Examples.Kind(name).Bad);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_page_explains_it_to_one_who_never_programmed(string name)
    {
        var page = Examples.Kind(name).Page;
        Assert.InRange(page.Length, 60, 1200);
        Assert.DoesNotMatch(@"(?i)\b(token|pars\w*|lexer|syntax|keyword|identifier|expression|integer|string|variable|undefined|null|invalid|compil\w*)\b", page);
        Assert.DoesNotContain("PAGE", page, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_message_is_one_line_with_a_help_and_marks_words_of_the_source(string name)
    {
        var source = Examples.Bad(Examples.Kind(name));
        foreach (var diagnostic in Examples.Found(source))
        {
            Assert.DoesNotContain('\n', diagnostic.Message);
            Assert.False(string.IsNullOrWhiteSpace(diagnostic.Help));
            Assert.InRange(diagnostic.Span.Start, 0, source.Text.Length);
            Assert.InRange(diagnostic.Span.End, diagnostic.Span.Start, source.Text.Length);
            Assert.DoesNotMatch(@"\b1 (stitches|rows|places|times|spaces)\b", diagnostic.Message);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Each_mend_of_the_bad_example_takes_it_away(string name)
    {
        var source = Examples.Bad(Examples.Kind(name));
        foreach (var diagnostic in Examples.Found(source))
        {
            foreach (var mend in diagnostic.Mends)
            {
                var after = Examples.Found(Examples.With(source, mend));
                Assert.DoesNotContain(after, d => d.Kind == diagnostic.Kind && d.Message == diagnostic.Message);
            }
        }
    }

    [Theory]
    [MemberData(nameof(CompilerNames))]
    public void A_mend_of_a_line_that_can_be_read_leaves_nothing_to_mend(string name)
    {
        var source = Examples.Bad(Examples.Kind(name));
        foreach (var mend in Examples.Found(source).SelectMany(diagnostic => diagnostic.Mends))
        {
            Assert.Empty(Examples.Found(Examples.With(source, mend)).Select(d => $"{mend.Title}: {d.Kind.Name}: {d.Message}"));
        }
    }

    [Fact]
    public void Names_and_codes_are_given_once()
    {
        Assert.Equal(Examples.Kinds.Count, Examples.Kinds.Select(kind => kind.Name).Distinct(StringComparer.Ordinal).Count());
        Assert.Equal(Examples.Kinds.Count, Examples.Kinds.Select(kind => kind.Code).Distinct(StringComparer.Ordinal).Count());
        Assert.All(Examples.Kinds, kind => Assert.Matches("^[a-z]+(-[a-z]+)*$", kind.Name));
        Assert.All(CompilerDiagnostics.All, kind => Assert.Matches("^TR0[2-6][0-9]{2}$", kind.Code));
        Assert.Equal(Examples.Kinds.Select(kind => kind.Code).Order(StringComparer.Ordinal), Examples.Kinds.Select(kind => kind.Code));
    }

    [Fact]
    public void Every_kind_there_is_is_listed()
    {
        var kinds = typeof(CompilerDiagnostics).Assembly.GetTypes()
            .Where(type => type.Namespace == "Turnrow.Compiler.Diagnostics.Kinds")
            .Select(type => type.GetField("Kind")?.GetValue(null))
            .OfType<DiagnosticKind>();
        Assert.Equal(kinds.OrderBy(kind => kind.Code, StringComparer.Ordinal), CompilerDiagnostics.All);
    }
}
