using Turnrow.Compiler;
using Turnrow.Fabric.Stitches;
using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Publishing.Tests.Reader;

/// <summary>What is published reads back: a maker with the page in hand arrives at the row model's counts and at the hook's place.</summary>
public sealed class ReaderTests
{
    public static TheoryData<string, Terms> Patterns
    {
        get
        {
            var data = new TheoryData<string, Terms>();
            foreach (var file in Directory.EnumerateFiles(Repository.PathOf("patterns"), "*.turnrow").Order(StringComparer.Ordinal))
            {
                data.Add(Path.GetFileNameWithoutExtension(file), Terms.US);
                data.Add(Path.GetFileNameWithoutExtension(file), Terms.UK);
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Patterns))]
    public void A_pattern_reads_back_in_every_size(string name, Terms terms)
    {
        var file = new SourceText(name + ".turnrow", File.ReadAllText(Repository.PathOf($"patterns/{name}.turnrow")));
        var pattern = Compilation.Of(file).Pattern;
        var page = Publisher.Publish(pattern, new PublishOptions(name, terms, 0)).Single(f => f.Name == name + ".md").Text;
        var found = ReadBack.Differences(pattern, page);
        Assert.True(found.Count == 0, string.Join('\n', found));
    }
}
