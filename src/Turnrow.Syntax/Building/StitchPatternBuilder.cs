using Turnrow.Syntax.Diagnostics.Kinds;
using Turnrow.Syntax.Generated;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Syntax.Building;

/// <summary>The lines of stitch patterns: their heading, a picture's rows and its key.</summary>
internal static class StitchPatternBuilder
{
    public static UseStatement Use(TurnrowParser.UseLineContext context, LineBuilding line) =>
        new(line.Quoted(context.file), LineBuilding.Span(context));

    public static StitchPatternStatement StitchPattern(TurnrowParser.StitchLineContext context, LineBuilding line)
    {
        var pattern = context.asPattern;
        return new StitchPatternStatement(
            line.Name(pattern.called),
            NumberBuilder.Number(pattern.multiple, line),
            pattern.plus is null ? null : NumberBuilder.Number(pattern.plus, line),
            LineBuilding.Span(context))
        {
            FromPicture = pattern.picture is not null,
            Stitch = pattern.by is null ? null : line.Name(pattern.by),
        };
    }

    public static KeyStatement Key(TurnrowParser.KeyLineContext context, LineBuilding line)
    {
        var place = context.which?.Type switch
        {
            TurnrowLexer.FIRST => KeyPlace.First,
            TurnrowLexer.LAST => KeyPlace.Last,
            _ => KeyPlace.Letter,
        };
        var letter = context.letter is null ? line.Name(context.which!) : new NameSyntax(line.Quoted(context.letter).Text, LineBuilding.Span(context.letter));
        IReadOnlyList<RowItemSyntax> items = context.yarn is null
            ? RowBuilder.Items(context.words, inOnePlace: false, line)
            : [new YarnItem(line.Name(context.yarn), LineBuilding.Span(context.yarn))];
        return new KeyStatement(letter, place, items, LineBuilding.Span(context)) { IsYarn = context.yarn is not null };
    }

    /// <summary>The letters between the bars; white space between them says nothing.</summary>
    public static PictureRowStatement PictureRow(TurnrowParser.PictureLineContext context, LineBuilding line)
    {
        var span = LineBuilding.Span(context);
        var text = line.Text(span);
        var end = text.LastIndexOf('|');
        if (end == 0) line.Report(PictureOpen.At(span));
        var cells = new List<NameSyntax>();
        for (var i = 1; i < end; i++)
        {
            if (char.IsWhiteSpace(text[i])) continue;
            var length = char.IsHighSurrogate(text[i]) && i + 1 < end && char.IsLowSurrogate(text[i + 1]) ? 2 : 1;
            cells.Add(new NameSyntax(text.Substring(i, length), new TextSpan(span.Start + i, length)));
            i += length - 1;
        }

        return new PictureRowStatement(cells, span);
    }
}
