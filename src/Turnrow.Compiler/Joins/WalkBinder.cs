using System.Globalization;
using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Pieces;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Joins;

/// <summary>An edge that a seam or a pick-up names, a size; null in a size where it is not known.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="Sides">The part of the edge, a size.</param>
/// <param name="Span">Where it is named.</param>
internal sealed record BoundWalk(PieceState Piece, JoinSide?[] Sides, TextSpan Span);

/// <summary>Reads <c>back right side-seam, all but first 3 rows</c>.</summary>
internal sealed class WalkBinder(Context context, PieceBook book)
{
    private static readonly string[] EdgeWords = ["edge"];

    /// <summary>True if it is walked for each of several by itself: then each speaks of its own.</summary>
    public bool OfEach { get; init; }

    /// <summary>The edge; null, and reported, if the words name none.</summary>
    public BoundWalk? Bind(WalkSyntax walk)
    {
        if (walk.Words.Count == 0 || book.Bind(walk.Words, out var named) is not { } piece) return null;
        var words = walk.Words.Skip(named).Where(w => !EdgeWords.Contains(w.Text, StringComparer.OrdinalIgnoreCase)).ToList();
        if (SideOf(piece, walk, words) is not { } find) return null;
        var sides = new JoinSide?[context.Sizes];
        for (var i = 0; i < sides.Length; i++) sides[i] = find(i);
        if (IsTaken(piece, walk, sides)) return null;
        if (walk.Selection is { } selection) sides = Select(walk, selection, piece, sides);
        // What is said of all of them is told so.
        if (piece.Copies.Count > 0 && !OfEach) sides = sides.Select(s => s is null ? null : s with { Piece = s.Piece with { Name = $"each-{piece.Name}" }, OfEach = piece.Name });
        return new BoundWalk(piece, sides, walk.Span);
    }

    private Func<int, JoinSide?>? SideOf(PieceState piece, WalkSyntax walk, List<NameSyntax> words)
    {
        if (words.Count == 1 && Is(words[0], "foundation")) return i => EdgeSelection.Foundation(piece.Finished[i]);
        if (words.Count == 1 && HasInner(piece, words[0].Text)) return i => EdgeSelection.Inner(piece.Finished[i], words[0].Text);
        if (words.Count == 1 && piece.PartNamed(words[0].Text) is { } part)
        {
            part.Used = true;
            return i => EdgeSelection.Part(piece.Finished[i], words[0].Text, part.FromRight[i], part.Count[i]);
        }

        if (words.Count == 2 && Is(words[1], "side") && MotifSides.IndexOf(words[0].Text) is >= 0 and var nth) return SideOf(piece, words, nth);
        if (words.Count == 2 && IsRow(words[0])) return LoopsOf(piece, words[0].Span.To(words[1].Span), words[1]);
        if (words.Count == 2 && Is(words[0], "last") && IsRow(words[1])) return i => EdgeSelection.LastRow(piece.Finished[i], [.. piece.Taken.Select(t => (t.FromRight[i], t.Count[i]))]);
        var hand = words.Count > 0 && Is(words[0], "right") ? Hand.Right : words.Count > 0 && Is(words[0], "left") ? Hand.Left : (Hand?)null;
        if (hand is not null) words.RemoveAt(0);
        if (words.Count > 1)
        {
            context.Findings.Add(EdgeWordsTooMany.At(words, HasEdge(piece, string.Join('-', words.Select(w => w.Text)))));
            return null;
        }

        if (words.Count == 0)
        {
            if (hand is { } only) return i => EdgeSelection.ByName(piece.Finished[i], only, null);
            context.Findings.Add(EdgeUnsaid.At(walk.Span, piece.Name));
            return null;
        }

        return ByName(piece, words[0], hand);
    }

