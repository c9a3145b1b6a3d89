using Turnrow.Compiler.Values;
using Turnrow.Fabric.Stitches;

namespace Turnrow.Compiler.Stitches;

/// <summary>What a word means as a stitch.</summary>
/// <param name="Stitch">The stitch; of a family whose number has to be said, the one of its least number, so that its kind is known.</param>
/// <param name="Family">The family, if a number can be said; else null.</param>
internal readonly record struct StitchMeaning(Stitch Stitch, StitchFamily? Family);

/// <summary>
/// The stitches of a file: the basic ones, then the designer's own, then the standard list's special ones, for which a name of hers goes
/// before ours.
/// </summary>
internal sealed class StitchList(Terms terms, Scope scope)
{
    // Most files define none.
    private Dictionary<string, StitchMeaning?>? _own;

    /// <summary>True if a line that may have defined a stitch could not be read: an unknown stitch then says nothing new.</summary>
    public bool InDoubt { get; set; }

    /// <summary>The names of the designer's own.</summary>
    public IEnumerable<string> Own => _own?.Keys ?? Enumerable.Empty<string>();

    /// <summary>Adds a stitch of the designer's; null if what she wrote is not known, so that its uses say nothing new.</summary>
    public void Define(string word, StitchMeaning? meaning) => (_own ??= new(StringComparer.OrdinalIgnoreCase))[word] = meaning;

    /// <summary>Adds those of another file.</summary>
    public void Take(StitchList other)
    {
        foreach (var (word, meaning) in other._own ?? []) Define(word, meaning);
    }

    /// <summary>True if the designer defined a stitch of this name, whether it was understood or not.</summary>
    public bool IsOwn(string word) => _own is not null && _own.ContainsKey(word);

    /// <summary>What a word means; null if it is no stitch.</summary>
    public StitchMeaning? Find(string word)
    {
        if (StitchBook.Find(word, terms) is { } basic) return new StitchMeaning(basic, null);
        if (_own is not null && _own.TryGetValue(word, out var own)) return own;
        // A line that can't be read may have given one of our names another meaning.
        if (InDoubt || scope.Find(word) is not null) return null;
        if (SpecialStitches.FamilyOf(word) is { } family) return Of(family);
        return SpecialStitches.Find(word) is { } special ? new StitchMeaning(special, null) : null;
    }

    /// <summary>The meaning of a family's word.</summary>
    public static StitchMeaning? Of(StitchFamily family)
    {
        for (var n = family.Usual ?? family.Least; n <= family.Most; n++)
        {
            if (family.Of(n) is { } stitch) return new StitchMeaning(stitch, family);
        }

        return null;
    }
}
