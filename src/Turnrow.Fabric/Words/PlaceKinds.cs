namespace Turnrow.Fabric.Words;

/// <summary>Rows that go to a stitch by its kind, or into a special stitch, have to know more of the row below than how many there are.</summary>
public static class PlaceKinds
{
    /// <summary>True if words go to the next place of some kind, whatever lies before it.</summary>
    public static bool AreLookedFor(IReadOnlyList<Word> words)
    {
        for (var i = 0; i < words.Count; i++)
        {
            if (words[i] is Work { Target.Aim: Aim.NextOfKind or Aim.EachOfKind } or Group { Target.Aim: Aim.NextOfKind or Aim.EachOfKind }) return true;
            if (words[i] is Repeat repeat && AreLookedFor(repeat.Words)) return true;
        }

        return false;
    }

    /// <summary>The kind of place that words go to first, where they name it; null if they go to the next stitch or say it otherwise.</summary>
    internal static PlaceFilter? First(IReadOnlyList<Word> words)
    {
        for (var i = 0; i < words.Count; i++)
        {
            if (WorkedWords.IsIdleUnworked(words[i])) continue;
            switch (words[i])
            {
                case Work { Takes: > 0 } work: return Named(work.Target);
                case Group group: return Named(group.Target);
                case Repeat repeat: return First(repeat.Words);
            }
        }

        return null;
    }

    private static PlaceFilter? Named(Target target) => target.Aim is Aim.NextOfKind or Aim.EachOfKind ? target.Filter : null;

    /// <summary>True if a row's words speak of a kind of stitch, or of spaces.</summary>
    public static bool AreSaid(IReadOnlyList<Word> words)
    {
        for (var i = 0; i < words.Count; i++)
        {
            var said = words[i] switch
            {
                Work work => IsKind(work.Target),
                Group group => IsKind(group.Target),
                Repeat repeat => AreSaid(repeat.Words),
                ByPlace => true,
                _ => false,
            };
            if (said) return true;
        }

        return false;
    }

    private static bool IsKind(Target target) =>
        target.Aim is Aim.NextOfKind or Aim.EachOfKind && target.Filter.Kind is not (PlaceFilterKind.AnyStitch or PlaceFilterKind.StitchOrSpace or PlaceFilterKind.Corner);
}
