using CsCheck;
using Xunit;

namespace Turnrow.Compiler.Tests.Naive;

/// <summary>The generator makes what it says, so that the comparison of the models compares something.</summary>
public sealed class NaiveGenTests
{
    [Fact]
    public void Every_pattern_made_to_be_workable_is() => NaiveGen.Valid.Sample(
        pattern =>
        {
            var result = NaiveWorker.Work(pattern);
            if (!result.IsUnclear)
                Assert.Empty(result.Faults);
        },
        iter: 3000,
        threads: 1,
        print: NotationWriter.Write);

    [Fact]
    public void Some_rows_go_over_a_piece_made_twice()
    {
        var twice = 0;
        NaiveGen.Valid.Sample(pattern => twice += pattern.Pieces.Any(piece => piece.Start is AcrossOf across && across.Pieces[0].Contains(' ', StringComparison.Ordinal)) ? 1 : 0, iter: 2000, threads: 1);
        Assert.True(twice > 30, $"only {twice}");
    }

    [Fact]
    public void Pictures_are_worked_in_rows_and_rounds_and_mirrored()
    {
        var (rows, rounds, mirrored) = (0, 0, 0);
        NaiveGen.Valid.Sample(
            pattern =>
            {
                foreach (var piece in pattern.Pieces)
                {
                    var shown = Mirror.Resolve(pattern, piece).Statements.OfType<StraightIn>().Where(line => line.Pattern is Picture).ToList();
                    rows += shown.Exists(line => !line.IsRound) ? 1 : 0;
                    rounds += shown.Exists(line => line.IsRound) ? 1 : 0;
                    mirrored += shown.Count > 0 && piece.Start is MirrorOf ? 1 : 0;
                }
            },
            iter: 3000,
            threads: 1);
        Assert.True(rows > 60 && rounds > 0 && mirrored > 10, $"{rows} in rows, {rounds} in rounds, {mirrored} mirrored");
    }

    [Fact]
    public void A_number_off_by_one_is_often_noticed()
    {
        var (faulty, sound, unclear) = (0, 0, 0);
        NaiveGen.NearValid.Sample(
            pattern =>
            {
                var result = NaiveWorker.Work(pattern);
                if (result.IsUnclear)
                    unclear++;
                else if (result.IsValid)
                    sound++;
                else
                    faulty++;
            },
            iter: 2000,
            threads: 1);
        Assert.True(faulty > 400, $"only {faulty} faulty");
        Assert.True(sound > 200, $"only {sound} sound");
        Assert.True(unclear < 400, $"{unclear} unclear");
    }

    [Fact]
    public void Every_way_to_begin_a_piece_and_every_kind_of_line_is_made()
    {
        var starts = new HashSet<Type>();
        var mirrored = new HashSet<Type>();
        var statements = new HashSet<Type>();
        var words = new HashSet<Type>();
        var (seams, several, oneOfSeveral, eachOfSeveral, roundCorners) = (0, 0, 0, 0, 0);
        var (sides, joined) = (0, 0);
        var (mirroredCorners, forSome, rounds, mirroredRounds, around) = (0, 0, 0, 0, 0);
        NaiveGen.Valid.Sample(
            pattern =>
            {
                seams += pattern.Seams.Count;
                sides += pattern.Seams.Count(seam => seam.First.Side is not null || seam.Second.Side is not null);
                joined += pattern.Pieces.Count(piece => piece.Statements.OfType<RowLine>().Any(row => row.Words.Any(word => word is JoinNext or Repeat { Words: [.., JoinNext] })));
                oneOfSeveral += pattern.Seams.Count(seam => seam.First.Piece.Contains(' ', StringComparison.Ordinal));
                eachOfSeveral += pattern.Seams.Count(seam => pattern.Pieces.Any(piece => piece.Copies > 1 && piece.Name == seam.First.Piece));
                foreach (var piece in pattern.Pieces)
                {
                    several += piece.Copies > 1 ? 1 : 0;
                    roundCorners += piece.Start is PickedUpRim { InCorner: not null } ? 1 : 0;
                    starts.Add(piece.Start.GetType());
                    if (piece.Start is MirrorOf)
                    {
                        var original = Mirror.Resolve(pattern, piece);
                        mirrored.Add(original.Start.GetType());
                        if (original.Statements.OfType<RowLine>().Any(row => row.Words.Any(word => word is MarkCorner)))
                            mirroredCorners++;
                        if (original.Statements.Any(statement => statement.IsRound))
                            mirroredRounds++;
                    }
                    rounds += piece.Statements.Count(statement => statement.IsRound);
                    around += piece.Start is PickedUpInside { Around: true } ? 1 : 0;
                    forSome += piece.Statements.Count(statement => statement.Only is not null);
                    statements.UnionWith(piece.Statements.Select(statement => statement.GetType()));
                    words.UnionWith(piece.Statements.OfType<RowLine>().SelectMany(row => row.Words).Select(word => word.GetType()));
                }
            },
            iter: 3000,
            threads: 1);
        Assert.Equal(12, starts.Count);
        Assert.True(mirrored.Count >= 5, string.Join(", ", mirrored));
        Assert.Equal(17, statements.Count);
        Assert.Contains(typeof(WithYarn), words);
        Assert.Contains(typeof(ToCorner), words);
        Assert.Contains(typeof(Hold), words);
        Assert.Contains(typeof(IntoRing), words);
        Assert.Contains(typeof(MoveMarker), words);
        Assert.Contains(typeof(Bridge), words);
        Assert.True(mirroredCorners > 20, $"only {mirroredCorners} mirrored pieces with corners");
        Assert.True(rounds > 500 && mirroredRounds > 20 && around > 0, $"{rounds} lines of rounds, {mirroredRounds} mirrored pieces with rounds, {around} pieces picked up around");
        Assert.True(forSome > 100, $"only {forSome} lines for some sizes");
        Assert.True(several > 100 && oneOfSeveral > 20 && eachOfSeveral > 0 && seams > 400, $"{several} pieces made several times, {seams} seams, {oneOfSeveral} of one of several, {eachOfSeveral} of each");
        Assert.True(sides > 0 && joined > 50, $"{sides} seams of a motif's side, {joined} pieces joined as they are worked");
        Assert.True(roundCorners > 50, $"only {roundCorners} borders round corners");
        Assert.True(words.Count >= 15, string.Join(", ", words.Select(type => type.Name)));
    }
}
