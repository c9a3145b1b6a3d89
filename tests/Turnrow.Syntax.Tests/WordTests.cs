using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Diagnostics.Kinds;
using Turnrow.Syntax.Generated;
using Turnrow.Syntax.Reading;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;
using Xunit;

namespace Turnrow.Syntax.Tests;

/// <summary>Which words are the notation's own, how numbers are read, and which word was meant.</summary>
public sealed class WordTests
{
    public static TheoryData<string> Keywords =>
        [.. Enumerable.Range(TurnrowLexer.ADD, TurnrowLexer.YD - TurnrowLexer.ADD + 1).Select(type => Words.Spelling(type)!)];

    [Fact]
    public void Few_words_can_not_be_names()
    {
        Assert.Equal(
            "RS WS across and are around at both bridge by cm dec evenly first for hold in inc join last leave m mm per row rows skip slip stitches the to together until with without x yd",
            string.Join(' ', NotationWords.Reserved));
    }

    [Theory]
    [MemberData(nameof(Keywords))]
    public void A_word_of_the_notation_is_a_name_or_says_that_it_is_none(string word)
    {
        var tree = Read($"piece {word}\nmeasure {word} is 5 cm\nrow: dc {word}\nsizes {word}\nleave 6 at {word}");
        if (!NotationWords.Reserved.Contains(word))
        {
            Assert.Empty(tree.Diagnostics);
            return;
        }

        Assert.Equal([WordAsName.Kind, WordAsName.Kind], tree.Diagnostics.Take(2).Select(found => found.Kind));
        Assert.Contains(SizeWord.Kind, tree.Diagnostics.Select(found => found.Kind));
        Assert.Empty(Read($"piece {word}-1").Diagnostics);
    }

    [Theory]
    [MemberData(nameof(Keywords))]
    public void No_word_has_the_letter_that_others_are_folded_to(string word) => Assert.DoesNotContain('Q', word);

    [Fact]
    public void The_words_that_begin_lines_are_the_grammars()
    {
        var atn = TurnrowParser._ATN;
        var starts = atn.NextTokens(atn.ruleToStartState[TurnrowParser.RULE_statement]).ToList().Where(type => type is not (TurnrowLexer.PROSE or TurnrowLexer.PICTURE_ROW));
        Assert.Equal(starts.Select(Words.Spelling).Order(), NotationWords.Statements.Select(word => word.Text).Order());
    }

    [Theory]
    [InlineData("12", 12, 1)]
    [InlineData("0", 0, 1)]
    [InlineData("1.50", 3, 2)]
    [InlineData("2/4", 1, 2)]
    [InlineData("7 1/2", 15, 2)]
    [InlineData("7½", 15, 2)]
    [InlineData("7 ½", 15, 2)]
    [InlineData("⅔", 2, 3)]
    [InlineData("007", 7, 1)]
    [InlineData("999999999", 999999999, 1)]
    [InlineData("0.00000001", 1, 100000000)]
    [InlineData("999999999 999999998/999999999", 999999998999999999, 999999999)]
    public void Numbers_are_exact(string text, long numerator, long denominator)
    {
        var measure = Assert.IsType<MeasureStatement>(Assert.Single(Read($"measure a is {text} cm").Lines).Statement);
        var number = Assert.IsType<NumberExpression>(measure.Value).Number;
        Assert.Equal((numerator, denominator), (number.Numerator, number.Denominator));
    }

    [Theory]
    [InlineData("1000000000")]
    [InlineData("1.123456789")]
    [InlineData("1/1000000000")]
    [InlineData("99999999999999999999999999999")]
    public void Too_many_digits_are_an_error(string text) =>
        Assert.Equal(NumberLarge.Kind, Assert.Single(Read($"measure a is {text} cm").Diagnostics).Kind);

    [Theory]
    [InlineData("acros", "across")]
    [InlineData("Across", "across")]
    [InlineData("straigth", "straight")]
    [InlineData("sc", null)]
    [InlineData("x", null)]
    [InlineData("", null)]
    [InlineData("sleeve", null)]
    public void The_nearest_word_is_found_or_none(string word, string? nearest) =>
        Assert.Equal(nearest, Spelling.Nearest(word, ["across", "straight", "until", "leave the rest"]));

    private static SyntaxTree Read(string text) => SyntaxReader.Read(new SourceText("words", text));
}
