using Turnrow.Fabric.Words;
using Xunit;

namespace Turnrow.Compiler.Tests.Facts;

/// <summary>
/// Increasing and decreasing evenly, as it is printed. An increase is made in a stitch here, so "after every 6th stitch" is in the 6th; the
/// sources differ in where the odd groups go, so <c>evenly</c> is held to totals and to gaps that differ by one at most.
/// </summary>
public sealed class SpreadingFacts
{
    [Theory]
    // woolpackyarn.com, "calculating where to place the increases": 51 / 4 = 12.75: in stitches 13, 26, 39 and 51.
    [InlineData(51, "(dc 12, inc) 3 times, dc 11, inc", 55)]
    // Dummies, "How to increase at several points in the same row": 5 sections of 8, in every 8th.
    [InlineData(40, "(dc 7, inc) 4 times, dc 8", 44)]
    [InlineData(60, "(dc 9, inc) across", 66)] // neasesneedlework.com, "how do you reduce stitches evenly in a row": every 10th
    // A lesson "How to increase / decrease evenly", seen as a repost (from memory: of DROPS Design): 4 are left at the end.
    [InlineData(100, "(dc 5, inc) 16 times, dc 4", 116)]
    [InlineData(140, "(dc 5, inc, dc 6, inc) 10 times, dc 5, inc, dc 4", 161)] // the same lesson: 6.66, after 6 and 7 in turn, 6 first
    [InlineData(48, "dc, inc, (dc 3, inc) 11 times, dc 2", 60)] // the same lesson: after 2, then after every 4, 2 are left
    [InlineData(100, "(dc 4, dec) 16 times, dc 4", 84)] // the same lesson; katieskitchenblog.com: in every 6th, 4 are left
    [InlineData(55, "(dc 2, dec) 4 times, (dc, dec) 13 times", 38)] // papermoonknits.com, "Math Monday: decreasing, part II": 55 / 17 = 3 rest 4
    [InlineData(30, "(dc, dec) across", 20)] // a knitting book page: 30 / 10 = 3, work 1, 2 together
    // spincraftpatterns.com, "decrease evenly across row": 131 / 39 = 3, 14 over, so 25 groups of 3 and 14 of 4 (its words are an error).
    [InlineData(131, "(dc, dec) 25 times, (dc 2, dec) 14 times", 92)]
    [InlineData(129, "dc 10, (inc, dc 6) across", 146)] // published leaflet BRK0502-035370M: 10, then increase in 1, 6 plain
    [InlineData(48, "(dc, inc) across", 72)] // published leaflet PAK0116-005442M: 24 increases, one in 2
    public void The_printed_groups_fill_the_row_and_make_the_printed_count(int stitches, string words, int expected) =>
        Assert.Equal($"{expected}", Printed.Over($"{stitches}", $"row 2: {words} = {expected}").Clean().Last());

    [Theory]
    [InlineData("51", "inc 4", "55")] // woolpackyarn.com, as above
    [InlineData("112", "inc 16", "128")] // the same page
    [InlineData("40", "inc 4", "44")] // Dummies, as above
    [InlineData("60", "inc 6", "66")] // neasesneedlework.com, as above
    [InlineData("100", "inc 16", "116")] // the lesson, as above
    [InlineData("140", "inc 21", "161")] // the lesson
    [InlineData("48", "inc 12", "60")] // the lesson
    [InlineData("100", "dec 16", "84")] // the lesson
    [InlineData("55", "dec 17", "38")] // papermoonknits.com, as above
    [InlineData("30", "dec 10", "20")] // the book page, as above
    [InlineData("131", "dec 39", "92")] // spincraftpatterns.com, as above
    [InlineData("87 (93, 99, 111)", "inc 17 (19, 19, 17)", "104 (112, 118, 128)")] // published leaflet PAK0129-003407M
    [InlineData("76 (90, 104, 104)", "inc 5", "81 (95, 109, 109)")] // published leaflet CAK0129-010186M, in three sizes
    [InlineData("62", "inc 1", "63")] // published leaflet PAK0116-001086M
    public void Evenly_makes_the_printed_count_and_gaps_as_even_as_can_be(string stitches, string change, string expected)
    {
        var made = Printed.Over(stitches, $"row 2: dc {change} evenly = {expected}").Clean();
        Assert.Equal(expected, made.Last());
        Assert.All(made.InSizes("back"), piece => Assert.InRange(Unevenness(ChangedAt(piece.Rows[1].Work!.Words)), 0, 1));
    }

