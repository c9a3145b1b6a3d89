using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Numbers;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Grading;

/// <summary>How much wider than the body a garment is meant to be: a number a size, or the range of a fit that has a name.</summary>
/// <param name="Name">The measure.</param>
/// <param name="Least">Least centimetres a size; null for any.</param>
/// <param name="Most">Most centimetres a size; null for any.</param>
/// <param name="Fit">The name of the fit; null for a number.</param>
/// <param name="Span">Where it is said.</param>
internal sealed record Ease(string Name, Rational?[] Least, Rational?[] Most, string? Fit, TextSpan Span);

/// <summary>Reads <c>ease</c> lines.</summary>
internal sealed class EaseBinder(Context context)
{
    // The published fit words and their ease at the chest, as the yarn industry's older chart gives them, in centimetres x 2. A newer
    // chart uses some of the same words for less; the message names the numbers, so that neither is taken for the other.
    private static readonly (string Word, int? Least, int? Most)[] Fits =
    [
        ("very-close", null, 0),
        ("close", 5, 10),
        ("standard", 10, 20),
        ("classic", 10, 20),
        ("loose", 20, 30),
        ("oversized", 30, null),
    ];

    /// <summary>The words for a fit.</summary>
    public static IReadOnlyList<string> Words { get; } = [.. Fits.Select(fit => fit.Word)];

    public Ease? Bind(EaseStatement statement)
    {
        if (context.Eases.TryGetValue(statement.Name.Text, out var earlier))
        {
            context.Findings.Add(DefinedTwice.At(statement.Name.Span, statement.Name.Text, earlier.Span));
            return null;
        }

        if (statement.Value is NameExpression { Name: var word } && context.Scope.Find(word.Text) is null) return OfWord(statement, word);
        var lengths = context.Evaluate.Lengths(statement.Value);
        return new Ease(statement.Name.Text, lengths, lengths, null, statement.Name.Span);
    }

    private Ease? OfWord(EaseStatement statement, NameSyntax word)
    {
        foreach (var (name, least, most) in Fits)
        {
            if (!string.Equals(name, word.Text, StringComparison.OrdinalIgnoreCase)) continue;
            return new Ease(statement.Name.Text, Same(least), Same(most), name, statement.Name.Span);
        }

        context.Findings.Add(EaseWord.At(word.Span, word.Text));
        return null;
    }

    private Rational?[] Same(int? halves) => Sized.Same(context.Sizes, halves is { } n ? Rational.Of(n, 2) : null);
}
