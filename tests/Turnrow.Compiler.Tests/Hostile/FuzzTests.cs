using System.Diagnostics;
using System.Globalization;
using System.Text;
using Turnrow.Syntax;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Compiler.Tests.Hostile;

/// <summary>
/// Random input, from noise to spliced patterns: the compiler always answers, and soon. What was found once stands in
/// <see cref="FoundByFuzzing"/>. TURNROW_FUZZ sets how many inputs there are, TURNROW_FUZZ_SEED which ones.
/// </summary>
public sealed class FuzzTests
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(10);
    private static readonly int Inputs = Setting("TURNROW_FUZZ", 20_000);
    private static readonly int Seed = Setting("TURNROW_FUZZ_SEED", 2011);

    private static readonly string[] Texts = [.. Patterns.All.Select(path => Patterns.Read(path).Text)];
    private static readonly string[][] PatternLines = [.. Texts.Select(text => text.Split('\n'))];

    private static readonly string[] Soup =
    [
        .. NotationWords.Statements.Select(word => word.Text), .. NotationWords.Reserved, "dc", "sc", "hdc", "tr", "ch", "sl", "st", "sp", "inc", "dec",
        "dc3tog", "across", "around", "evenly", "back-loop", "front-post", "a", "b", "edge", "edges", "RS", "WS", "cm", "in", "mm", "0", "1", "2", "3",
        "1000000", "9223372036854775807", "1/3", "7 1/2", "(", ")", ",", ";", ":", "=", "+", "-", "x", "/", ">", "#", "\"", "\n", "\n", "\n",
        "piece a\nbegin with 9 stitches\nrow 1: dc across\n", "piece b is a mirrored\n", "row: ", "each", "same", "next", "times", "more", "all", "remain",
    ];

    [Fact]
    public void No_input_is_too_strange()
    {
        Parallel.For(0, Inputs, i =>
        {
            var random = new Random(unchecked((Seed * 1_000_003) + i));
            var source = SourceOf(random, i);
            var watch = Stopwatch.StartNew();
            try
            {
                var compilation = Compilation.Of(source);
                foreach (var found in compilation.Diagnostics.Take(5)) DiagnosticPrinter.Print(found, source);
                foreach (var found in compilation.Diagnostics) AssertWithin(found, source);
            }
            catch (Exception thrown) when (thrown is not Xunit.Sdk.XunitException)
            {
                Assert.Fail(string.Create(CultureInfo.InvariantCulture, $"input {i} of seed {Seed}: {thrown}\n{source.Text}"));
            }

            Assert.True(watch.Elapsed < Patience, string.Create(CultureInfo.InvariantCulture, $"input {i} of seed {Seed} took {watch.Elapsed}\n{source.Text}"));
        });
    }

    private static void AssertWithin(Diagnostic found, SourceText source) =>
        Assert.True(found.Span.Start >= 0 && found.Span.End <= source.Text.Length && found.Message.Length > 0, found.Kind.Name);

    private static SourceText SourceOf(Random random, int i) => (i % 5) switch
    {
        0 => SourceText.FromBytes("fuzz", Noise(random)),
        1 => new SourceText("fuzz", SoupOf(random)),
        2 => new SourceText("fuzz", Spliced(random)),
        3 => new SourceText("fuzz", Renumbered(random)),
        _ => new SourceText("fuzz", Mutated(random)),
    };

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
            var lines = Pick(random, PatternLines);
            var first = random.Next(lines.Length);
            for (var i = first; i < Math.Min(lines.Length, first + random.Next(20)); i++)
            {
                if (random.Next(8) != 0) text.Append(lines[i]).Append('\n');
            }
        }

        return text.ToString();
    }

    // A pattern with other numbers: everything can be read and little comes out.
    private static string Renumbered(Random random)
    {
        var text = new StringBuilder();
        foreach (var c in Pick(random, Texts)) text.Append(char.IsAsciiDigit(c) && random.Next(12) == 0 ? random.Next(10).ToString(CultureInfo.InvariantCulture) : c);
        return text.ToString();
    }

    private static string Mutated(Random random)
    {
        var text = new StringBuilder(Pick(random, Texts));
        for (var edits = 1 + random.Next(12); edits > 0; edits--)
        {
            var at = random.Next(text.Length);
            if (random.Next(2) == 0) text.Remove(at, Math.Min(random.Next(12), text.Length - at));
            else text.Insert(at, Pick(random, Soup));
        }

        return text.ToString();
    }

    private static T Pick<T>(Random random, T[] of) => of[random.Next(of.Length)];

    private static int Setting(string name, int otherwise) =>
        int.TryParse(Environment.GetEnvironmentVariable(name), NumberStyles.Integer, CultureInfo.InvariantCulture, out var set) ? set : otherwise;
}
