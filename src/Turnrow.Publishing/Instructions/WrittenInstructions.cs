using Turnrow.Fabric.Colours;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Instructions.Sections;

namespace Turnrow.Publishing.Instructions;

/// <summary>A pattern's written instructions as the trade prints them, in Markdown. All numbers come from the row model.</summary>
public static class WrittenInstructions
{
    /// <summary>The whole text; what the pattern does not give is left out.</summary>
    public static string Write(Pattern pattern, Terms terms)
    {
        var words = new Wording(terms, TurningChains.Of(pattern)) { NamesYarns = YarnsWorked.AreSeveral(pattern), MostFloat = pattern.MostFloat };
        var names = new SizeNames(pattern.Sizes);
        // The work first: it shows which abbreviations and notes are needed.
        var work = WorkSection.Write(pattern, names, words);
        var before = new List<string>();
        before.AddRange(TitleSection.Write(pattern, words));
        before.AddRange(SizesSection.Write(pattern, names, words));
        before.AddRange(MaterialsSection.Write(pattern, words));
        before.AddRange(CautionsSection.Write(pattern));
        var notes = NotesSection.Write(pattern, names, words);
        before.AddRange(AbbreviationsSection.Write(words));
        before.AddRange(notes);
        return string.Join("\n\n", [.. before, .. work]) + "\n";
    }
}
