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
    // The published fit words and their ease at the chest, as the yarn industry's older chart gives them in both units: the least in
    // centimetres, the most in inches, which are the wider. A newer chart uses some of the same words for less; the message names the
    // numbers, so that neither is taken for the other.
    private static readonly (string Word, Rational? Least, Rational? Most)[] Fits =
    [
        ("very-close", null, 0),
        ("close", Rational.Of(5, 2), Inches(2)),
        ("standard", 5, Inches(4)),
        ("classic", 5, Inches(4)),
        ("loose", 10, Inches(6)),
        ("oversized", 15, null),
    ];

    /// <summary>Where the words' numbers are from.</summary>
    public const string Source = "the yarn industry's older fit chart, at the chest, as a maker's guide quotes it; a newer chart has other numbers for some of the words";

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
        if (statement.Less) lengths = lengths.Select(l => l is { } length ? Rational.Zero - length : null);
        return new Ease(statement.Name.Text, lengths, lengths, null, statement.Name.Span);
    }

    private Ease? OfWord(EaseStatement statement, NameSyntax word)
    {
        foreach (var (name, least, most) in Fits)
        {
            if (!string.Equals(name, word.Text, StringComparison.OrdinalIgnoreCase)) continue;
            return new Ease(statement.Name.Text, Sized.Same(context.Sizes, least), Sized.Same(context.Sizes, most), name, statement.Name.Span);
        }

        context.Findings.Add(EaseWord.At(word.Span, word.Text));
        return null;
    }

    private static Rational? Inches(int inches) => Rational.Of(254 * inches, 100);
}
