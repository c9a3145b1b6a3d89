using System.Collections.Frozen;

namespace Turnrow.Syntax.Diagnostics;

/// <summary>
/// Words that printed patterns use and the notation says otherwise, each with what to write. Who has read patterns for years types them
/// without a thought, and no spelling help can tell what they mean.
/// </summary>
public static class PrintHabits
{
    private const string Shaping = "shaping over several rows reads: shape 30 rows: dec 1 at both edges every 4 rows; in one row it stands behind `row:`";
    private const string FastenOff = "the yarn is ended by: fasten off";
    private const string Straight = "rows without shaping read: straight 12 rows; any other row stands behind `row:`";
    private const string Rows = "pieces are worked in rows here, and a row begins with `row:`, or `row` and its number";

    private const string RowOfStitches = "the words of a row stand behind `row:` or `row` and its number: row: sc across";
    private const string Joining = "edges are joined by: seam back right side with front left side; what can't be said so is told to the maker behind `>`";

    private static readonly FrozenDictionary<string, string> LineStarts = new Dictionary<string, string>
    {
        ["inc"] = Shaping,
        ["dec"] = Shaping,
        ["increase"] = Shaping,
        ["decrease"] = Shaping,
        ["end"] = FastenOff,
        ["finish"] = FastenOff,
        ["cut"] = FastenOff,
        ["work"] = Straight,
        ["continue"] = Straight,
        ["round"] = Rows,
        ["rounds"] = Rows,
        ["rnd"] = Rows,
        ["rnds"] = Rows,
        ["sc"] = RowOfStitches,
        ["hdc"] = RowOfStitches,
        ["htr"] = RowOfStitches,
        ["dc"] = RowOfStitches,
        ["tr"] = RowOfStitches,
        ["dtr"] = RowOfStitches,
        ["sew"] = Joining,
        ["join"] = Joining,
    }.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    private const string Skip = "write `skip`";
    private const string Brackets = "a repeat stands in brackets, and behind them how often: `(dc 4, inc) 6 times`, `(dc 4, inc) across`";

    private static readonly FrozenDictionary<string, string> RowWords = new Dictionary<string, string>
    {
        ["turn"] = "take it out: rows turn by themselves, rounds where `rounds are joined and turned` says so, and their turning chains are worked out for you",
        ["sk"] = Skip,
        ["miss"] = Skip,
        ["increase"] = "write `inc`",
        ["decrease"] = "write `dec`",
        ["rep"] = Brackets,
        ["repeat"] = Brackets,
    }.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    private static readonly FrozenDictionary<string, string> Units = new Dictionary<string, string>
    {
        ["inch"] = "in",
        ["inches"] = "in",
        ["ins"] = "in",
        ["cms"] = "cm",
        ["centimetre"] = "cm",
        ["centimetres"] = "cm",
        ["centimeter"] = "cm",
        ["centimeters"] = "cm",
        ["yards"] = "yd",
        ["yds"] = "yd",
        ["metres"] = "m",
        ["meters"] = "m",
    }.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    /// <summary>What to write for a word that begins a line in print; null if it is none.</summary>
    public static string? AtLineStart(string word) => LineStarts.GetValueOrDefault(word);

    /// <summary>What to write for a word that stands in the rows of printed patterns; null if it is none.</summary>
    public static string? InRow(string word) => RowWords.GetValueOrDefault(word);

    /// <summary>A unit as it is written here; null if the word is no unit.</summary>
    public static string? Unit(string word) => Units.GetValueOrDefault(word);
}
