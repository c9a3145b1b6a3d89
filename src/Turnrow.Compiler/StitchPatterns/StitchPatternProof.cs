using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Words;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.StitchPatterns;

/// <summary>
/// Proves that a stitch pattern comes out for ever: it is worked over a few repeats, and over one more, three times through. What its last row
/// leaves has to be the same each time: then the next time through is the one before, and so on.
/// </summary>
internal sealed class StitchPatternProof(Context context, StitchPatternStatement statement, StitchPatternBlock block)
{
    private const int Times = 3;

    /// <summary>The pattern, with what is known of it now; null, and reported, if it does not come out.</summary>
    public StitchPattern? Of(StitchPattern pattern)
    {
        if (!Sides(pattern) || !Works(pattern, StitchPatternBinder.FewRepeats) || !Works(pattern, StitchPatternBinder.FewRepeats + 1)) return null;
        // Some need two: what stands between two repeats is not there in one.
        var one = false;
        context.Findings.Quietly(() => one = Works(pattern, 1));
        return one ? pattern : pattern with { Least = StitchPatternBinder.FewRepeats };
    }

    // An odd number of rows puts the side that one of them says on the other side the next time.
    private bool Sides(StitchPattern pattern)
    {
        var again = pattern.Rows.Count - pattern.RepeatFrom;
        if ((pattern.IsRound && pattern.Way != RoundWay.Turned) || int.IsEvenInteger(again)) return true;
        for (var i = pattern.RepeatFrom; i < pattern.Rows.Count; i++)
        {
            if (pattern.Rows[i].RightSide is not { } side) continue;
            context.Findings.Add(PatternRepeats.Side(LineOf(i), pattern, i, side));
            return false;
        }

        return true;
    }

    private bool Works(StitchPattern pattern, int repeats)
    {
        var builder = new PieceBuilder(pattern.Name, context.Rules, context.Worked);
        builder.BeginWithStitches((pattern.Multiple * repeats) + pattern.Plus);
        builder.WorkInRounds(pattern.IsRound);
        if (pattern.Way is { } way) builder.RoundsAre = way;
        if (pattern.Rows[0].RightSide is { } side) builder.BeginOnSide(side);
        var rows = pattern.Rows.Count + ((Times - 1) * (pattern.Rows.Count - pattern.RepeatFrom));
        PlaceSequence? before = null;
        for (var row = 0; row < rows; row++)
        {
            var index = pattern.IndexOf(row);
            if (row >= pattern.Rows.Count && index == pattern.RepeatFrom)
            {
                if (!GoesOn(pattern, repeats, before, builder.Ahead)) return false;
                before = builder.Ahead;
            }

            var there = builder.Ahead?.Count ?? 0;
            if (builder.WorkRow(new WordsPlan(pattern.Rows[index].Words), default, row) is not { } fault) continue;
            Fails(pattern, repeats, row, index, there, fault);
            return false;
        }

        return GoesOn(pattern, repeats, before, builder.Ahead);
    }

    // The kinds of place are the same the second time and the third; the first time they may lie on the foundation.
    private bool GoesOn(StitchPattern pattern, int repeats, PlaceSequence? before, PlaceSequence? now)
    {
        if (before is null || now is null || before.Equals(now) || SamePlaceKinds.Are(before, now)) return true;
        context.Findings.Add(PatternRepeats.Grows(statement.Name.Span, pattern, repeats, before, now));
        return false;
    }

    // The line's own row was tried over two repeats while it was read: what is left is a row behind the last one, or another number of repeats.
    private void Fails(StitchPattern pattern, int repeats, int row, int index, int there, RowFault fault)
    {
        var over = new PatternTrial(pattern, repeats, index, row >= pattern.Rows.Count, there);
        context.Findings.Add(PatternRepeats.At(context, LineOf(index), over, fault));
    }

    private Syntax.Text.TextSpan LineOf(int index)
    {
        var at = 0;
        foreach (var line in block.Lines)
        {
            if (line.Statement is not RowStatement row) continue;
            var rows = row is { First: { } first, Last: { } last } && context.Evaluate.Counts(first)[0] is { } a && context.Evaluate.Counts(last)[0] is { } b ? b - a + 1 : 1;
            if (index < at + rows) return row.Span;
            at += rows;
        }

        return statement.Name.Span;
    }
}

/// <summary>A row of a stitch pattern that is tried.</summary>
/// <param name="Pattern">The pattern.</param>
/// <param name="Repeats">Over how many repeats.</param>
/// <param name="Index">Index of the row.</param>
/// <param name="Again">True if it comes behind the last row.</param>
/// <param name="There">Places that it is worked over.</param>
internal sealed record PatternTrial(StitchPattern Pattern, int Repeats, int Index, bool Again, int There);
