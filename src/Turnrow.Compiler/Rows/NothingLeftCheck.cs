using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Fabric.Words;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Rows;

/// <summary>Warns of words for which those before them leave nothing, whatever the row below is.</summary>
internal static class NothingLeftCheck
{
    /// <summary>Looks at two parts of a row that follow each other, in all sizes.</summary>
    public static void Add(Context context, RowItemSyntax before, Word?[] wordsBefore, RowItemSyntax item, Word?[] words)
    {
        for (var i = 0; i < words.Length; i++)
        {
            if (LeftBy(wordsBefore[i]) is not { } left || LeftBy(words[i]) is not { } wanted || wanted < left) return;
        }

        var text = new WordText(context);
        context.Findings.Add(NothingLeft.At(item.Span, text.Of(wordsBefore[0]!), text.Of(words[0]!), TextSpan.FromBounds(before.Span.End, item.Span.End)));
    }

    // How many places a word leaves at the row's end; null if it does not go so far.
    private static int? LeftBy(Word? word) => word switch
    {
        Work { Amount.Reach: Reach.Across or Reach.Until } work => work.Amount.Count,
        Work { Target: { Aim: Aim.EachOfKind, ToCorner: false, Filter.Kind: PlaceFilterKind.StitchOrSpace } target } => target.Remain,
        // From corner to corner, what lies behind the last one is left.
        Repeat repeat when repeat.Words.Any(static w => w is Work { Amount.Reach: Reach.ToCorner } or Work { Target.ToCorner: true } or Work { Target.Aim: Aim.Corner } or Group { Target.Aim: Aim.Corner }) => null,
        Repeat { Amount.Reach: Reach.Across or Reach.Until } repeat => repeat.Amount.Count,
        _ => null,
    };
}
