using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Reading;
using Xunit;

namespace Turnrow.Syntax.Tests;

/// <summary>The tokens that are found without the generated lexer are those that it finds.</summary>
public sealed class EasyTokenTests
{
    private const int Lines = 20_000;
    private const int Seed = 314;

    /// <summary>What tokens are made of, and what stands between them.</summary>
    private static readonly string[] Pieces =
    [
        .. NotationWords.Reserved, .. NotationWords.Statements.Select(word => word.Text), "remains", "sts", "time", "x", "X", "Rs", "dc", "side-seam", "a", "é", "n\u0303",
        "e-", "-", "--", "1", "12", "007", "1.5", "1.", ".5", "1.2.3", "1.2.3.4", "1,5", "1,000,000", "1/2", "7 1/2", "1/", "/2", "1/2/3", "½", "1½", "1st", "2nd",
        "3rd", "4th", "5s", "5n", "5th-", "5dc", "5.5th", ".", ",", ";", ":", "(", ")", "=", "+", "/", "%", "×", "\"", "\"a b\"", "“a”", "“a", "#", "# a", ">", "> a \"b", "\t",
        " ", " ", " ", "\u00a0", "\u3000", "\u0000", "\u0001", "\u0007", "\u0301", "\U0001F9F6", "\ud83e", "\uddf6", "&", "'", "é1", "ñ-", "\u2028", "٣", "１",
    ];

    [Fact]
    public void In_every_pattern_and_example()
    {
        foreach (var path in Directory.GetFiles(Repository.PathOf("patterns"), "*.turnrow")) AssertSame(File.ReadAllText(path));
        foreach (var kind in SyntaxDiagnostics.All) AssertSame(kind.Bad + "\n" + kind.Good);
    }

    [Fact]
    public void Nothing_in_a_pattern_needs_the_generated_lexer() => Assert.All(Directory.GetFiles(Repository.PathOf("patterns"), "*.turnrow"), path =>
    {
        foreach (var line in File.ReadLines(path))
        {
            var tokens = new EasyTokens(line);
            for (var at = 0; at < line.Length;)
            {
                var token = tokens.At(at, line.Length);
                Assert.True(token is not null, $"what begins with `{line[at]}` sets it up, in: {line}");
                at = token.Value.End;
            }
        }
    });

    [Fact]
    public void In_whatever_is_typed()
    {
        var random = new Random(Seed);
        for (var i = 0; i < Lines; i++) AssertSame(string.Concat(Enumerable.Range(0, 1 + random.Next(12)).Select(_ => Pieces[random.Next(Pieces.Length)])));
    }

    [Fact]
    public void Every_word_of_the_notation_is_one() =>
        Assert.All(Pieces.Take(NotationWords.Reserved.Count + NotationWords.Statements.Count), word =>
        {
            Assert.Equal(new GeneratedLexer(word).At(0, word.Length), new EasyTokens(word).At(0, word.Length));
            Assert.True(Words.IsKeyword(new EasyTokens(word).At(0, word.Length)!.Value.Type) || word == "x", word);
        });

    private static void AssertSame(string text)
    {
        var (easy, generated) = (new EasyTokens(text), new GeneratedLexer(text));
        for (var start = 0; start < text.Length; start++)
        {
            var length = text.AsSpan(start).IndexOfAny('\r', '\n');
            var end = length < 0 ? text.Length : start + length;
            // From every position, not only from those where a token happens to begin.
            if (start < end && easy.At(start, end) is { } token) Assert.True(generated.At(start, end) == token, $"{token} at {start} of: {text}");
        }
    }
}
