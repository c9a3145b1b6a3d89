using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Stitches;

/// <content>The words of one stitch in it: which it is, where the hook goes, and the number that it has.</content>
internal sealed partial class StitchFormBinder
{
    private StitchRead? Read(StitchItem item)
    {
        var words = item.Words;
        var at = 0;
        var hook = HookInto.BothLoops;
        NameSyntax? before = null;
        if (StitchWord.HookOf(words[at].Text) is { } said && words.Count > 1)
        {
            hook = said;
            at++;
        }

        if (at + 1 < words.Count && StitchWord.Read(words[at].Text, context) is null && StitchWord.Read(words[at + 1].Text, context) is not null) before = words[at++];
        if (StitchLines.IsCalled(_statement!, words[at].Text)) return Unread(StitchInside.OfItself(words[at]));
        if (StitchWord.Read(words[at].Text, context) is not { } read)
        {
            if (lines.Below(words[at]) is { } later) return Unread(lines.Needs(later, _statement!) ? StitchInside.OfEachOther(words[at], later) : DefinedBelow.At(words[at].Span, words[at].Text, later.Name.Span));
            context.ReportUnknown(words[at]);
            _failed = true;
            return null;
        }

        var word = words[at];
        var isNumbered = at + 1 < words.Count && string.Equals(words[at + 1].Text, "of", StringComparison.OrdinalIgnoreCase);
        var stitch = isNumbered ? Numbered(item, read, ref at) : read.Stitch;
        if (stitch is null) return null;
        if (!isNumbered && read.Family is { Usual: null }) return Unread(StitchSize.Missing(word.Span, word.Text));
        if (words.Count - at > 2) return Unread(WordsTooMany.At(words, at));
        return new StitchRead(stitch, read.Hook == HookInto.BothLoops ? hook : read.Hook, read.Together, before, words.Count - at == 2 ? words[^1] : null)
        {
            NumberIsAmount = isNumbered && string.Equals(words[^1].Text, "of", StringComparison.OrdinalIgnoreCase),
        };
    }

    // `fan of 5`, `fan of n`: the number behind `of`, which may be this stitch's own.
    private Stitch? Numbered(StitchItem item, StitchReading read, ref int at)
    {
        var word = item.Words[at++];
        ExpressionSyntax? number = (item.Amount as CountAmount)?.Count;
        if (at + 1 < item.Words.Count)
        {
            at++;
            number = new NameExpression(item.Words[at], item.Words[at].Span);
        }

        if (read.Family is not { } family) return Unnumbered(StitchSize.None(word.Span, word.Text));
        if (number is null) return Unnumbered(StitchSize.Missing(word.Span, word.Text));
        if (Count(number, 1) is not { } n) return null;
        return family.Of(n) ?? Unnumbered(StitchSize.Range(number.Span, family, n));
    }

    private Stitch? Unnumbered(Diagnostic diagnostic)
    {
        Refuse(diagnostic);
        return null;
    }

    private StitchRead? Unread(Diagnostic diagnostic)
    {
        Refuse(diagnostic);
        return null;
    }

    private sealed record StitchRead(Stitch Stitch, HookInto Hook, int Together, NameSyntax? Before, NameSyntax? Behind)
    {
        public bool NumberIsAmount { get; init; }
    }
}
