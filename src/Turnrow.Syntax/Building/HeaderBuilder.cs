using Turnrow.Syntax.Diagnostics.Kinds;
using Turnrow.Syntax.Generated;
using Turnrow.Syntax.Tree;

namespace Turnrow.Syntax.Building;

/// <summary>The lines that say what the pattern is: title, terms, sizes, prose.</summary>
internal static class HeaderBuilder
{
    public static NotationStatement Notation(TurnrowParser.NotationLineContext context, LineBuilding line) =>
        new(NumberBuilder.Number(context.number(), line), LineBuilding.Span(context));

    public static PatternStatement Pattern(TurnrowParser.PatternLineContext context, LineBuilding line) =>
        new(line.Quoted(context.QUOTED().Symbol), LineBuilding.Span(context));

    public static VersionStatement Version(TurnrowParser.VersionLineContext context, LineBuilding line)
    {
        var version = context.version();
        var name = line.Name(version);
        if (version.QUOTED() is { } quoted) name = name with { Text = line.Quoted(quoted.Symbol).Text };
        return new VersionStatement(name, LineBuilding.Span(context));
    }

    public static TermsStatement Terms(TurnrowParser.TermsLineContext context, LineBuilding line) =>
        new(line.Name(context.name()), LineBuilding.Span(context));

    public static SkillStatement Skill(TurnrowParser.SkillLineContext context, LineBuilding line) =>
        new(line.Quoted(context.QUOTED().Symbol), LineBuilding.Span(context));

    public static NotionStatement Notion(TurnrowParser.NotionLineContext context, LineBuilding line) =>
        new(line.Quoted(context.QUOTED().Symbol), LineBuilding.Span(context));

    public static WearerStatement Wearer(TurnrowParser.WearerLineContext context, LineBuilding line) =>
        new(line.Name(context.name()), LineBuilding.Span(context));

    public static ProseStatement Prose(TurnrowParser.ProseLineContext context, LineBuilding line)
    {
        var span = LineBuilding.Span(context);
        var text = line.Text(span);
        return new ProseStatement(text.Length > 1 && text[1] == ' ' ? text[2..] : text[1..], span);
    }

    public static SizesStatement Sizes(TurnrowParser.SizesLineContext context, LineBuilding line) =>
        new(SizeNames(context, line), LineBuilding.Span(context));

    /// <summary>The names of a <c>sizes</c> line, as far as it could be read.</summary>
    public static List<NameSyntax> SizeNames(TurnrowParser.SizesLineContext context, LineBuilding line)
    {
        var names = new List<NameSyntax>(context._names.Count);
        foreach (var size in context._names)
        {
            if (size.Stop is not null) names.Add(SizeName(size, line));
        }

        return names;
    }

    private static NameSyntax SizeName(TurnrowParser.SizeNameContext context, LineBuilding line)
    {
        var name = line.Name(context);
        if (context.QUOTED() is { } quoted) return name with { Text = line.Quoted(quoted.Symbol).Text };
        if (context.NUMBER() is { } number && number.Symbol.StopIndex + 1 < context.Stop.StartIndex)
            line.Report(SizeWord.At(name.Span, name.Text));
        return name;
    }

}
