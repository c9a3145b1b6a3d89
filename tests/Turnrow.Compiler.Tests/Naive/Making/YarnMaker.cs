namespace Turnrow.Compiler.Tests.Naive.Making;

/// <summary>
/// Gives a pattern yarns: lines that take one up, stripes, and changes within rows. No count depends on them. A line is followed by a row that
/// begins with its yarn, and a row ends with a stitch of its last one.
/// </summary>
public sealed class YarnMaker(ChoiceTape tape, int sizes)
{
    private static readonly string[] s_yarns = ["navy", "cream", "dark-rust"];

    /// <summary>The yarns that there are.</summary>
    public static IReadOnlyList<string> Yarns => s_yarns;

    private string Yarn => tape.Of<string>(s_yarns);

    public static NaivePattern Added(NaivePattern pattern, ChoiceTape tape)
    {
        // A picture is of yarns.
        if (!pattern.StitchPatterns.Any(made => made is Picture) && !tape.OneIn(3))
            return pattern;
        var maker = new YarnMaker(tape, pattern.Sizes.Count);
        return pattern with { Yarns = s_yarns, Pieces = [.. pattern.Pieces.Select(maker.Piece)] };
    }

    private NaivePiece Piece(NaivePiece piece)
    {
        var statements = new List<Statement>();
        // Since the yarn was said last: was there a row in all sizes?
        var worked = true;
        // What a pick-up, a part or a row over several pieces begins with is said, since it may go on with a yarn or not.
        if (piece.Start is PickedUp or PickedUpInside or PickedUpLoops or PickedUpRim or AcrossOf or PartOf)
        {
            statements.Add(new TakeYarn(Yarn));
            worked = false;
        }
        foreach (var statement in piece.Statements)
        {
            if (statement is not RowLine { Only: null } row)
            {
                statements.Add(statement);
                continue;
            }
            if (worked && tape.OneIn(4))
            {
                statements.Add(tape.OneIn(2) ? Stripes() : new TakeYarn(Yarn));
                worked = false;
            }
            // How many chains the first row needs is reckoned by its words as they are.
            var asItIs = piece.Start is ChainStart && !statements.Exists(static made => made is RowLine);
            statements.Add(!asItIs && tape.OneIn(2) ? row with { Words = Changed(row.Words, mayBegin: worked) } : row);
            worked = true;
        }
        return piece with { Statements = statements };
    }

    private StripesAre Stripes() =>
        new([.. Enumerable.Range(0, tape.Between(1, 3)).Select(nth => (Yarn, new Sized(tape.Sizes(sizes, nth == 0 ? 1 : 0, _ => 3))))]);

    private List<Word> Changed(IReadOnlyList<Word> words, bool mayBegin, bool afterSpace = false)
    {
        var changed = new List<Word>();
        for (var i = 0; i < words.Count; i++)
        {
            // The chain of a row's first stitch makes the space behind it too, unless that is of another yarn: of the same one it would be two chains.
            if (i == 1 && FirstOf(words[1]) is Space)
            {
                changed.Add(words[1]);
                continue;
            }
            var begins = words.Take(i).All(word => word is Skip or SlipOver or RemoveCorners);
            // A marker goes into what was made last, and nothing stands between it and that; chains that are one space are of one yarn.
            if ((mayBegin || !begins) && !(FirstOf(words[i]) is Space && (i > 0 ? IsSpaceAtEnd(words[i - 1]) : afterSpace)) && words[i] is not (LeaveUnworked or MarkCorner or RemoveCorners or SlipOver or Hold or Bridge) && tape.OneIn(3))
                changed.Add(new WithYarn(Yarn));
            // Two changes with nothing between them are one.
            changed.Add(words[i] is Repeat repeat && changed is not [.., WithYarn] && (mayBegin || !begins) && tape.OneIn(2) ? repeat with { Words = Inside(repeat.Words, isLast: i == words.Count - 1, i > 0 && IsSpaceAtEnd(words[i - 1])) } : words[i]);
        }
        return changed;
    }

    private static bool IsSpaceAtEnd(Word word) => word switch
    {
        Space => true,
        Repeat repeat => IsSpaceAtEnd(repeat.Words[^1]),
        Group group => IsSpaceAtEnd(group.Words[^1]),
        _ => false,
    };

    private static Word FirstOf(Word word) => word is Repeat repeat ? FirstOf(repeat.Words[0]) : word;

    // A change at the end of the row's last bracket would be one behind its last stitch.
    private List<Word> Inside(IReadOnlyList<Word> words, bool isLast, bool afterSpace)
    {
        var meetsItself = IsSpaceAtEnd(words[^1]);
        var changed = Changed(words, mayBegin: true, afterSpace || meetsItself);
        if (!isLast && !meetsItself && tape.OneIn(3) && changed[^1] is not WithYarn)
            changed.Add(new WithYarn(Yarn));
        return changed;
    }
}
