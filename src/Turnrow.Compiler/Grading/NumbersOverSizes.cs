using Turnrow.Compiler.Values;
using Turnrow.Fabric.Numbers;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Grading;

/// <summary>Numbers from size to size: a list as it is written, or what a name comes to.</summary>
/// <param name="Name">The name that they are of; null for a list in a line that names nothing.</param>
/// <param name="Values">A value a size.</param>
/// <param name="Places">Where each is written; null where they are worked out.</param>
internal sealed record NumbersOverSizes(NameSyntax? Name, Value[] Values, IReadOnlyList<NumberSyntax>? Places)
{
    /// <summary>Where one of them is to be marked: the name, or in a list without one the number itself.</summary>
    public TextSpan SpanOf(int size) => Name?.Span ?? Places![size].Span;

    /// <summary>From the size before to this one.</summary>
    public Rational? Step(int size) => Values[size].Number - Values[size - 1].Number;

    /// <summary>All lists in sizes of a statement where a designer writes numbers of the body and of the piece.</summary>
    public static IEnumerable<NumbersOverSizes> WrittenIn(StatementSyntax statement, int sizes)
    {
        // What is done in some sizes only does not grow over all of them.
        if (statement is ForSizesStatement) yield break;
        foreach (var part in WrittenNumbers.In(statement))
        {
            if (part is SizesExpression list && list.Values.Count == sizes && ValuesOf(list) is { } values) yield return new NumbersOverSizes(NameOf(statement), values, list.Values);
        }
    }

    /// <summary>What the name that a statement defines comes to; null if it defines none, or a size's value is not known.</summary>
    public static NumbersOverSizes? Of(StatementSyntax statement, Scope scope)
    {
        if (NameOf(statement) is not { } name || scope.Find(name.Text) is not { } definition || definition.Span != name.Span) return null;
        return Array.TrueForAll(definition.Values, static v => v is not null)
            ? new NumbersOverSizes(name, definition.Values.Select(static v => v!.Value), null)
            : null;
    }

    private static NameSyntax? NameOf(StatementSyntax statement) => statement switch
    {
        MeasureStatement measure => measure.Name,
        CountStatement count => count.Name,
        _ => null,
    };

    private static Value[]? ValuesOf(SizesExpression list)
    {
        var values = new Value[list.Values.Count];
        for (var i = 0; i < values.Length; i++)
        {
            var number = Rational.Of(list.Values[i].Numerator, list.Values[i].Denominator);
            if (list.Unit is { } unit && number is { } plain) number = plain * Units.Centimetres(unit.Unit);
            if (number is not { } known) return null;
            values[i] = new Value(known, list.Unit is not null);
        }

        return values;
    }
}
