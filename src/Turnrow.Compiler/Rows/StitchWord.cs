using System.Globalization;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Rows;

/// <summary>What the words of a stitch say.</summary>
/// <param name="Stitch">The stitch.</param>
/// <param name="Together">Places that it draws together; 1 for an ordinary stitch.</param>
/// <param name="Hook">Where the hook goes.</param>
/// <param name="NameBefore">A count's name in front of it; null for none.</param>
/// <param name="CountWord">A count's name behind it; null for none.</param>
internal sealed record StitchReading(Stitch Stitch, int Together, HookInto Hook, NameSyntax? NameBefore, NameSyntax? CountWord)
{
    /// <summary>The stitches of which it is one by a number; null for a stitch that has none.</summary>
    public StitchFamily? Family { get; init; }

    /// <summary>The stitch a size, where a number makes it another one; null if it is the same in all.</summary>
    public Stitch?[]? Sizes { get; init; }

    /// <summary>True if the amount behind the stitch is that number, so that it is no number of times.</summary>
    public bool AmountIsNumber { get; init; }

    /// <summary>The stitch in a size; null if it is not known.</summary>
    public Stitch? In(int size) => Sizes is null ? Stitch : Sizes[size];
}

/// <summary>Reads a stitch's word: <c>dc</c>, <c>dc3tog</c>, <c>FPdc</c>.</summary>
internal static class StitchWord
{
    private const int MostTogether = 20;

    private static readonly (string Word, HookInto Hook)[] HookWords =
    [
        ("back-loop", HookInto.BackLoop), ("BLO", HookInto.BackLoop), ("BL", HookInto.BackLoop),
        ("front-loop", HookInto.FrontLoop), ("FLO", HookInto.FrontLoop), ("FL", HookInto.FrontLoop),
        ("front-post", HookInto.FrontPost), ("FP", HookInto.FrontPost),
        ("back-post", HookInto.BackPost), ("BP", HookInto.BackPost),
        ("spike", HookInto.OneDown), ("spike-1", HookInto.OneDown), ("spike-2", HookInto.TwoDown), ("spike-3", HookInto.ThreeDown),
    ];

    /// <summary>Where a word says that the hook goes; null if it says no such thing.</summary>
    public static HookInto? HookOf(string word)
    {
        foreach (var (known, hook) in HookWords)
        {
            if (string.Equals(known, word, StringComparison.OrdinalIgnoreCase)) return hook;
        }

        return null;
    }

    /// <summary>The words of the standard list's special stitches, for a slip of spelling.</summary>
    public static IEnumerable<string> Special => SpecialStitches.Families.Select(static f => f.Word).Concat(SpecialStitches.Single.Select(static s => s.Word));

    /// <summary>The stitch that a word means; null if it means none in this file.</summary>
    public static StitchReading? Read(string word, Context context)
    {
        if (context.Stitches.Find(word) is { } known) return new StitchReading(known.Stitch, 1, HookInto.BothLoops, null, null) { Family = known.Family };
        var terms = context.Terms;
        if (ReadTogether(word, terms) is { } together) return together;
        if (word.Length > 2 && HookOf(word[..2]) is { } hook and (HookInto.FrontPost or HookInto.BackPost) && Read(word[2..], context) is { Hook: HookInto.BothLoops } base1)
            return base1 with { Hook = hook };
        return null;
    }

    private static StitchReading? ReadTogether(string word, Terms terms)
    {
        if (!word.EndsWith("tog", StringComparison.OrdinalIgnoreCase)) return null;
        var digits = word.Length - 3;
        while (digits > 0 && char.IsAsciiDigit(word[digits - 1])) digits--;
        if (!int.TryParse(word.AsSpan(digits, word.Length - 3 - digits), NumberStyles.None, CultureInfo.InvariantCulture, out var number)) return null;
        return number is >= 2 and <= MostTogether && StitchBook.Find(word[..digits], terms) is { } stitch
            ? new StitchReading(stitch, number, HookInto.BothLoops, null, null)
            : null;
    }
}
