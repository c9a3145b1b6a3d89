using Turnrow.Publishing.Instructions.Phrases;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Telling;

/// <summary>What comes again and again in one place is told once: <c>[dc, ch 1] 4 times, dc</c>.</summary>
internal static class SamePhrases
{
    // Twice is as quickly read as "2 times".
    private const int Least = 3;

    /// <summary>The phrases, those that come at least three times on end in a bracket.</summary>
    public static List<Phrase> Folded(List<Phrase> phrases)
    {
        var told = new List<Phrase>(phrases.Count);
        for (var at = 0; at < phrases.Count;)
        {
            var (length, times) = LongestAt(phrases, at);
            if (times < Least)
            {
                told.Add(phrases[at++]);
                continue;
            }

            told.Add(new Repeated(new PhraseList(Folded(phrases.GetRange(at, length))), Sized.Of(times)));
            at += length * times;
        }

        return told;
    }

    // The repeat that takes in most; of those, the shortest.
    private static (int Length, int Times) LongestAt(List<Phrase> phrases, int at)
    {
        var (length, times) = (1, 1);
        for (var next = 2; next * Least <= phrases.Count - at; next++)
        {
            var found = 1;
            while (at + ((found + 1) * next) <= phrases.Count && AreSame(phrases, at, at + (found * next), next)) found++;
            if (found >= Least && found * next > length * times) (length, times) = (next, found);
        }

        return (length, times);
    }

    private static bool AreSame(List<Phrase> phrases, int first, int second, int length)
    {
        for (var i = 0; i < length; i++)
        {
            if (!phrases[first + i].Equals(phrases[second + i])) return false;
        }

        return true;
    }
}
