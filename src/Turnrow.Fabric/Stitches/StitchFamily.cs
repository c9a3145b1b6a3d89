using System.Globalization;

namespace Turnrow.Fabric.Stitches;

/// <summary>
/// Stitches that differ in a number alone, as shells of 5 and of 7 do. There is one object for each number.
/// </summary>
/// <param name="word">The word for it in a row: <c>bobble</c>.</param>
/// <param name="abbreviation">What print writes; null for the word itself.</param>
/// <param name="usual">The number meant where none is said; null if one has to be.</param>
/// <param name="least">The least number that makes sense.</param>
/// <param name="most">The greatest.</param>
/// <param name="make">Makes the stitch of a number, by its names.</param>
public sealed class StitchFamily(string word, string? abbreviation, int? usual, int least, int most, Func<int, string, StitchName, StitchName, Stitch?> make)
{
    private readonly Dictionary<int, Stitch> _known = [];

    /// <summary>The word for it.</summary>
    public string Word { get; } = word;

    /// <summary>What print writes.</summary>
    public string Abbreviation { get; } = abbreviation ?? word;

    /// <summary>The number meant where none is said; null if one has to be.</summary>
    public int? Usual { get; } = usual;

    /// <summary>The least number that makes sense.</summary>
    public int Least { get; } = least;

    /// <summary>The greatest.</summary>
    public int Most { get; } = most;

    /// <summary>The stitch whose number it is, for its name in print: 7-tr fan; null for none, as of a stitch that is made of others by its number: fan of 7.</summary>
    public Stitch? Counted { get; init; }

    /// <summary>The family that has the mirror image of each of its stitches; null if the stitches themselves tell it.</summary>
    public Func<StitchFamily>? Mirrored { get; init; }

    /// <summary>Its name in full.</summary>
    public string Name { get; init; } = word;

    /// <summary>The stitch of a number; null if there is none.</summary>
    public Stitch? Of(int number)
    {
        if (number < Least || number > Most) return null;
        lock (_known)
        {
            if (_known.TryGetValue(number, out var known)) return known;
            var id = number == Usual ? Word : $"{Word} of {Plain(number)}";
            if (make(number, id, NameIn(Terms.US, number), NameIn(Terms.UK, number)) is not { } stitch) return null;
            stitch.Family = this;
            stitch.Number = number;
            return _known[number] = stitch;
        }
    }

    private StitchName NameIn(Terms terms, int number)
    {
        if (number == Usual) return new(Abbreviation, Name);
        if (Counted is not { } counted) return new($"{Abbreviation} of {Plain(number)}", $"{Name} of {Plain(number)}");
        var before = counted == StitchBook.Chain ? $"{counted.In(terms).Abbreviation}-{Plain(number)}" : $"{Plain(number)}-{counted.In(terms).Abbreviation}";
        return new($"{before} {Abbreviation}", $"{Name} of {Plain(number)}");
    }

    private static string Plain(int number) => number.ToString(CultureInfo.InvariantCulture);
}
