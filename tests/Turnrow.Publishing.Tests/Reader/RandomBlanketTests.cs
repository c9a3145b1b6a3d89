using CsCheck;
using Turnrow.Compiler;
using Turnrow.Compiler.Tests.Naive;
using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Instructions;
using Turnrow.Publishing.Tables;
using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Publishing.Tests.Reader;

/// <summary>Random blankets of squares and hexagons, published and read back.</summary>
public sealed class RandomBlanketTests
{
    private const string Header = "pattern \"Blanket\"\nterms US\nsizes S, L\nturn dc: ch 3 counts\n";

    [Fact]
    public void Random_blankets_read_back_in_both_terms() => NaiveBlanket.Any.Sample(
        naive =>
        {
            var pattern = Compilation.Of(new SourceText("blanket.turnrow", Header + naive.Write())).Pattern;
            Assert.Equal(0, pattern.Errors);
            var found = new[] { Terms.US, Terms.UK }.SelectMany(terms => ReadBack.Differences(pattern, WrittenInstructions.Write(pattern, terms))).ToList();
            Assert.True(found.Count == 0, string.Join('\n', found.Take(5)));
        },
        iter: 150,
        threads: 1,
        print: static naive => naive.Write());

    [Fact]
    public void Joined_motifs_stand_in_the_tables()
    {
        var pattern = Compilation.Of(new SourceText("blanket.turnrow", Header + """
            piece tile
              begin with ring
              round 1: (3 dc, ch 2, mark corner) 6 times in ring
              round 2: ((2 dc, ch 2, 2 dc) in next corner, ch 1) around
              fasten off
            blanket throw of tile: 3 (1) and 2 (1) across, 3 down, join in each sp

            """)).Pattern;
        Assert.Equal(
            """
            piece,row,side,S,L
            tile,1,RS,18,18
            tile,2,RS,24,24
            tile-joined-to-throw-beside,1,RS,18,18
            tile-joined-to-throw-beside,2,RS,24,24
            tile-joined-to-throw-beside-next-beside,1,RS,18,
            tile-joined-to-throw-beside-next-beside,2,RS,24,
            tile-joined-to-throw-before-below-left-below-right,1,RS,18,
            tile-joined-to-throw-before-below-left-below-right,2,RS,24,

            """,
            CountsCsv.Write(pattern));
        var last = RowTable.Of(pattern, null).Last();
        Assert.Equal(("tile-joined-to-throw-before-below-left-below-right", "S", 2, 24), (last.Piece, last.Size, last.Row, last.Stitches));
        Assert.Equal([new("dc", 24), new("ch-2 sp", 6), new("ch-1 sp", 3)], last.Counts!);
    }
}
