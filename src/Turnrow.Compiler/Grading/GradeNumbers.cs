using Turnrow.Syntax.Diagnostics;

namespace Turnrow.Compiler.Grading;

/// <summary>Numbers from size to size, for a message.</summary>
internal static class GradeNumbers
{
    /// <summary>A length or a count.</summary>
    public static string Of(Context context, NumbersOverSizes numbers, int size) =>
        numbers.Values[size] is { IsLength: true, Number: var length } ? context.Length(length) : numbers.Values[size].Number.ToString();

    /// <summary><c>S 40, M 45, L 54</c></summary>
    public static string Row(Context context, NumbersOverSizes numbers) =>
        context.Findings.Each([.. Enumerable.Range(0, numbers.Values.Length)], i => Of(context, numbers, i));

    /// <summary>What they are the numbers of, to begin a sentence with.</summary>
    public static string Subject(NumbersOverSizes numbers) => numbers.Name is { } name ? $"`{name.Text}`" : "the list";

    /// <summary>The line that accepts a warning of them, and of nothing else that has a name.</summary>
    public static string Acceptance(DiagnosticKind kind, NumbersOverSizes numbers) =>
        numbers.Name is { } name ? $"accept {kind.Name} of {name.Text}: \"…\"" : $"accept {kind.Name}: \"…\"";
}
