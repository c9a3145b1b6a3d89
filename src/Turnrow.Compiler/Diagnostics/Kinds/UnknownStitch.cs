using Turnrow.Compiler.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A word that is no stitch.</summary>
public static class UnknownStitch
{
    private static readonly string[] s_manners = ["back-loop", "front-loop", "front-post", "back-post", "spike"];

    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "unknown-stitch",
        "TR0202",
        Severity.Error,
        """
        A word stands where a stitch should, and no stitch is called so in the terms of this pattern. Until it is known how many stitches
        below it takes and how many it makes, the row can't be counted. Look for a slip of spelling first. Stitches are written by their
        abbreviation: `ch`, `sl st`, `sc`, `hdc`, `dc`, `tr`, `dtr`, `trtr` in US terms; several drawn together are `dc2tog`, `dc3tog` and so on.
        A stitch of your own is defined before it is used: `stitch shell is (5 dc) in one place`.

        Tip: `inc` and `dec` need no stitch in front of them if the row has only one kind.
        """,
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with 20 stitches
              row 1 RS: dc across
              row 2: dv across
            """),
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with 20 stitches
              row 1 RS: dc across
              row 2: dc across
            """));

    internal static Diagnostic At(TextSpan span, string word, IReadOnlyList<StitchName> known, IEnumerable<string> own)
    {
        if (known.FirstOrDefault(s => IsNamed(s, word)) is { } meant)
        {
            return new(Kind, span, $"`{word}` is not a stitch as it is written here")
            {
                Help = $"stitches are written by their abbreviation: `{meant.Abbreviation}`",
                Mends = [new Mend($"write {meant.Abbreviation}", span, meant.Abbreviation)],
            };
        }

        var stitches = known.Select(static s => s.Abbreviation).ToList();
        if (PrintHabits.InRow(word) is { } habit) return new(Kind, span, $"`{word}` is not a stitch") { Help = habit };
        if (OnItsOwnChain(word, known) is { } foundation) return new(Kind, span, $"`{word}` begins a piece and is no word of a row") { Help = $"write `begin with 40 foundation {foundation.Abbreviation}`: that makes the foundation and row 1" };
        var near = Spelling.Nearest(word, [.. stitches, .. own, .. StitchWord.Special]);
        return new(Kind, span, $"`{word}` is not a stitch")
        {
            Help = near is null ? $"stitches in these terms: {string.Join(", ", stitches)}" : $"did you mean `{near}`?",
            Mends = near is null ? [] : [new Mend($"write {near}", span, near)],
        };
    }

    internal static Diagnostic Manner(TextSpan span, string word) => StitchWord.HookOf(word) is not null
        ? new(Kind, span, $"`{word}` stands behind another word that says how the stitch is worked")
        {
            Help = "a stitch is worked in one way: take one of the two out",
        }
        : Spelling.Nearest(word, s_manners) is { } near ? new(Kind, span, $"`{word}` says nothing of how a stitch is worked")
        {
            Help = $"did you mean `{near}`?",
            Mends = [new Mend($"write {near}", span, near)],
        }
        : new(Kind, span, $"`{word}` says nothing of how a stitch is worked")
        {
            Help = PrintHabits.InRow(word) ?? "in front of a stitch may stand one of `back-loop`, `front-loop`, `front-post`, `back-post`, `spike`, `spike-2` and `spike-3`",
        };

    // `fsc`: the foundation and the first row at once.
    private static StitchName? OnItsOwnChain(string word, IReadOnlyList<StitchName> known) =>
        word.Length > 2 && word[0] is 'f' or 'F' ? known.FirstOrDefault(s => s.Abbreviation is not ("ch" or "sl st") && string.Equals(s.Abbreviation, word[1..], StringComparison.OrdinalIgnoreCase)) : null;

    // `treble` for a treble; a word that only begins the name, as `double` does, could be several.
    private static bool IsNamed(StitchName stitch, string word) =>
        string.Equals(stitch.Name, word, StringComparison.OrdinalIgnoreCase)
        || string.Equals(stitch.Name, word + " crochet", StringComparison.OrdinalIgnoreCase);
}
