using System.Globalization;
using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Fabric.Words;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Rows;

/// <summary>Reads where a stitch goes: <c>in next sp</c>, <c>in each st and sp</c>, <c>in next ch-3 sp</c>.</summary>
internal sealed class PlaceBinder(Context context)
{
    private static readonly string[] SpaceWords = ["sp", "sps", "space", "spaces"];
    private static readonly string[] StitchWords = ["st", "sts", "stitch"];

    /// <summary>The target; null, and reported, if the words name no kind of place.</summary>
    public Target? Bind(PlaceSyntax place)
    {
        if (place.Word == PlaceWord.Corner) return Target.Corner;
        if (place.Nth is { } nth) return NthOf(place, nth) is { } filterOf ? new Target(Aim.NextOfKind, filterOf) : null;
        if (place.Word == PlaceWord.Ring) return Target.Ring;
        if (place is { Word: PlaceWord.Next, Kind: [{ Text: "corner" }], AndKind.Count: 0 }) return Target.NextCorner;
        if (place.Kind.Count == 0 && place.AndKind.Count == 0)
        {
            return place.Word == PlaceWord.Each
                ? new Target(Aim.EachOfKind, PlaceFilter.AnyStitch)
                : new Target(AimOf(place.Word, false), PlaceFilter.AnyStitch);
        }

        if (FilterOf(place.Kind) is not { } filter) return null;
        if (place.AndKind.Count > 0)
        {
            if (FilterOf(place.AndKind) is not { } also) return null;
            if (filter.Kind == PlaceFilterKind.AnyStitch == (also.Kind == PlaceFilterKind.AnyStitch))
            {
                context.Findings.Add(PlaceUnknown.Both(place.Span));
                return null;
            }

            filter = new PlaceFilter(PlaceFilterKind.StitchOrSpace, null, 0);
        }

        return new Target(AimOf(place.Word, true), filter);
    }

    /// <summary>The target of what goes into each space, beside what goes into each stitch; null, and reported, if it is neither.</summary>
    public Target? BindOther(PlaceSyntax place, OtherPlaceSyntax other)
    {
        if (FilterOf(place.Kind) is not { } stitches || FilterOf(other.Kind) is not { } spaces) return null;
        if (stitches.Kind == PlaceFilterKind.AnyStitch && spaces.Kind is PlaceFilterKind.AnySpace or PlaceFilterKind.SpaceOf)
            return new Target(Aim.NextOfKind, spaces);
        context.Findings.Add(PlaceUnknown.Both(place.Span));
        return null;
    }

    private static Aim AimOf(PlaceWord word, bool ofKind) => word switch
    {
        PlaceWord.First => Aim.First,
        PlaceWord.Last => Aim.Last,
        PlaceWord.Same => Aim.Same,
        PlaceWord.Each => Aim.EachOfKind,
        _ => ofKind ? Aim.NextOfKind : Aim.Next,
    };

    private PlaceFilter? FilterOf(IReadOnlyList<NameSyntax> words)
    {
        if (words.Count == 1 && IsStitch(words[0])) return PlaceFilter.AnyStitch;
        if (SpacesOf(words) is { } spaces) return spaces;
        if (words.Count == 2 && IsCentre(words[1])) return SpecialOf(words[0]) is { } named ? CentreOf(words[0], named) : null;
        if (words.Count == 1)
        {
            if (context.AnyStitchOf(words[0]) is not { Stitch: var stitch }) return null;
            return stitch.IsOne ? new PlaceFilter(PlaceFilterKind.OneStitch, stitch, 0) : CentreOf(words[0], stitch);
        }

        if (words.Count > 0) context.Findings.Add(PlaceUnknown.At(words, Array.Exists([.. SpaceWords, .. StitchWords], w => Is(words[^1], w))));
        return null;
    }

    /// <summary>True of <c>st</c>, which is any stitch.</summary>
    public static bool IsStitch(NameSyntax word) => Array.Exists(StitchWords, w => Is(word, w));

    /// <summary>Spaces, any or of so many chains; null if the words say none.</summary>
    public static PlaceFilter? SpacesOf(IReadOnlyList<NameSyntax> words)
    {
        if (words.Count is 0 or > 2 || !Array.Exists(SpaceWords, w => Is(words[^1], w))) return null;
        if (words.Count == 1) return new PlaceFilter(PlaceFilterKind.AnySpace, null, 0);
        return ChainsOf(words[0].Text) is { } chains ? new PlaceFilter(PlaceFilterKind.SpaceOf, null, chains) : null;
    }

    /// <summary>A kind of place inside a special stitch: a stitch, or a space (null); null, and reported, if it is neither.</summary>
    public (Fabric.Stitches.Stitch? Stitch, bool Known)? KindOf(IReadOnlyList<NameSyntax> words)
    {
        if (words.Count == 1 && Array.Exists(SpaceWords, w => Is(words[0], w))) return (null, true);
        if (words.Count == 1) return context.AnyStitchOf(words[0]) is { } meaning ? (meaning.Stitch, true) : null;
        context.Findings.Add(StitchPlace.Words(words[0].Span.To(words[^1].Span)));
        return null;
    }

    // `3rd dc of next shell`: the words behind the number.
    private PlaceFilter? NthOf(PlaceSyntax place, NumberSyntax nth)
    {
        if (place.Kind is not [var kind, { Text: "of" }, { Text: "next" }, var name])
        {
            context.Findings.Add(StitchPlace.Words(place.Span));
            return null;
        }

        if (KindOf([kind]) is not { } of || SpecialOf(name) is not { } special) return null;
        // A number of the family may be another one in the row: how many there are is known of the stitch alone.
        var there = special.Tops.CountWhere(p => p.Stitch == of.Stitch && (of.Stitch is not null || p.Kind == Fabric.Places.PlaceKind.Space));
        if (nth.Numerator >= 1 && (nth.Numerator <= there || special.Family is not null) && nth.Numerator <= int.MaxValue) return PlaceFilter.NthOf((int)nth.Numerator, of.Stitch, special);
        context.Findings.Add(StitchPlace.Missing(place.Span, name.Text, kind.Text, there));
        return null;
    }

    private Fabric.Stitches.Stitch? SpecialOf(NameSyntax word)
    {
        if (context.AnyStitchOf(word) is not { Stitch: var stitch }) return null;
        if (!stitch.IsOne) return stitch;
        context.Findings.Add(StitchPlace.NotSpecial(word.Span, word.Text));
        return null;
    }

    private PlaceFilter? CentreOf(NameSyntax word, Fabric.Stitches.Stitch special)
    {
        if (special.Family is not null || special.Tops.CountWhere(static p => p.Part!.IsCentre) > 0) return PlaceFilter.CentreOf(special);
        context.Findings.Add(StitchPlace.NoCentre(word.Span, word.Text));
        return null;
    }

    private static bool IsCentre(NameSyntax word) => Is(word, "centre") || Is(word, "center");

    private static bool Is(NameSyntax word, string other) => string.Equals(word.Text, other, StringComparison.OrdinalIgnoreCase);

    private static int? ChainsOf(string word) =>
        word.StartsWith("ch-", StringComparison.OrdinalIgnoreCase)
        && int.TryParse(word.AsSpan(3), NumberStyles.None, CultureInfo.InvariantCulture, out var chains) && chains > 0
            ? chains
            : null;
}
