using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Fabric.Stitches;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Rows;

/// <summary>Finds a row that begins with chains and then works into its very first place: print's turning chain, typed from habit.</summary>
internal static class TurningChainCheck
{
    public static void Add(Context context, IReadOnlyList<RowItemSyntax> items)
    {
        if (items.Count < 2 || items[0] is not StitchItem { Words: [var word, ..], Place: null, Before: null, Amount: null or CountAmount } chains) return;
        if (StitchWord.Read(word.Text, context)?.Stitch != StitchBook.Chain || !TakesFirstPlace(context, items[1])) return;
        context.Findings.Add(TurningChainWritten.At(chains.Span, items[1].Span));
    }

    // Behind chains that are meant, some stitches are skipped, or the hook goes on to a space: `ch 3, skip 2`, `ch 3, sc in next sp`.
    private static bool TakesFirstPlace(Context context, RowItemSyntax item)
    {
        while (item is GroupItem { Place: null, Items: [var first, ..] }) item = first;
        return item switch
        {
            GroupItem { Place: { } place } => IsFirst(place),
            StitchItem { Place: { } place } => IsFirst(place),
            StitchItem { Words: [var word, ..] } => StitchWord.Read(word.Text, context)?.Stitch != StitchBook.Chain,
            StitchItem => true,
            _ => false,
        };
    }

    private static bool IsFirst(PlaceSyntax place) =>
        place.Word is PlaceWord.First or PlaceWord.Ring || (place.Word is PlaceWord.Next or PlaceWord.Each && place.Kind is [] or [{ Text: "st" or "stitch" }]);
}