    // The side of a motif, from corner to corner.
    private Func<int, JoinSide?>? SideOf(PieceState piece, List<NameSyntax> words, int nth)
    {
        var none = Sized.Where(context.Sizes, i => piece.Finished[i] is { Top: not null, CornersInDoubt: false } made && MotifSides.Of(made, nth) is null);
        if (none.Length == 0) return i => piece.Finished[i] is { CornersInDoubt: false } made ? MotifSides.Of(made, nth) : null;
        book.JoinsInDoubt = true;
        if (!piece.EdgesInDoubt) context.Findings.Add(SideUnknown.At(context, words[0].Span.To(words[1].Span), none, piece.Finished[none[0]], piece.Name));
        return null;
    }

    // A row in the middle, by its number: the loops that the one above left free.
    private Func<int, JoinSide?>? LoopsOf(PieceState piece, TextSpan span, NameSyntax number)
    {
        var rows = int.TryParse(number.Text, NumberStyles.None, CultureInfo.InvariantCulture, out var said)
            ? Sized.Same<int?>(context.Sizes, said)
            : context.Evaluate.Counts(new NameExpression(number, number.Span), 1);
        var (sides, faults) = (new JoinSide?[context.Sizes], new LoopsFault[context.Sizes]);
        for (var i = 0; i < sides.Length; i++) sides[i] = rows[i] is { } row ? FreeLoops.Of(piece.Finished[i], row, out faults[i]) : null;
        if (Array.Find(faults, static fault => fault != LoopsFault.None) is not LoopsFault.None and var first)
        {
            book.JoinsInDoubt = true;
            var sizes = Sized.Where(context.Sizes, i => faults[i] == first);
            if (!piece.EdgesInDoubt) context.Findings.Add(LoopsTaken.At(context, span, sizes, first, piece.Finished[sizes[0]], piece.Name, rows[sizes[0]]!.Value));
            return null;
        }

        return i => sides[i];
    }

    private static bool IsRow(NameSyntax word) => Is(word, "row") || Is(word, "round");

    // What a later piece goes on from is no edge any more. Of a last row that is what none goes on from, if anything is left of it.
    private bool IsTaken(PieceState piece, WalkSyntax walk, JoinSide?[] sides)
    {
        if (piece.EdgesInDoubt || sides[0] is not { Hand: null, Stretches: [{ Kind: StretchKind.OpenStitches } first, ..] }) return false;
        foreach (var (by, right, count) in piece.Taken.Concat(piece.Copies.SelectMany(static copy => copy.Taken)))
        {
            var sizes = Sized.Where(context.Sizes, i => sides[i] is { Stretches: [var taken, ..] } && count[i] > 0 && (taken.Name is null
                ? taken.Count == 0
                : taken.FromRight < right[i] + count[i] && right[i] < taken.FromRight + taken.Count));
            if (sizes.Length == 0) continue;
            var stitches = first.Name is { } name ? $"the stitches of {piece.Name} {name}" : $"all stitches of the last row of {piece.Name}";
            context.Findings.Add(StitchesTaken.At(context, walk.Span, sizes, stitches, by, book.Find(by)?.Span, OpenParts(piece)));
            book.JoinsInDoubt = true;
            return true;
        }

        return false;
    }

    private static List<string> OpenParts(PieceState piece) =>
        [.. piece.PartNames.Where(name => piece.PartNamed(name) is { } part
            && !piece.Taken.Exists(t => part.FromRight[0] < t.FromRight[0] + t.Count[0] && t.FromRight[0] < part.FromRight[0] + part.Count[0])).Select(name => $"{piece.Name} {name}")];

    private static bool HasInner(PieceState piece, string name) =>
        Array.Exists(piece.Finished, p => p.Inner.Any(s => string.Equals(s.Name, name, StringComparison.OrdinalIgnoreCase)));

    private static bool HasEdge(PieceState piece, string name) =>
        HasEdge(piece, Hand.Right, name) || HasEdge(piece, Hand.Left, name);

    // Lines for some sizes may name edges: it is enough if one size has it.
    private static bool HasEdge(PieceState piece, Hand hand, string name) =>
        Array.Exists(piece.Builders, b => b.HasHadName(hand, name));

