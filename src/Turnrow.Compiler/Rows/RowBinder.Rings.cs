using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Words;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Rows;

/// <content>A bracket that goes into a ring: any number of stitches do, so it may have times as well.</content>
internal sealed partial class RowBinder
{
    private int _ring;

    private Word?[] RingWords(GroupItem group)
    {
        if (_ring > 0 && (group.Place is not null || group.Times is not CountAmount)) return Refuse(NotInOnePlace.At(group.Span));
        if (group.Times is not (CountAmount or null)) return Refuse(GroupBoth.At(group.Span));
        _ring++;
        var inside = List(group.Items, false);
        _ring--;
        var amounts = group.Times is null ? Sized.Same<Amount?>(context.Sizes, Amount.Once) : AmountsOf(group.Times);
        var words = new Word?[context.Sizes];
        for (var i = 0; i < words.Length; i++) words[i] = inside[i] is { } list && amounts[i] is { } amount ? new Repeat(list, amount) : null;
        return words;
    }

    // What stands on the stitch before it goes no more into the ring than into any other place.
    private static Work? InRing(StitchReading read, int size, int many) => read.In(size) is not { } stitch ? null
        : stitch.Takes == 0 ? new Work(stitch, 0, 1, Amount.Of(many), Target.Next, read.Hook)
        : new Work(stitch, 1, many, Amount.Once, Target.Ring, read.Hook);
}
