using Turnrow.Syntax.Diagnostics.Kinds;
using Turnrow.Syntax.Generated;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Syntax.Building;

/// <summary>The lines that say what the pattern is: title, terms, sizes, prose.</summary>
internal static class HeaderBuilder
{
    public static NotationStatement Notation(TurnrowParser.NotationLineContext context, LineBuilding line) =>
        new(NumberBuilder.Number(context.value, line), LineBuilding.Span(context));

    public static PatternStatement Pattern(TurnrowParser.PatternLineContext context, LineBuilding line) =>
        new(line.Quoted(context.text), LineBuilding.Span(context));

    public static VersionStatement Version(TurnrowParser.VersionLineContext context, LineBuilding line)
    {
        var name = line.Name(context.text);
        if (context.text.Start.Type == TurnrowLexer.QUOTED) name = name with { Text = line.Quoted(context.text.Start).Text };
        return new VersionStatement(name, LineBuilding.Span(context));
    }

    public static TermsStatement Terms(TurnrowParser.TermsLineContext context, LineBuilding line) =>
        new(line.Name(context.called), LineBuilding.Span(context));

    public static SkillStatement Skill(TurnrowParser.SkillLineContext context, LineBuilding line) =>
        new(line.Quoted(context.text), LineBuilding.Span(context));

    public static NotionStatement Notion(TurnrowParser.NotionLineContext context, LineBuilding line) =>
        new(line.Quoted(context.text), LineBuilding.Span(context));

    public static WearerStatement Wearer(TurnrowParser.WearerLineContext context, LineBuilding line) =>
        new(line.Name(context.called), LineBuilding.Span(context));

    public static ProseStatement Prose(TextSpan span, LineBuilding line)
    {
        var text = line.Text(span);
        return new ProseStatement(text.Length > 1 && text[1] == ' ' ? text[2..] : text[1..], span);
    }

    public static SizesStatement Sizes(TurnrowParser.SizesLineContext context, LineBuilding line)
    {
        var names = new List<NameSyntax>(context._names.Count);
        foreach (var size in context._names) names.Add(SizeName(size, line));
        return new SizesStatement(names, LineBuilding.Span(context));
    }

    /// <summary>A size as it is written in the list of sizes.</summary>
    public static NameSyntax SizeName(TurnrowParser.SizeNameContext context, LineBuilding line)
    {
        var name = line.Name(context);
        if (context.Start.Type == TurnrowLexer.QUOTED) return name with { Text = line.Quoted(context.Start).Text };

        // `1X` is a number and a word with nothing between.
        if (context.Start != context.Stop && context.Start.StopIndex + 1 < context.Stop.StartIndex)
            line.Report(SizeWord.At(name.Span, name.Text));
        return name;
    }
}
