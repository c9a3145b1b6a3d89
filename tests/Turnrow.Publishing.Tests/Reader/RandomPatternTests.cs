using CsCheck;
using Turnrow.Compiler;
using Turnrow.Compiler.Tests.Naive;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Instructions;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Publishing.Tests.Reader;

/// <summary>Random patterns, published and read back in all their sizes.</summary>
public sealed class RandomPatternTests
{
    [Fact]
    public void Random_patterns_read_back_in_every_size_and_both_terms() => NaiveGen.Valid.Sample(
        pattern =>
        {
            var compiled = Compiled(NotationWriter.Write(pattern with { Seams = [.. pattern.Seams.Where(seam => !seam.Eased)] }));
            var found = new[] { Terms.US, Terms.UK }.SelectMany(terms => ReadBack.Differences(compiled, WrittenInstructions.Write(compiled, terms))).ToList();
            Assert.True(found.Count == 0, string.Join('\n', found.Take(5)));
        },
        iter: 400,
        threads: 1,
        print: NotationWriter.Write);

    /// <summary>The pattern with a seam of each kind that its pieces can have.</summary>
    private static Pattern Compiled(string notation)
    {
        var compilation = Of(notation);
        var names = compilation.Pattern.Pieces.Select(piece => piece.Name).ToList();
        var rows = compilation.Pattern.Pieces.ToDictionary(piece => piece.Name, piece => piece.InSizes.Min(size => size.Rows.Count));
        var seams = from first in names
                    from second in names
                    where string.CompareOrdinal(first, second) < 0
                    from seam in new[]
                    {
                        $"seam {first} right edge with {second} left edge",
                        $"seam {first} left edge with {second} right edge, WS together",
                        $"seam {first} left edge with {second} left edge: 1 sc in each row",
                        $"seam {first} right edge, all but last 1 rows, with {second} right edge, all but first 1 rows",
                        $"seam {first} last row with {second} last row: 1 sc in each st",
                        $"seam {first} right edge with {second} right edge, eased",
                    }
                    where (rows[first] > 1 && rows[second] > 1) || !seam.Contains("all but", StringComparison.Ordinal)
                    where IsPossible($"{notation}{seam}\n")
                    select seam;
        var folds = from name in names
                    from fold in new[] { $"seam {name} last row with itself, from stitch 3", $"seam {name} last row with itself: 1 sc in each st", $"seam {name} foundation with itself, WS together" }
                    where IsPossible($"{notation}{fold}\n")
                    select fold;
        return Of(notation + string.Join('\n', seams.Take(4).Concat(folds.Take(2))) + "\n").Pattern;
    }

    private static bool IsPossible(string notation) => Of(notation).Diagnostics.All(d => d.Kind.Severity != Severity.Error);

    private static Compilation Of(string notation) => Compilation.Of(new SourceText("random.turnrow", notation));
}
