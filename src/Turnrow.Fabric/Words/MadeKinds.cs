using Turnrow.Fabric.Places;
using Turnrow.Fabric.Stitches;

namespace Turnrow.Fabric.Words;

/// <summary>What words make, as far as they tell it without being worked: of a row at fault no more is known.</summary>
public static class MadeKinds
{
    /// <summary>True if they make some stitch and nothing else, so that a count of it counts all places.</summary>
    public static bool AreOnly(IReadOnlyList<Word> words, Stitch stitch)
    {
        for (var i = 0; i < words.Count; i++)
        {
            var only = words[i] switch
            {
                Work work => work.Stitch == stitch && stitch.IsOne,
                Spread spread => spread.Stitch == stitch && AreOnly(spread.Words, stitch),
                ByPlace each => each.InStitch.Stitch == stitch && each.InSpace.Stitch == stitch,
                Group group => AreOnly(group.Words, stitch),
                Repeat repeat => AreOnly(repeat.Words, stitch),
                Chains or Bridge => false,
                _ => true,
            };
            if (!only) return false;
        }

        return words.Count > 0;
    }

    /// <summary>True if any of them makes a space, which a count of stitches leaves out.</summary>
    public static bool HaveSpaces(IReadOnlyList<Word> words)
    {
        for (var i = 0; i < words.Count; i++)
        {
            var has = words[i] switch
            {
                Work work => !work.Stitch.IsOne && work.Stitch.Tops.CountWhere(static p => p.Kind == PlaceKind.Space) > 0,
                Spread spread => HaveSpaces(spread.Words),
                Group group => HaveSpaces(group.Words),
                Repeat repeat => HaveSpaces(repeat.Words),
                Chains => true,
                _ => false,
            };
            if (has) return true;
        }

        return false;
    }

    /// <summary>True if chains are made over a gap, which the next row is worked over and no count of stitches tells.</summary>
    public static bool HaveBridges(IReadOnlyList<Word> words)
    {
        for (var i = 0; i < words.Count; i++)
        {
            if (words[i] is Bridge) return true;
        }

        return false;
    }
}
