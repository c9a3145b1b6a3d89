using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Rows;

/// <content>Words that are laid out by the row they are worked over.</content>
internal sealed partial class RowBinder
{
    private Word?[] SpreadWords(SpreadItem item, bool inOnePlace)
    {
        if (inOnePlace) return Refuse(NotInOnePlace.At(item.Span));
        var plain = StitchWords(item.Plain, false);
        var inside = List(item.Items, false);
        var times = context.Evaluate.Counts(item.Times);
        var ends = item.AtEachEnd is null ? null : context.Evaluate.Counts(item.AtEachEnd);
        var words = new Word?[context.Sizes];
        for (var i = 0; i < words.Length; i++)
        {
            if (plain[i] is Work over && inside[i] is { } list && times[i] is { } n && (ends is null || ends[i] is not null))
                words[i] = new Spread(over.Stitch, list, n, over.Amount) { AtEachEnd = ends?[i], Hook = over.Hook };
        }

        if (plain.All(w => w is null or Work { Takes: 1 }) && inside.All(list => list is null || Spread.CanTake(list))) return words;
        return Refuse(SpreadOpen.At(item.Span, plain.Any(w => w is not (null or Work { Takes: 1 }))));
    }

    private Word?[] ByPlaceWords(PlaceSyntax place, OtherPlaceSyntax other, StitchReading read, int?[]? before)
    {
        var inStitch = TargetsOf(place);
        if (new PlaceBinder(context).BindOther(place, other) is not { } inSpace) return None();
        if (other.Words is not [var word] || Stitch(word) is not { } second)
        {
            if (other.Words.Count > 1) context.Findings.Add(WordsTooMany.At(other.Words, 0));
            return None();
        }

        if (WithoutNumber(second, word) is null) return None();
        foreach (var (stitch, said, span) in new[] { (read, read.Stitch.Id, place.Span), (second, word.Text, word.Span) })
        {
            if (stitch is { Together: 1, Stitch.Takes: 1 } && stitch.Stitch != StitchBook.Chain) continue;
            return Refuse(EachOther.Stitch(span, said));
        }

        var many = other.Many is null ? Sized.Same<int?>(context.Sizes, 1) : context.Evaluate.Counts(other.Many, 1);
        var words = new Word?[context.Sizes];
        for (var i = 0; i < words.Length; i++)
        {
            if (inStitch[i] is not { } target || many[i] is not { } n || (before is null ? 1 : before[i]) is not { } inEach) continue;
            if (read.In(i) is not { } one) continue;
            var stitches = new Work(one, 1, inEach, Amount.Once, Target.Next, read.Hook);
            words[i] = new ByPlace(stitches, new Work(second.Stitch, 1, n, Amount.Once, inSpace, second.Hook), target.Remain) { ToCorner = target.ToCorner };
        }

        return words;
    }
}
