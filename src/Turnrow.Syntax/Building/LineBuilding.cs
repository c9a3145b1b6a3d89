using Antlr4.Runtime;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Generated;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Syntax.Building;

/// <summary>What every builder of one line's tree needs: the text, spans and names, and a place for the line's one fault.</summary>
internal sealed class LineBuilding(SourceText source)
{
    /// <summary>The first fault found while building; null for none.</summary>
    public Diagnostic? Fault { get; private set; }

    public void Report(Diagnostic fault) => Fault ??= fault;

    public string Text(TextSpan span) => source.ToString(span);

    public string Text(IToken token) => source.ToString(Span(token));

    /// <summary>The character before a token; a space at the beginning of the text.</summary>
    public char Before(IToken token) => token.StartIndex > 0 ? source.Text[token.StartIndex - 1] : ' ';

    /// <summary>The character behind a token; a space at the end of the text.</summary>
    public char After(IToken token) => token.StopIndex + 1 < source.Text.Length ? source.Text[token.StopIndex + 1] : ' ';

    /// <summary>True if there is white space, or the line's beginning or end, on both sides.</summary>
    public bool IsSpaced(TextSpan span) =>
        (span.Start == 0 || char.IsWhiteSpace(source.Text[span.Start - 1]))
        && (span.End == source.Text.Length || char.IsWhiteSpace(source.Text[span.End]));

    public static TextSpan Span(IToken token) => TextSpan.FromBounds(token.StartIndex, token.StopIndex + 1);

    public static TextSpan Span(ParserRuleContext context) =>
        TextSpan.FromBounds(context.Start.StartIndex, context.Stop.StopIndex + 1);

    /// <summary>True if a word for rows says that they are rounds.</summary>
    public bool IsRound(IToken word) => source.Text[word.StartIndex + 2] is 'u' or 'U';

    public NameSyntax Name(IToken token) => new(Text(token), Span(token));

    public NameSyntax Name(ParserRuleContext context)
    {
        var span = Span(context);
        return new NameSyntax(Text(span), span);
    }

    public QuotedSyntax Quoted(IToken token)
    {
        var span = Span(token);
        return new QuotedSyntax(Text(new TextSpan(span.Start + 1, span.Length - 2)), span);
    }

    /// <summary>Words as they stand; the two of <c>sl st</c> are one stitch and become one word.</summary>
    public List<NameSyntax> Words(IList<TurnrowParser.NameContext> names)
    {
        var words = new List<NameSyntax>(names.Count);
        foreach (var name in names)
        {
            var word = Name(name);
            if (word.Text == "st" && words.Count > 0 && words[^1].Text == "sl")
                words[^1] = new NameSyntax("sl st", words[^1].Span.To(word.Span));
            else
                words.Add(word);
        }

        return words;
    }

    /// <summary>Words that name one thing, with single spaces.</summary>
    public NameSyntax Joined(IList<TurnrowParser.NameContext> names)
    {
        var words = Words(names);
        return Joined(words, 0);
    }

    /// <summary>The words from <paramref name="first"/> on, as one name.</summary>
    public static NameSyntax Joined(IReadOnlyList<NameSyntax> words, int first)
    {
        var joined = words[first];
        for (var i = first + 1; i < words.Count; i++)
            joined = new NameSyntax(joined.Text + " " + words[i].Text, joined.Span.To(words[i].Span));
        return joined;
    }

    public static SideSyntax? Side(TurnrowParser.SideContext? context) =>
        context is null ? null : new SideSyntax(context.Start.Type == TurnrowLexer.RS, Span(context));

    public EdgeSyntax Edge(TurnrowParser.EdgeContext context)
    {
        var word = context.Start.Type switch
        {
            TurnrowLexer.BOTH => EdgeWord.Both,
            TurnrowLexer.RIGHT => EdgeWord.Right,
            TurnrowLexer.LEFT => EdgeWord.Left,
            _ => EdgeWord.Named,
        };
        return new EdgeSyntax(word, word == EdgeWord.Named ? Name(context.called) : null, Span(context));
    }
}
