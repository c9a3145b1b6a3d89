using System.Globalization;
using System.Text;
using Turnrow.Compiler.Diagnostics;
using Turnrow.Syntax;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Tests;

/// <summary>
/// Texts that nobody would write, from noise to patterns with one number changed; the same number and seed give the same text. They are
/// made of the patterns of the repository and of the small patterns on the diagnostics' pages, good and bad.
/// </summary>
internal static class FuzzInputs
{
    private static readonly string[] Whole = [.. Patterns.All.Select(path => Patterns.Read(path).Text)];

    private static readonly string[] Small =
    [
        .. CompilerDiagnostics.All.Concat(SyntaxDiagnostics.All).SelectMany(kind => new[] { kind.Bad, kind.Good }).Select(text => text.ReplaceLineEndings("\n")),
    ];

    private static readonly string[][] Lines = [.. Whole.Concat(Small).Select(text => text.Split('\n'))];

    private static readonly string[] Soup =
    [
        .. NotationWords.Statements.Select(word => word.Text), .. NotationWords.Reserved, "dc", "sc", "hdc", "tr", "ch", "sl", "st", "sp", "inc", "dec",
        "dc3tog", "across", "around", "evenly", "back-loop", "front-post", "a", "b", "edge", "edges", "RS", "WS", "cm", "in", "mm", "0", "1", "2", "3",
        "1000000", "9223372036854775807", "1/3", "7 1/2", "(", ")", ",", ";", ":", "=", "+", "-", "x", "/", ">", "#", "\"", "\n", "\n", "\n",
        "piece a\nbegin with 9 stitches\nrow 1: dc across\n", "piece b is a mirrored\n", "row: ", "each", "same", "next", "times", "more", "all", "remain",
    ];

    /// <summary>One text.</summary>
    /// <param name="seed">Which series.</param>
    /// <param name="number">Its number in the series; the kinds of text take turns.</param>
    public static SourceText Of(int seed, int number)
    {
        var random = new Random(unchecked((seed * 1_000_003) + number));
        return (number % 7) switch
        {
            0 => SourceText.FromBytes("fuzz", Noise(random)),
            1 => new SourceText("fuzz", SoupOf(random)),
            2 => new SourceText("fuzz", Spliced(random)),
            3 => new SourceText("fuzz", Renumbered(random, Pick(random, Whole), 12)),
            4 => new SourceText("fuzz", Mutated(random, Pick(random, Whole), 12)),
            5 => new SourceText("fuzz", Renumbered(random, Pick(random, Small), 4)),
            _ => new SourceText("fuzz", Mutated(random, Pick(random, Small), 4)),
        };
    }

    private static byte[] Noise(Random random)
    {
        var bytes = new byte[random.Next(2_000)];
        random.NextBytes(bytes);
        return bytes;
    }

    private static string SoupOf(Random random)
    {
        var text = new StringBuilder();
        for (var words = random.Next(300); words > 0; words--) text.Append(Pick(random, Soup)).Append(' ');
        return text.ToString();
    }

    // Lines of any pattern in any order, some left out.
    private static string Spliced(Random random)
    {
        var text = new StringBuilder();
        for (var pieces = 1 + random.Next(8); pieces > 0; pieces--)
        {
            var lines = Pick(random, Lines);
            var first = random.Next(lines.Length);
            for (var i = first; i < Math.Min(lines.Length, first + random.Next(20)); i++)
            {
                if (random.Next(8) != 0) text.Append(lines[i]).Append('\n');
            }
        }

        return text.ToString();
    }

    // A pattern with other numbers: everything can be read and little comes out.
    private static string Renumbered(Random random, string of, int oneIn)
    {
        var text = new StringBuilder();
        foreach (var c in of) text.Append(char.IsAsciiDigit(c) && random.Next(oneIn) == 0 ? random.Next(10).ToString(CultureInfo.InvariantCulture) : c);
        return text.ToString();
    }

    private static string Mutated(Random random, string of, int most)
    {
        var text = new StringBuilder(of);
        for (var edits = 1 + random.Next(most); edits > 0; edits--)
        {
            var at = random.Next(text.Length + 1);
            if (random.Next(2) == 0) text.Remove(at, Math.Min(random.Next(12), text.Length - at));
            else text.Insert(at, Pick(random, Soup));
        }

        return text.ToString();
    }

    private static T Pick<T>(Random random, T[] of) => of[random.Next(of.Length)];
}
