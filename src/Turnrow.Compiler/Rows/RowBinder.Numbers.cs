using System.Globalization;
using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Fabric.Stitches;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Rows;

/// <content>Stitches that come in several sizes: <c>fan of 7 in next</c>.</content>
internal sealed partial class RowBinder
{
    // The number behind `of` stands as a name among the words, or as the amount; it is then no number of times.
    private StitchReading? Numbered(StitchItem item, StitchReading read, ref int at)
    {
        var words = item.Words;
        if (at + 1 >= words.Count || !string.Equals(words[at + 1].Text, "of", StringComparison.OrdinalIgnoreCase)) return WithoutNumber(read, words[at]);
        var word = words[at];
        if (read.Family is not { } family) return Refused(StitchSize.None(word.Span, word.Text));
        ExpressionSyntax? number;
        var isAmount = at + 2 >= words.Count;
        if (!isAmount)
        {
            number = new NameExpression(words[at + 2], words[at + 2].Span);
            at += 2;
        }
        else
        {
            number = (item.Amount as CountAmount)?.Count;
            at++;
        }

        if (number is null) return Refused(StitchSize.Missing(word.Span, word.Text));
        var numbers = context.Evaluate.Counts(number, 1);
        var stitches = new Stitch?[context.Sizes];
        for (var i = 0; i < stitches.Length; i++)
        {
            if (numbers[i] is not { } n) continue;
            stitches[i] = family.Of(n);
            if (stitches[i] is null) return Refused(StitchSize.Range(number.Span, family, n));
        }

        var first = Array.Find(stitches, static s => s is not null);
        return first is null ? null : read with { Stitch = first, Sizes = stitches, AmountIsNumber = isAmount };
    }

    private StitchReading? WithoutNumber(StitchReading read, NameSyntax word) =>
        read.Family is { Usual: null } ? Refused(StitchSize.Missing(word.Span, word.Text)) : read;

    // What takes several places, or none, goes where it stands; only one in one place can be sent somewhere.
    private bool IsSentNowhere(StitchItem item, StitchReading read)
    {
        if (read.Together > 1 && (item.Before is not null || read.NameBefore is not null || item.Place is { Word: PlaceWord.Each or PlaceWord.Same }))
        {
            context.Findings.Add(StitchHere.Together(item.Span, string.Create(CultureInfo.InvariantCulture, $"{context.Word(read.Stitch)}{read.Together}tog"), read.Together, item.Place?.Word == PlaceWord.Each));
            return true;
        }

        if (read.Stitch.Takes == 1 || item.Place is null or { Word: PlaceWord.Next, Kind.Count: 0 } && read.Stitch.Takes > 0) return false;
        if (item.Place is null && item.Amount is null or CountAmount) return false;
        context.Findings.Add(StitchHere.Place(item.Span, read.Stitch.Id, read.Stitch.Takes));
        return true;
    }

    private StitchReading? Refused(Turnrow.Syntax.Diagnostics.Diagnostic diagnostic)
    {
        context.Findings.Add(diagnostic);
        return null;
    }
}
