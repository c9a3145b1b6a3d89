using Turnrow.Fabric.Words;

namespace Turnrow.Publishing.Instructions.Telling;

/// <summary>A row's words, parted at the first that works something.</summary>
/// <param name="Skipped">Places skipped before it.</param>
/// <param name="First">The first word that is no skip; null for none.</param>
/// <param name="Rest">The words behind it.</param>
internal sealed record Beginning(int Skipped, Word? First, IReadOnlyList<Word> Rest)
{
    public static Beginning Of(IReadOnlyList<Word> words)
    {
        var unrolled = Leading.Unrolled(words);
        var skipped = 0;
        var at = 0;
        while (at < unrolled.Count && unrolled[at] is Skip skip)
        {
            skipped += skip.Count;
            at++;
        }

        return at < unrolled.Count ? new(skipped, unrolled[at], unrolled[(at + 1)..]) : new(skipped, null, []);
    }

    /// <summary>Places passed over before the first stitch, whether skipped or on the way to its kind of place.</summary>
    public int Passed(RowPlaces places) => Skipped + First switch
    {
        Work { Target.Aim: Aim.EachOfKind } work => places.Until(work.Target.Filter.Has),
        Group { Target.Aim: Aim.EachOfKind } group => places.Until(group.Target.Filter.Has),
        Work work => work.Passed,
        Group group => group.Passed,
        _ => 0,
    };

    /// <summary>The rest where the chain that stands for the first stitch is also the space behind it, alone or as a repeat's beginning.</summary>
    public IReadOnlyList<Word> RestAfter(bool space) => space && Leading.Unrolled(Rest) is [Chains, .. var rest] ? rest : Rest;
}
