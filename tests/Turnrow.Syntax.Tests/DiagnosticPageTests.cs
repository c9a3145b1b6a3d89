using System.Text;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;
using Xunit;

namespace Turnrow.Syntax.Tests;

/// <summary>Each diagnostic of reading has a page with two examples: the bad one gives it and no other, the good one gives none.</summary>
public sealed class DiagnosticPageTests
{
    public static TheoryData<string> Names => [.. SyntaxDiagnostics.All.Select(kind => kind.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_bad_example_gives_it_and_no_other(string name)
    {
        var kind = Kind(name);
        var bytes = kind.BadFile?.Invoke() ?? Encoding.UTF8.GetBytes(kind.Bad);
        Assert.Equal(kind, Assert.Single(SyntaxReader.Read(SourceText.FromBytes("bad", bytes)).Diagnostics).Kind);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_good_example_is_clean(string name)
    {
        var tree = Read(Kind(name).Good);
        Assert.Empty(tree.Diagnostics);
        Assert.Contains(tree.Lines, line => line.Statement is PieceStatement);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_page_is_short_and_speaks_no_programmers_language(string name)
    {
        var kind = Kind(name);
        Assert.InRange(kind.Page.Length, 60, 1000);
        Assert.InRange(kind.Bad.Length, 1, 1000);
        Assert.DoesNotMatch("(?i)token|parser|lexer|syntax|keyword|identifier|expression|integer|string", kind.Page);
    }

    [Fact]
    public void Names_and_codes_are_given_once_and_codes_rise()
    {
        var codes = SyntaxDiagnostics.All.Select(kind => kind.Code).ToList();
        Assert.Equal(codes.Order(StringComparer.Ordinal), codes);
        Assert.Equal(codes.Count, codes.Distinct().Count());
        Assert.Equal(codes.Count, Names.Count);
        Assert.All(codes, code => Assert.Matches("^TR01[0-9]{2}$", code));
        Assert.All(SyntaxDiagnostics.All, kind => Assert.Matches("^[a-z]+(-[a-z]+)*$", kind.Name));
    }

    [Fact]
    public void Every_kind_there_is_is_listed()
    {
        var kinds = typeof(SyntaxDiagnostics).Assembly.GetTypes()
            .Where(type => type.Namespace == "Turnrow.Syntax.Diagnostics.Kinds")
            .Select(type => type.GetField("Kind")?.GetValue(null))
            .OfType<DiagnosticKind>();
        Assert.Equal(kinds.OrderBy(kind => kind.Code, StringComparer.Ordinal), SyntaxDiagnostics.All);
    }

    private static DiagnosticKind Kind(string name) => SyntaxDiagnostics.All.Single(kind => kind.Name == name);

    private static SyntaxTree Read(string text) => SyntaxReader.Read(new SourceText("example", text));
}
