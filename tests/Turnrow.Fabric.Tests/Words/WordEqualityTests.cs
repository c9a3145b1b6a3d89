using Turnrow.Fabric.Places;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Xunit;

namespace Turnrow.Fabric.Tests.Words;

/// <summary>Words are alike if they say the same; and what a word means by a kind of place.</summary>
public sealed class WordEqualityTests
{
    private static Group Shell(int dc) => new([Say.Stitches(dc), new Chains(1)], Target.Next);

    private static Repeat Twice(int dc) => Say.Times(Amount.Of(2), Say.Stitches(dc), new Chains(1));

    private static void Alike(Word a, Word b)
    {
        Assert.Equal(a, b);
        Assert.Equal(a.GetHashCode(), b.GetHashCode());
    }

    [Fact]
    public void Groups_are_alike_if_their_words_their_place_and_their_times_are()
    {
        Alike(Shell(2), Shell(2));
        Assert.NotEqual(Shell(2), Shell(3));
        Assert.NotEqual(Shell(2), Shell(2) with { Target = new Target(Aim.Same, PlaceFilter.AnyStitch) });
        Assert.NotEqual(Shell(2), Shell(2) with { Times = 2 });
        Assert.NotEqual(Shell(2), Shell(2) with { Passed = 1 });
        Assert.NotEqual(Shell(2), Shell(2) with { PassedBefore = 1 });
        Assert.False(Shell(2).Equals((Group?)null));
        Assert.Equal(1, Shell(2).Times);
    }

    [Fact]
    public void Repeats_are_alike_if_their_words_their_times_and_their_ways_are()
    {
        Alike(Twice(2), Twice(2));
        Assert.NotEqual(Twice(2), Twice(3));
        Assert.NotEqual(Twice(2), Twice(2) with { Amount = Amount.Of(3) });
        Assert.NotEqual(Twice(2), Twice(2) with { Ways = [Twice(2)] });
        Alike(Twice(2) with { Ways = [Twice(2)] }, Twice(2) with { Ways = [Twice(2)] });
        Assert.NotEqual(Twice(2) with { Ways = [Twice(2)] }, Twice(2) with { Ways = [Twice(3)] });
        Assert.False(Twice(2).Equals((Repeat?)null));
    }

    [Fact]
    public void Lists_are_alike_if_all_their_words_are()
    {
        Word[] words = [Say.Stitches(1), Shell(2), Twice(3)];
        Assert.True(WordLists.Same(words, words));
        Assert.True(WordLists.Same(words, [Say.Stitches(1), Shell(2), Twice(3)]));
        Assert.False(WordLists.Same(words, [Say.Stitches(1), Shell(2), Twice(4)]));
        Assert.False(WordLists.Same(words, [Say.Stitches(2), Shell(2), Twice(3)]));
        Assert.False(WordLists.Same(words, words[..2]));
        Assert.False(WordLists.Same(words[..2], words));
        Assert.Equal(WordLists.Hash(words), WordLists.Hash([Say.Stitches(1), Shell(2), Twice(3)]));
        Assert.NotEqual(WordLists.Hash(words), WordLists.Hash([Say.Stitches(2), Shell(2), Twice(3)]));
        Assert.NotEqual(WordLists.Hash(words), WordLists.Hash([Say.Stitches(1), Shell(2), Twice(4)]));
    }

    [Fact]
    public void How_often_is_not_known_of_what_goes_to_the_end_before_it_is_worked()
    {
        Assert.Equal(new Amount(Reach.Across, 0, 0), Amount.Across);
        Assert.Equal(new Amount(Reach.Until, 5, 0), Amount.Until(5));
        Assert.Equal(new Amount(Reach.Fixed, 5, 5), Amount.Of(5));
    }

    [Theory]
    [InlineData(PlaceFilterKind.AnyStitch, "dc tc sk fc ac")]
    [InlineData(PlaceFilterKind.AnySpace, "s2 s3")]
    [InlineData(PlaceFilterKind.StitchOrSpace, "dc tc sk fc ac s2 s3")]
    public void A_kind_of_place_has_these_places(PlaceFilterKind kind, string has) => Assert.Equal(has, Places(new PlaceFilter(kind, null, 0)));

    [Fact]
    public void A_stitch_is_its_tops_and_the_chains_that_stand_for_it_and_the_chain_stitch_is_chains_to_work_into()
    {
        Assert.Equal("dc tc sk", Places(Say.DcOnly));
        Assert.Equal("", Places(Say.DcOnly with { Stitch = StitchBook.Treble }));
        Assert.Equal("sk fc ac", Places(new PlaceFilter(PlaceFilterKind.OneStitch, StitchBook.Chain, 0)));
        Assert.Equal("s3", Places(Say.SpaceOf(3)));
    }

    private static string Places(PlaceFilter filter)
    {
        (string, Place)[] all =
        [
            ("dc", Say.Dc), ("tc", Say.Dc with { Kind = PlaceKind.TurningChain }), ("sk", Say.Dc with { Kind = PlaceKind.SkippedChains }),
            ("fc", new(PlaceKind.FoundationChain, null, 0)), ("ac", new(PlaceKind.AddedChain, null, 0)), ("s2", Say.Space(2)), ("s3", Say.Space(3)),
        ];
        return string.Join(' ', all.Where(place => filter.Has(place.Item2)).Select(place => place.Item1));
    }
}