    private Func<int, JoinSide>? ByName(PieceState piece, NameSyntax name, Hand? hand)
    {
        var hands = new[] { Hand.Right, Hand.Left }
            .Where(h => (hand is null || hand == h) && HasEdge(piece, h, name.Text)).ToArray();
        if (hands.Length == 1) return i => EdgeSelection.ByName(piece.Finished[i], hands[0], name.Text);
        if (hands.Length == 2)
        {
            context.Findings.Add(WalkAmbiguous.At(name.Span, piece.Name, name.Text));
        }
        else if (!piece.EdgesInDoubt)
        {
            var builder = piece.Lead;
            context.Findings.Add(EdgeUnknown.At(name.Span, name.Text, piece.Name, builder.NameOf(Hand.Right), builder.NameOf(Hand.Left),
                builder.NamesOf(Hand.Right).Concat(builder.NamesOf(Hand.Left)).Concat(piece.Finished[0].Inner.Select(s => s.Name).OfType<string>())));
        }

        return null;
    }

    private JoinSide?[] Select(WalkSyntax walk, SelectionSyntax selection, PieceState piece, JoinSide?[] sides)
    {
        var (skip, take) = selection switch
        {
            EndSelection end => Ends(end, sides),
            RangeSelection range => Range(range, sides),
            _ => (Sized.Same<int?>(context.Sizes, null), Sized.Same<int?>(context.Sizes, null)),
        };
        var result = new JoinSide?[context.Sizes];
        var short_ = new List<int>();
        for (var i = 0; i < result.Length; i++)
        {
            if (sides[i] is not { } side || skip[i] is not { } s || take[i] is not { } t) continue;
            result[i] = EdgeSelection.Rows(side, s, t);
            if (result[i] is null && !piece.EdgesInDoubt) short_.Add(i);
        }

        if (short_.Count > 0) context.Findings.Add(SelectionRows.At(context, selection.Span, [.. short_], i => sides[i]!.RowEnds, walk.Words[0].Text));
        return result;
    }

    private (int?[] Skip, int?[] Take) Ends(EndSelection selection, JoinSide?[] sides)
    {
        var counts = context.Evaluate.Counts(selection.Rows);
        var (skip, take) = (new int?[context.Sizes], new int?[context.Sizes]);
        for (var i = 0; i < counts.Length; i++)
        {
            if (sides[i] is not { } side || counts[i] is not { } n) continue;
            take[i] = selection.AllBut ? side.RowEnds - n : n;
            skip[i] = selection.AllBut == selection.First ? n : 0;
            if (!selection.AllBut && !selection.First) skip[i] = side.RowEnds - n;
        }

        return (skip, take);
    }

    // Rows are numbered as the piece's are; the stretch may begin at any of them.
    private (int?[] Skip, int?[] Take) Range(RangeSelection selection, JoinSide?[] sides)
    {
        var from = context.Evaluate.Counts(selection.From, 1);
        var to = context.Evaluate.Counts(selection.To, 1);
        var (skip, take) = (new int?[context.Sizes], new int?[context.Sizes]);
        for (var i = 0; i < from.Length; i++)
        {
            if (sides[i]?.Stretches.Where(static s => s.Kind == StretchKind.RowEnds).ToList() is not { Count: > 0 } ends) continue;
            skip[i] = EndsBefore(ends, from[i]);
            take[i] = EndsBefore(ends, to[i] + 1) - skip[i];
        }

        return (skip, take);
    }

    // Rows that turn before the edge have no end there; rows that the stretch does not have are counted as if it had them.
    private static int? EndsBefore(List<Stretch> ends, int? row)
    {
        if (row is not { } number) return null;
        if (number < ends[0].FirstRow) return number - ends[0].FirstRow;
        var count = 0;
        foreach (var stretch in ends) count += Math.Clamp(number - stretch.FirstRow, 0, stretch.Count);
        return count + Math.Max(0, number - ends[^1].LastRow - 1);
    }

    private static bool Is(NameSyntax word, string other) => string.Equals(word.Text, other, StringComparison.OrdinalIgnoreCase);
}
