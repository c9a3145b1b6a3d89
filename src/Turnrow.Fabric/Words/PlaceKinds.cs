namespace Turnrow.Fabric.Words;

/// <summary>Rows that go to a stitch by its kind, or into a special stitch, have to know more of the row below than how many there are.</summary>
public static class PlaceKinds
{
    /// <summary>True if words go to the next place of some kind, whatever lies before it.</summary>
    public static bool AreLookedFor(IReadOnlyList<Word> words) =>
        WordLists.Any(words, static word => word.GoesTo is { Aim: Aim.NextOfKind or Aim.EachOfKind }, static word => word is ByPlace);

    /// <summary>True if a row's words speak of a kind of stitch, or of spaces.</summary>
    public static bool AreSaid(IReadOnlyList<Word> words) => WordLists.Any(words, static word => word.GoesTo is { } target && IsKind(target));

    /// <summary>The kind of place that words go to first, where they name it; null if they go to the next stitch or say it otherwise.</summary>
    internal static PlaceFilter? First(IReadOnlyList<Word> words) =>
        WordLists.First(words, static word => word is Work { Takes: > 0 } or Group, WorkedWords.IsIdleUnworked)?.GoesTo is { Aim: Aim.NextOfKind or Aim.EachOfKind } target
            ? target.Filter
            : null;

    private static bool IsKind(Target target) =>
        target.Aim is Aim.NextOfKind or Aim.EachOfKind && target.Filter.Kind is not (PlaceFilterKind.AnyStitch or PlaceFilterKind.StitchOrSpace or PlaceFilterKind.Corner);
}
