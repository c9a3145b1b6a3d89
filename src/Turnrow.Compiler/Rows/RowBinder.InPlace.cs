using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Fabric.Words;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Rows;

/// <content>A repeat in one place, which is laid out: what stands in one place is one list of stitches and chains, however it was written.</content>
internal sealed partial class RowBinder
{
    private const int MostInPlace = 200;

    private Word?[] AgainInPlace(GroupItem group)
    {
        if (group is not { Place: null, Times: CountAmount times }) return Refuse(NotInOnePlace.At(group.Span));
        var inside = List(group.Items, true);
        var amounts = AmountsOf(times);
        var words = new Word?[context.Sizes];
        for (var i = 0; i < words.Length; i++)
        {
            if (inside[i] is not { } list || amounts[i] is not { } amount) continue;
            if ((long)list.Count * amount.Count > MostInPlace) return Refuse(NotInOnePlace.TooMany(group.Span, MostInPlace));
            words[i] = new Repeat(list, amount);
        }

        return words;
    }

    private static IEnumerable<Word> LaidOut(Repeat again)
    {
        for (var i = 0; i < again.Amount.Count; i++)
        {
            foreach (var word in again.Words) yield return word;
        }
    }
}
