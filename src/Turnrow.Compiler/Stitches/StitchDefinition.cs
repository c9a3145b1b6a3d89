using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Stitches;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Stitches;

/// <summary>Reads a line that defines a stitch, and checks it there: its uses then need say no more about it.</summary>
internal sealed class StitchDefinition(Context context, StitchLines lines)
{
    private const int Most = 50;
    private const int Tried = 4;

    private readonly Dictionary<string, TextSpan> _spans = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>Defines the stitch under its name and its abbreviation.</summary>
    public void Define(StitchStatement statement)
    {
        List<(string Word, TextSpan Span)> words = [(statement.Name.Text, statement.Name.Span)];
        if (statement.Abbreviation is { } text) words.Add((text.Text, text.Span));
        foreach (var (word, span) in words)
        {
            if (!IsFree(word, span, statement.Name.Span)) return;
        }

        var meaning = statement.Number is { } number ? OfFamily(statement, number) : OfOne(statement);
        foreach (var (word, _) in words)
        {
            _spans[word] = statement.Name.Span;
            context.Stitches.Define(word, meaning);
        }
    }

    // A basic stitch can't mean anything else; a name of the standard list can.
    private bool IsFree(string word, TextSpan span, TextSpan defined)
    {
        if (StitchBook.Find(word, Terms.US) is not null || StitchBook.Find(word, Terms.UK) is not null) context.Findings.Add(NameIsStitch.At(span, word));
        else if (_spans.TryGetValue(word, out var earlier) && earlier != defined) context.Findings.Add(DefinedTwice.At(span, word, earlier));
        else return true;
        return false;
    }

    private StitchMeaning? OfOne(StitchStatement statement)
    {
        var name = new StitchName(statement.Abbreviation?.Text ?? statement.Name.Text, statement.Name.Text);
        return new StitchFormBinder(context, lines).Bind(statement) is { } form ? new StitchMeaning(Make(statement.Name.Text, name, name, form), null) : null;
    }

    private StitchMeaning? OfFamily(StitchStatement statement, NameSyntax number)
    {
        if (StitchWordIs(number.Text))
        {
            context.Findings.Add(NameIsStitch.At(number.Span, number.Text));
            return null;
        }

        // Tried where it is defined: what is wrong for every number is told there, once.
        var first = FormOf(statement, number, Tried);
        if (first is null) return null;
        var family = new StitchFamily(statement.Name.Text, statement.Abbreviation?.Text, null, 1, Most, (n, id, us, uk) =>
            (n == Tried ? first : FormOf(statement, number, n)) is { } form ? Make(id, us, uk, form) : null)
        {
            Counted = Counted(first, FormOf(statement, number, Tried + 1)),
        };
        return new StitchMeaning(family.Of(Tried)!, family);
    }

    // The stitch whose number it is: the part that another number makes more of. Where it makes other stitches instead, it is no number of any.
    private static Stitch? Counted(StitchForm form, StitchForm? other)
    {
        for (var i = 0; i < form.Parts.Count && i < other?.Parts.Count; i++)
        {
            if (form.Parts[i].Stitch != other.Parts[i].Stitch) return null;
            if (form.Parts[i].Count != other.Parts[i].Count) return form.Parts[i].Worked ?? StitchBook.Chain;
        }

        return form.Parts.First(static p => p.Worked is not null).Worked;
    }

    private bool StitchWordIs(string word) => context.Stitches.Find(word) is not null;

    private StitchForm? FormOf(StitchStatement statement, NameSyntax number, int n)
    {
        var value = new Value(Rational.Of(n, 1)!.Value, false);
        var before = context.Scope.Lend(new Definition(number.Text, Sized.Same<Value?>(context.Sizes, value), number.Span));
        var form = new StitchFormBinder(context, lines).Bind(statement);
        context.Scope.TakeBack(number.Text, before);
        return form;
    }

    // Its turning chain goes by the stitch that it begins with; one loop is as high as the tallest of those that end in it.
    private static Stitch Make(string id, StitchName us, StitchName uk, StitchForm form)
    {
        var stitches = form.Parts.Select(static p => p.Worked).OfType<Stitch>().ToList();
        return form.Takes == 0 ? SpecialStitches.Spur(id, us, uk, form)
            : form.Together
            ? SpecialStitches.Together(id, us, uk, form, stitches.MaxBy(static s => s.Height)!)
            : SpecialStitches.Laid(id, us, uk, form, stitches[0]);
    }
}
