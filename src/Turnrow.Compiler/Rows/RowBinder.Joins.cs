using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Rows;

/// <content>Stitches that join a row to another piece.</content>
internal sealed partial class RowBinder
{
    private Word?[] JoinedWords(JoinItem item)
    {
        if (piece is null || _ring > 0) return Refuse(JoinHere.At(item.Span));
        var stitch = item.Stitch is { } word ? context.StitchOf(word) : StitchBook.Slip;
        var skipped = item.Skipping is { } count ? context.Evaluate.Counts(count) : Sized.Same<int?>(context.Sizes, 0);
        var target = TargetOnEdge(item.Place);
        var edges = context.EdgesJoined?.Invoke(piece, item);
        if (stitch is null || target is not { } aim) return None();
        var words = new Word?[context.Sizes];
        for (var i = 0; i < words.Length; i++)
        {
            // It takes no place and makes none: whatever the other piece is, the row is as it would be without it.
            if (edges?[i] is not { } edge) words[i] = Work.Plain(stitch, Amount.Of(0));
            else if (skipped[i] is { } skip) words[i] = JoinWords.Of(stitch, new JoinTo(edge, aim, skip));
        }

        return words;
    }

    // Unsaid, it is whatever comes next there.
    private Target? TargetOnEdge(PlaceSyntax? place)
    {
        if (place is null) return new Target(Aim.Next, new PlaceFilter(PlaceFilterKind.StitchOrSpace, null, 0));
        if (place is { Word: PlaceWord.Next or PlaceWord.Corner, AndKind.Count: 0, Other: null }) return new PlaceBinder(context).Bind(place);
        context.Findings.Add(JoinHere.Place(place.Span));
        return null;
    }
}
