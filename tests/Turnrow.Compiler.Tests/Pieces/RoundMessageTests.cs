using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Compiler.Tests.Pieces;

/// <summary>What is said of a piece in rounds speaks of rounds, and advises nothing that a round can't do.</summary>
public sealed class RoundMessageTests
{
    [Theory]
    [InlineData("straight 5 rounds, end WS", "rows-fix")]
    [InlineData("straight 5 rounds, end RS", "rows-fix")]
    [InlineData("straight for 8 cm, end WS", "rows-fix")]
    [InlineData("straight to 8 cm, even rounds, end WS", "rows-fix")]
    [InlineData("shape for 8 cm, end WS: dec 1 at both edges every 2 rounds", "rows-fix")]
    [InlineData("straight for 8 cm, even rounds")]
    [InlineData("row: dc across\n  straight for 8 cm, end WS")]
    public void A_side_can_be_asked_for_only_where_rows_are_turned(string line, params string[] found) =>
        Assert.Equal(found, Compiled.Of($"piece cuff\n  begin with 40 stitches\n  round 1: dc around\n  {line}\n").Found);

    [Fact]
    public void Of_rounds_the_other_wishes_still_count() =>
        Assert.Equal(9, Compiled.Of("piece cuff\n  begin with 40 stitches\n  round 1: dc around\n  straight for 7 cm, even rounds, end RS\n").Counts("cuff").Count());

    private const string Hat = "piece hat\n  begin with 40 stitches\n  round 1: dc around\n";

    [Theory]
    [InlineData("piece hat\n  begin with 40 stitches\n  round 1 WS: dc around\n", "round 1 of hat")]
    [InlineData(Hat + "  round 2 WS: dc around\n", "round 2 of hat")]
    [InlineData("piece hat\n  begin with 40 stitches\n  row 1 RS: dc across\n  round 2 WS: dc around\n", "round 2 of hat")]
    public void A_round_is_worked_with_the_right_side_facing(string piece, string round)
    {
        var error = Only("row-side", piece);
        Assert.Equal($"{round} is worked with the right side facing", error.Message);
        Assert.Contains("rounds are not turned", error.Help, StringComparison.Ordinal);
        Assert.Equal("RS", Assert.Single(error.Mends).NewText);
    }

    [Theory]
    [InlineData("piece hat\n  begin with 40 stitches\n  round 1 RS: dc around\n")]
    [InlineData(Hat + "  row 2 WS: dc across\n")]
    [InlineData("piece hat\n  begin with 40 stitches\n  row 1 WS: dc across\n  round 2 RS: dc around\n")]
    public void A_side_that_a_round_or_a_row_after_it_can_have_is_taken(string piece) => Assert.Empty(Errors(piece));

    [Theory]
    [InlineData("repeat rounds 1 to 2, 3 more times", "repeat-rows", "rounds 1 to 2 can't be repeated: hat has only 1 round so far", "repeat rounds that come before")]
    [InlineData("repeat round 2, 3 more times", "repeat-rows", "round 2 can't be repeated: hat has only 1 round so far", "repeat rounds")]
    [InlineData("row: dc across\n  repeat rows 2 to 3, 3 more times", "repeat-rows", "rows 2 to 3 can't be repeated: hat has only 2 rows and rounds so far", "repeat rows")]
    [InlineData("shape 8 rounds: dec 1 at both edges every 2 rounds; dec 1 at right edge every 4 rounds", "shapings-meet", "the beginning of the round is shaped already in round 4 of these", "then every 4 rounds")]
    [InlineData("shape 8 rounds: dec 1 at both edges every 2 rounds; dec 1 at left edge every 4 rounds", "shapings-meet", "the end of the round is shaped already in round 4 of these", "then every 4 rounds")]
    [InlineData("leave 40 at left edge", "edge-short", "40 can't be left of 40 stitches", "go on in rows: a round has no edge")]
    [InlineData("round 2: (ch 1, skip 1, dc) around\n  straight 4 rounds", "not-plain", "round 2 is not one plain stitch", "`round: dc in each st and sp`")]
    [InlineData("round 2: (ch 1) around", "repeat-endless", "the end of the round", "(ch 1, skip 1, dc) around")]
    [InlineData("round 2: dc to corner, dc around", "corner-missing", "finds no corner", "in an earlier round")]
    [InlineData("round 3: dc around", "row-number", "the next round of hat is round 2", "or `round` without a number")]
    public void Rounds_are_called_rounds(string line, string name, string message, string help)
    {
        var error = Only(name, $"{Hat}  {line}\n");
        Assert.Contains(message, error.Message, StringComparison.Ordinal);
        Assert.Contains(help, error.Help, StringComparison.Ordinal);
    }

    [Fact]
    public void Stitches_left_over_in_a_round_can_only_be_worked()
    {
        var error = Only("row-length", Hat + "  round 2: dc 38\n");
        Assert.Contains("`dc around`", error.Help, StringComparison.Ordinal);
        Assert.Equal(", dc around", Assert.Single(error.Mends).NewText);
    }

    private static Diagnostic Only(string name, string piece)
    {
        var error = Errors(piece).First();
        Assert.Equal(name, error.Kind.Name);
        return error;
    }

    private static IEnumerable<Diagnostic> Errors(string piece) => Compilation.Of(new SourceText(
            "round.turnrow",
            $"notation 1\npattern \"Round\"\nterms US\nsizes S\ngauge dc: 16 stitches and 8 rows to 10 cm\n\n{piece}"))
        .Diagnostics.Where(static d => d.Kind.Severity == Severity.Error);
}
