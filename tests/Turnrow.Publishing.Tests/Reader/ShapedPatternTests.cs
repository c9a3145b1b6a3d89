using CsCheck;
using Turnrow.Compiler;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Instructions;
using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Publishing.Tests.Reader;

/// <summary>Pieces shaped in stitch patterns of the library, at random: what comes out reads back row by row, and is as wide as was said.</summary>
public sealed class ShapedPatternTests
{
    private static readonly (string Name, int Multiple, int Plus, string Edge)[] s_patterns =
    [
        ("moss", 2, 1, "sc"), ("crumble", 3, 1, "sc"), ("post-rib", 2, 2, "dc"), ("basketweave", 6, 2, "dc"), ("waffle", 3, 0, "dc"), ("shells", 6, 1, "sc"),
        ("interlocking-shells", 6, 1, "dc"), ("vees", 3, 2, "dc"), ("wide-vees", 4, 3, "dc"), ("granny-stripe", 3, 2, "dc"), ("mesh", 2, 1, "dc"),
        ("squares", 3, 1, "dc"), ("chevron", 12, 1, "dc"), ("ripple", 17, 2, "sc"), ("waves", 10, 1, "sc"),
    ];

    [Fact]
    public void What_comes_out_reads_back_and_is_as_wide_as_was_said()
    {
        var workable = 0;
        Gen.Select(Gen.Int[0, s_patterns.Length - 1], Gen.Int[2, 6], Gen.Int[0, 5], Gen.Int[1, 9], Gen.Int[-1, 1], Gen.Int[-1, 1], Gen.Int[1, 4]).Sample(
            (which, repeats, over, before, right, left, every) =>
            {
                var (name, multiple, plus, edge) = s_patterns[which];
                var stitches = (repeats * multiple) + plus + (over % multiple);
                var changes = string.Join("; ", new[] { Change(right, "right", every), Change(left, "left", every) }.Where(static c => c.Length > 0));
                var shape = changes.Length > 0 ? $"shape 12 rows, edges in {edge}: {changes}\n" : string.Empty;
                var text = $"notation 1\npattern \"Panel\"\nterms US\nturn dc: ch 3 counts\nturn hdc: ch 2 counts\nuse \"stitch-library.turnrow\"\npiece panel\nbegin with {stitches} stitches\nstraight {before} rows, in {name}, edges in {edge}\n{shape}straight 2 rows\n";
                var compilation = Compilation.Of(new SourceText("panel.turnrow", text), Repository.Beside);
                if (compilation.Diagnostics.Count > 0)
                {
                    // Refused, and for no other reason.
                    Assert.All(compilation.Diagnostics, static d => Assert.Equal("pattern-shape", d.Kind.Name));
                    return;
                }

                workable++;
                var rows = compilation.Pattern.Pieces.Single().InSizes[0].Rows;
                Assert.Equal(stitches + ((right + left) * (12 / every)), ((WordsPlan)rows[^1].Plan).Of!.Places);
                var found = new[] { Terms.US, Terms.UK }.SelectMany(terms => ReadBack.Differences(compilation.Pattern, WrittenInstructions.Write(compilation.Pattern, terms))).ToList();
                Assert.True(found.Count == 0, $"{text}\n{string.Join('\n', found.Take(5))}");
            },
            iter: 300,
            threads: 1);
        Assert.True(workable > 150, $"only {workable} of 300 could be worked");
    }

    private static string Change(int by, string edge, int every) => by == 0 ? string.Empty
        : $"{(by > 0 ? "inc" : "dec")} 1 at {edge} edge every {(every == 1 ? "row" : $"{every} rows")}";
}
