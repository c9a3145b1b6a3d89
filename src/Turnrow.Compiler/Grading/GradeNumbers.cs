using Turnrow.Compiler.Values;

namespace Turnrow.Compiler.Grading;

/// <summary>Numbers from size to size, for a message.</summary>
internal static class GradeNumbers
{
    /// <summary>A length or a count.</summary>
    public static string Of(Context context, Value value) => value.IsLength ? context.Length(value.Number) : value.Number.ToString();

    /// <summary><c>S 40, M 45, L 54</c></summary>
    public static string Row(Context context, Value[] values) =>
        context.Findings.Each([.. Enumerable.Range(0, values.Length)], i => Of(context, values[i]));
}