    // woolpackyarn.com, the same page: worked flat, half an interval (6.37) stands first: in stitches 6, 19, 32 and 45.
    [Fact]
    public void Half_a_gap_stands_first_in_a_flat_row() =>
        Assert.Equal([6, 19, 32, 45], ChangedAt(Printed.Over("51", "row 2: dc inc 4 evenly").Clean().Row(2).Work!.Words));

    // The same page: 112 and 16, every 7 stitches, with 3.5 first.
    [Fact]
    public void Sixteen_over_a_hundred_and_twelve_are_seven_apart() =>
        Assert.Equal(Enumerable.Range(0, 16).Select(i => 4 + (7 * i)), ChangedAt(Printed.Over("112", "row 2: dc inc 16 evenly").Clean().Row(2).Work!.Words));

    // Published leaflet PAK0116-001086M: a crown of 7 sections, one stitch less between in each decrease row, a plain row between.
    [Fact]
    public void A_crown_loses_seven_at_a_time() => Assert.Equal(
        [63, 56, 49, 42, 35, 28, 21, 14],
        Every(2, Printed.Over("63", string.Join('\n', Enumerable.Range(1, 7).Select(i => $"row: (dc {8 - i}, dec) across\nrow: dc across"))).Clean()));

    // Published leaflet CAK0116-008819M: 98 stitches, four pairs of decreases in every right-side row.
    [Fact]
    public void Four_pairs_of_decreases_take_eight_at_a_time() => Assert.Equal(
        [98, 90, 82, 74, 66, 58, 50, 42, 34, 26],
        Every(2, Printed.Over("98", string.Concat(Enumerable.Repeat("row: dc dec 8 evenly\nrow: dc across\n", 9))).Clean()));

    // Published leaflet PAK0416-030197M: 64 stitches: (7, increase), (8, increase), (9, increase), a plain row between.
    [Fact]
    public void Eight_sections_grow_by_eight_at_a_time() => Assert.Equal(
        [64, 72, 80, 88],
        Every(2, Printed.Over("64", "row: (dc 7, inc) across\nrow: dc across\nrow: (dc 8, inc) across\nrow: dc across\nrow: (dc 9, inc) across\nrow: dc across").Clean()));

    // Published leaflet CAK0129-010186M, in three sizes: 81 (95, 109) are 38 (45, 52), 5 bound off and 38 (45, 52).
    [Fact]
    public void A_row_is_shared_out_without_a_rest() => Printed.Piece("sizes S, M, L", """
        begin with 81 (95, 109) stitches
        row 1 RS: dc across
        divide: 38 (45, 52) for right, skip 5, 38 (45, 52) for left

        piece right-half from back: right
        row: dc across = 38 (45, 52)

        piece left-half from back: left
        row: dc across = 38 (45, 52)
        """).Clean();

    // Counts of the first row and of every second one after the next.
    private static IEnumerable<int> Every(int rows, Compiled made) => made.Counts().Where((_, i) => i % rows == 0);

    // In which stitches of the row below changes are made, from 1; of a decrease, the first of the two.
    private static List<int> ChangedAt(IReadOnlyList<Word> words)
    {
        var (changes, next) = (new List<int>(), 1);
        foreach (var work in words.SelectMany(w => w is Repeat repeat ? Enumerable.Repeat(repeat.Words, repeat.Amount.Times).SelectMany(x => x) : [w]).Cast<Work>())
        {
            for (var i = 0; i < work.Amount.Times; i++)
            {
                if (work.Takes != work.Makes) changes.Add(next);
                next += work.Takes;
            }
        }

        return changes;
    }

    private static int Unevenness(List<int> changes)
    {
        var gaps = changes.Skip(1).Select((at, i) => at - changes[i]).ToList();
        return gaps.Count == 0 ? 0 : gaps.Max() - gaps.Min();
    }
}
