using Turnrow.Compiler;
using Turnrow.Fabric.Colours;
using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Tables;
using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Publishing.Tests;

/// <summary>
/// What is published of each pattern in <c>patterns/</c>, to the last character: the instructions in both terms, the charts of the
/// first size, and the tables. Read by a person before it was accepted.
/// </summary>
public sealed class PublishedPatternsTests
{
    /// <summary>Each pattern with each file that is published of it; the page is made of the same and has tests of its own.</summary>
    public static TheoryData<string, string> Files()
    {
        var files = new TheoryData<string, string>();
        foreach (var name in Names())
        {
            foreach (var file in Published(name).Keys) files.Add(name, file);
        }

        return files;
    }

    /// <summary>The patterns' names.</summary>
    public static TheoryData<string> Patterns() => new(Names());

    [Theory]
    [MemberData(nameof(Files))]
    public void A_pattern_is_published_as_it_was(string name, string file) => Golden.Matches($"patterns/{name}/{file}", Published(name)[file]);

    [Theory]
    [MemberData(nameof(Patterns))]
    public void Nothing_lies_beside_it_that_is_not_published(string name)
    {
        var folder = Repository.PathOf($"patterns/{name}");
        var there = Directory.GetFiles(folder, "*", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(folder, f).Replace('\\', '/'));
        // Its rows in text are held to by the compiler's tests.
        Assert.Equal(Published(name).Keys.Order(StringComparer.Ordinal), there.Where(f => f != name + ".rows.txt").Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Patterns))]
    public void There_is_nothing_to_say_against_it(string name) => Assert.Empty(Compiled(name).Diagnostics.Select(d => d.Message));

    [Theory]
    [MemberData(nameof(Patterns))]
    public void The_stitches_of_its_yarns_are_those_of_the_row(string name)
    {
        var pattern = Compiled(name).Pattern;
        foreach (var record in RowTable.Of(pattern, null))
        {
            Assert.Equal(YarnsWorked.AreSeveral(pattern), record.Yarns is not null);
            if (record.Yarns is { } yarns) Assert.Equal((long?)record.Stitches, yarns.Sum(static yarn => yarn.Value));
        }
    }

    private static IEnumerable<string> Names() =>
        Repository.PatternNames;

    // All in the pattern's own terms; the instructions in the other terms too, in a folder named for them.
    private static Dictionary<string, string> Published(string name)
    {
        var own = Compiled(name).Pattern.Terms;
        var other = own == Terms.US ? Terms.UK : Terms.US;
        var published = In(name, own).ToDictionary(f => f.Name, f => f.Text);
        foreach (var file in In(name, other))
        {
            if (file.Name.EndsWith(".md", StringComparison.Ordinal)) published.Add($"{(other == Terms.UK ? "uk" : "us")}/{file.Name}", file.Text);
        }

        return published;
    }

    private static IEnumerable<PublishedFile> In(string name, Terms terms)
    {
        var compiled = Compiled(name);
        return Publisher.Publish(compiled.Pattern, new PublishOptions(name, terms, 0) { LineOf = compiled.LineOf })
            .Where(f => !f.Name.EndsWith(".html", StringComparison.Ordinal));
    }

    private static Compilation Compiled(string name) =>
        Compilation.Of(new SourceText(name + ".turnrow", File.ReadAllText(Repository.PathOf($"patterns/{name}.turnrow"))), Repository.Beside);
}
