using Turnrow.Syntax.Generated;
using Turnrow.Syntax.Tree;

namespace Turnrow.Syntax.Building;

/// <summary>The lines that say which yarn is worked with.</summary>
internal static class YarnBuilder
{
    public static YarnInHandStatement With(TurnrowParser.WithLineContext context, LineBuilding line) =>
        new(line.Name(context.yarn), LineBuilding.Span(context));

    public static StripesStatement Stripes(TurnrowParser.StripesLineContext context, LineBuilding line)
    {
        var stripes = new List<StripeSyntax>(context._parts.Count);
        foreach (var stripe in context._parts)
            stripes.Add(new StripeSyntax(line.Name(stripe.yarn), ExpressionBuilder.Count(stripe.rows, line), LineBuilding.Span(stripe)));
        return new StripesStatement(stripes, LineBuilding.Span(context));
    }

    public static FloatsStatement Floats(TurnrowParser.FloatsLineContext context, LineBuilding line) =>
        new(NumberBuilder.Number(context.most, line), LineBuilding.Span(context));
}
