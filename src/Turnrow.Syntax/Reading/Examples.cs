using Antlr4.Runtime;
using Turnrow.Syntax.Generated;

namespace Turnrow.Syntax.Reading;

/// <summary>A line to show to one whose own line of that kind could not be read.</summary>
internal static class Examples
{
    /// <summary>Where a statement has several shapes, a word in the line tells which was meant.</summary>
    private static readonly (int Statement, int Word, string Example)[] Shapes =
    [
        (TurnrowLexer.PIECE, TurnrowLexer.FROM, "piece left-front from back: 24 stitches at left edge"),
        (TurnrowLexer.PIECE, TurnrowLexer.MIRRORED, "piece left-front is right-front mirrored"),
        (TurnrowLexer.PIECE, TurnrowLexer.IS, "piece left-front is right-front mirrored"),
        (TurnrowLexer.PIECE, TurnrowLexer.PICKED, "piece band picked up along right-front neck, last 3 rows: 2 dc in each row"),
        (TurnrowLexer.STITCH, TurnrowLexer.PICTURE, "stitch pattern rose from picture, over multiple of 15 + 1"),
        (TurnrowLexer.STITCH, TurnrowLexer.PATTERN, "stitch pattern lattice over multiple of 6 + 1"),
        (TurnrowLexer.GAUGE, TurnrowLexer.REPEATS, "gauge lattice: 3 repeats and 8 rows to 10 cm"),
        (TurnrowLexer.STRAIGHT, TurnrowLexer.TO, "straight to 20 cm, even rows"),
        (TurnrowLexer.STRAIGHT, TurnrowLexer.FOR, "straight for 6 cm, end WS"),
        (TurnrowLexer.STRAIGHT, TurnrowLexer.CM, "straight to 20 cm (in all), straight for 20 cm (from here)"),
        (TurnrowLexer.STRAIGHT, TurnrowLexer.IN, "straight to 8 in (in all), straight for 8 in (from here)"),
        (TurnrowLexer.STRAIGHT, TurnrowLexer.STRAIGHT, "straight 12 rows"),
        (TurnrowLexer.SHAPE, TurnrowLexer.AROUND, "shape 20 rounds evenly to 60, around"),
        (TurnrowLexer.SHAPE, TurnrowLexer.EVERY, "shape 30 rows: dec 1 at both edges every 4 rows"),
        (TurnrowLexer.SHAPE, TurnrowLexer.EVENLY, "shape 60 rows evenly to 73, at both edges"),
        (TurnrowLexer.SHAPE, TurnrowLexer.AFTER, "shape 40 rows: after 10 rows, dec 1 at both edges, every 6 rows 3 times"),
        (TurnrowLexer.COUNT, TurnrowLexer.ROWS, "count armhole-rows is rows for armhole-depth, even"),
        (TurnrowLexer.COUNT, TurnrowLexer.MULTIPLE, "count hem is stitches for bust, multiple of 6 + 1"),
        (TurnrowLexer.COUNT, TurnrowLexer.FOR, "count hem is stitches for bust / 2 + 2 cm, odd"),
        (TurnrowLexer.COUNT, TurnrowLexer.STITCHES, "count hem is stitches for bust / 2 + 2 cm, odd"),
        (TurnrowLexer.COUNT, TurnrowLexer.COUNT, "count drop is 4 (7, 9, 12)"),
        (TurnrowLexer.EXPECT, TurnrowLexer.IS, "expect back rows are right-front rows"),
        (TurnrowLexer.EXPECT, TurnrowLexer.ARE, "expect back rows are right-front rows"),
        (TurnrowLexer.EXPECT, TurnrowLexer.LIE, "expect crown lies flat in rounds 1 to 6"),
        (TurnrowLexer.TURN, TurnrowLexer.DOES, "turn dc: ch 2 does not count"),
        (TurnrowLexer.TURN, TurnrowLexer.FIRST, "turn dc: ch 3 counts, first stitch in 5th chain"),
        (TurnrowLexer.BEGIN, TurnrowLexer.RING, "begin with ring (drawn together), begin with ring of 4 chains"),
        (TurnrowLexer.BEGIN, TurnrowLexer.SIDES, "begin with both sides of 10 stitches"),
        (TurnrowLexer.ROWS, TurnrowLexer.ARE, "rounds are joined, rounds are joined and turned, or rounds are spiral"),
        (TurnrowLexer.REPEAT, TurnrowLexer.ALL, "repeat rows 3 to 6, 10 times in all"),
    ];

    public static string? For(IReadOnlyList<IToken> tokens)
    {
        foreach (var (statement, word, example) in Shapes)
        {
            if (tokens[0].Type == statement && Has(tokens, word)) return example;
        }

        return NotationWords.Statement(Words.Spelling(tokens[0].Type) ?? "")?.Example;
    }

    private static bool Has(IReadOnlyList<IToken> tokens, int type)
    {
        foreach (var token in tokens)
        {
            if (token.Type == type) return true;
        }

        return false;
    }
}
