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
        if (words.Count == 1 && Array.Exists(StitchWords, w => Is(words[0], w))) return PlaceFilter.AnyStitch;
        if (words.Count == 1 && Array.Exists(SpaceWords, w => Is(words[0], w))) return new PlaceFilter(PlaceFilterKind.AnySpace, null, 0);
        if (words.Count == 2 && Array.Exists(SpaceWords, w => Is(words[1], w)) && ChainsOf(words[0].Text) is { } chains)
            return new PlaceFilter(PlaceFilterKind.SpaceOf, null, chains);
        if (words.Count == 1) return context.StitchOf(words[0]) is { } stitch ? new PlaceFilter(PlaceFilterKind.OneStitch, stitch, 0) : null;
        if (words.Count > 0) context.Findings.Add(PlaceUnknown.At(words, Array.Exists([.. SpaceWords, .. StitchWords], w => Is(words[^1], w))));
        return null;
    }

    private static bool Is(NameSyntax word, string other) => string.Equals(word.Text, other, StringComparison.OrdinalIgnoreCase);

    private static int? ChainsOf(string word) =>
        word.StartsWith("ch-", StringComparison.OrdinalIgnoreCase)
        && int.TryParse(word.AsSpan(3), NumberStyles.None, CultureInfo.InvariantCulture, out var chains) && chains > 0
            ? chains
            : null;
}
