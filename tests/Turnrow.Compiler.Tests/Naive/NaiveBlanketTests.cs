using CsCheck;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Places;
using Xunit;

namespace Turnrow.Compiler.Tests.Naive;

/// <summary>Random blankets, against motifs that are laid out one by one, stitch by stitch.</summary>
public sealed class NaiveBlanketTests
{
    [Fact]
    public void The_compiler_agrees_on_random_blankets() => NaiveBlanket.Any.Sample(
        naive =>
        {
            var blanket = Compiled.Of(naive.Write()).Clean().Pattern.Blankets.Single().InSizes[0]!;
            Assert.Equal(naive.Laid.Joined.Count, blanket.Layout.Motifs);
            Assert.Equal(Turned(naive.Rim()), Turned(Flat(blanket.Rim)));
            Assert.Equal(naive.StitchesOfAll(), blanket.Motif.Rows[^1].Work!.Stitches + blanket.Joined.Sum(j => j.Count * j.Piece.Rows[^1].Work!.Stitches));
            // Kinds that look alike may be told apart by where they lie, or be one if they are only turned.
            var made = blanket.Joined.Select(j => (Round: Turned(Flat(j.Piece.Top!)), j.Count)).GroupBy(static k => k.Round).Select(static g => (g.Key, g.Sum(static k => k.Count))).Order();
            var meant = naive.Joined().Select(k => (Round: Turned(k.Round.Split(" | ")), k.Count)).GroupBy(static k => k.Round).Select(static g => (g.Key, g.Sum(static k => (long)k.Count))).Order();
            Assert.Equal(meant, made);
            var lying = naive.Laid.Turns(naive.Kinds);
            for (var kind = 0; kind < naive.Kinds; kind++)
            {
                var joined = blanket.Joined.Where(j => j.Kind == kind).Sum(static j => j.Count);
                Assert.Equal(lying.Count(k => k == kind), blanket.Layout.Of(kind));
                Assert.Equal(blanket.Layout.Of(kind), joined + (kind == 0 ? 1 : 0));
                Assert.All(blanket.Joined.Where(j => j.Kind == kind), j => Assert.Equal(new RingStart(kind + 3), j.Piece.Start));
            }
        },
        iter: 400,
        threads: 1,
        print: static naive => naive.Write());

    // A motif may be turned as it comes: of all ways to begin, the first in the alphabet.
    private static string Turned(IReadOnlyList<string> places) =>
        Enumerable.Range(0, places.Count).Where(at => places[at].StartsWith("corner", StringComparison.Ordinal))
            .Select(at => string.Join(" | ", places.Skip(at).Concat(places.Take(at)))).Min(StringComparer.Ordinal)!;

    private static List<string> Flat(PlaceSequence places)
    {
        var flat = new List<string>();
        foreach (var segment in places.Segments)
        {
            for (var i = 0; i < segment.Times; i++)
            {
                foreach (var run in segment.Unit)
                {
                    for (var n = 0; n < run.Count; n++) flat.Add(run.Place.Kind != PlaceKind.Space ? "dc" : run.Place.IsCorner ? $"corner {run.Place.Chains}" : $"ch {run.Place.Chains}");
                }
            }
        }

        return flat;
    }
}
