using Turnrow.Fabric.Places;
using Turnrow.Fabric.Stitches;

namespace Turnrow.Fabric.Words;

/// <summary>What words make, as far as they tell it without being worked: of a row at fault no more is known.</summary>
public static class MadeKinds
{
    /// <summary>True if they make some stitch and nothing else, so that a count of it counts all places.</summary>
    public static bool AreOnly(IReadOnlyList<Word> words, Stitch stitch) =>
        words.Count > 0 && !WordLists.Any(words, word => word is Chains or Bridge || (word is Work work && !(work.Stitch == stitch && stitch.IsOne)));

    /// <summary>True if any of them makes a space, which a count of stitches leaves out.</summary>
    public static bool HaveSpaces(IReadOnlyList<Word> words) =>
        WordLists.Any(words, static word => word is Chains || (word is Work { Stitch.IsOne: false } work && work.Stitch.Tops.CountWhere(static p => p.Kind == PlaceKind.Space) > 0));

    /// <summary>True if chains are made over a gap, which the next row is worked over and no count of stitches tells.</summary>
    public static bool HaveBridges(IReadOnlyList<Word> words) => WordLists.Any(words, static word => word is Bridge);
}
