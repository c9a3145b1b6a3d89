using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Turnrow.Fabric.Numbers;

namespace Turnrow.Compiler.Tests.Annotated;

/// <summary>
/// What is said of each size, laid side by side as print does it: <c>row 16 (18, 18): 34 (37, 39) dc</c>. Texts that differ in more than
/// numbers are told one after the other.
/// </summary>
internal static partial class InSizes
{
    public static string Text<T>(IEnumerable<T> values)
    {
        var texts = values.Select(v => string.Create(CultureInfo.InvariantCulture, $"{v}")).ToList();
        var parts = texts.ConvertAll(t => Numbers().Split(t));
        if (!parts.TrueForAll(p => Words(p).SequenceEqual(Words(parts[0])))) return Aside(texts);
        var text = new StringBuilder();
        for (var i = 0; i < parts[0].Length; i++) text.Append(Aside([.. parts.Select(p => p[i])]));
        return text.ToString();
    }

    public static string Cm(Rational centimetres) => centimetres.ToDouble().ToString("0.##", CultureInfo.InvariantCulture);

    // The split keeps the numbers: every second part is one.
    private static IEnumerable<string> Words(string[] parts) => parts.Where((_, i) => i % 2 == 0);

    private static string Aside(IReadOnlyList<string> texts) =>
        texts.All(t => t == texts[0]) ? texts[0] : $"{texts[0]} ({string.Join(", ", texts.Skip(1))})";

    [GeneratedRegex(@"(?<!\d|\.)(\d+(?:\.\d+)?)")]
    private static partial Regex Numbers();
}
