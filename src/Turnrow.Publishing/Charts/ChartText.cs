using System.Globalization;
using System.Text;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Charts.Drawing;
using Turnrow.Publishing.Charts.Layout;
using Turnrow.Publishing.Charts.Layout.Rounds;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Charts;

/// <summary>What a chart says in words: its heading, and the text for those who do not see it.</summary>
/// <param name="piece">The piece.</param>
/// <param name="rounds">Its rounds that are drawn round the middle; null for none.</param>
/// <param name="bands">Its rows that are drawn in bands; null for none.</param>
/// <param name="size">The size's name.</param>
/// <param name="terms">The terms.</param>
/// <param name="counting">What a count takes in.</param>
internal sealed class ChartText(Piece piece, RoundStack? rounds, ChartLayout? bands, string size, Terms terms, Counting counting)
{
    private static readonly CultureInfo Culture = CultureInfo.InvariantCulture;

    private readonly RowLayout _first = rounds?.Rounds[0].Row ?? bands!.Rows[0];
    private readonly RowLayout _last = bands?.Rows[^1] ?? rounds!.Rounds[^1].Row;

    /// <summary>The heading.</summary>
    public string Heading
    {
        get
        {
            var sized = size.Length == 0 ? string.Empty : $", size {size}";
            return $"{Names.Title(piece.Name)}{sized} ({(terms == Terms.US ? "US" : "UK")} terms)";
        }
    }

    /// <summary>What the piece begins from.</summary>
    public string Begins => "Begins: " + BasePainter.Caption(piece, _first, terms) + ".";

    /// <summary>Which rounds are left out because they are too many to be drawn round the middle; null for none.</summary>
    public string? LeftOut
    {
        get
        {
            if (rounds is not { Left: > 0 }) return null;
            var (first, last) = (piece.Rows[rounds.Rounds.Count], piece.Rows[rounds.Count - 1]);
            return rounds.Left == 1
                ? string.Create(Culture, $"Not drawn: round {first.Number}, {Stitches(first)}: see the written rounds.")
                : string.Create(Culture, $"Not drawn: rounds {first.Number}–{last.Number}, from {first.Work?.Count(counting)} to {last.Work?.Count(counting)} stitches: see the written rounds.");
        }
    }

    /// <summary>How much of each round is drawn; null if they are drawn whole.</summary>
    public string? PartDrawn => rounds?.Wedge is not var (shown, parts, _) ? null
        : shown == 1 ? string.Create(Culture, $"Drawn: one of {parts} like parts of each round. Work it {parts} times round; the number stands where a round starts.")
        : string.Create(Culture, $"Drawn: {shown} of {parts} like parts of each round, the others are worked alike; the number stands where a round starts.");

    /// <summary>One sentence that says what a person should see.</summary>
    public string Sight
    {
        get
        {
            var count = piece.Rows.Count;
            var rows = count == 1 ? $"1 {Names.Row(_first.Row)}" : string.Create(Culture, $"{count} {Names.Row(_last.Row)}s");
            var way = rounds is null ? "from the foot up"
                : rounds.Left > 0 ? string.Create(Culture, $"the first {rounds.Rounds.Count} from the middle out, the next {rounds.Left} not drawn")
                : bands is null ? "from the middle out"
                : string.Create(Culture, $"the first {rounds.Rounds.Count} from the middle out, the others from the foot up");
            if (rounds?.Wedge is var (shown, parts, _)) way = string.Create(Culture, $"{way}, {shown} of {parts} like parts of each round");
            var folded = bands?.Axis.Folds.Count > 0 ? ", its plain middle folded into gaps that say how many" : string.Empty;
            var shaded = piece.Rows.All(static row => row.IsRound && row.RightSide) ? string.Empty : $", wrong-side {Names.Row(_last.Row)}s shaded";
            return $"To be seen: {rows} {way}, {Stitches(_first.Row)} in the first and {Stitches(_last.Row)} in the last{folded}; every number where its {Names.Row(_last.Row)} starts{shaded}.";
        }
    }

    /// <summary>The longest line written between the rows.</summary>
    public string Longest
    {
        get
        {
            var longest = rounds is null ? BasePainter.Caption(piece, _first, terms) : Begins;
            foreach (var line in BandLines().Concat([PartDrawn ?? string.Empty, LeftOut ?? string.Empty]))
            {
                if (line.Length > longest.Length) longest = line;
            }

            return longest;
        }
    }

    /// <summary>The chart in words, row by row.</summary>
    public string Description
    {
        get
        {
            var text = new StringBuilder(Begins);
            foreach (var round in rounds?.Rounds ?? []) Append(text, round.Row.Row);
            if (PartDrawn is { } part) text.Append(' ').Append(part);
            if (LeftOut is { } leftOut) text.Append(' ').Append(leftOut);
            foreach (var band in bands?.Bands ?? [])
            {
                if (band is RowBand { Row.Row: var row }) Append(text, row);
                else Append(text, HiddenPainter.Sentence((HiddenBand)band, counting));
            }

            return text.ToString();
        }
    }

    private IEnumerable<string> BandLines() => bands?.Bands.OfType<HiddenBand>().Select(band => HiddenPainter.Sentence(band, counting)) ?? [];

    private string Stitches(Row row) => row.Work is { } work ? string.Create(Culture, $"{work.Count(counting)} stitches") : "a number of stitches that is not known";

    private static void Append(StringBuilder text, string sentence) =>
        text.Append(' ').Append(char.ToUpperInvariant(sentence[0])).Append(sentence.AsSpan(1)).Append('.');

    private void Append(StringBuilder text, Row row)
    {
        if (row.IsRound) text.Append(Culture, $" Round {row.Number}{(row.RightSide ? string.Empty : ", wrong side")}: ");
        else text.Append(Culture, $" Row {row.Number}, {(row.RightSide ? "right" : "wrong")} side, from the {(row.StartsAt == Hand.Right ? "right" : "left")}: ");
        if (row.Work is not { } work)
        {
            text.Append("not known.");
            return;
        }

        if (row.Start is { } start) text.Append(StepText(start, "start"));
        var tally = new Tally();
        foreach (var kind in work.Tops.Kinds()) tally.Add(kind.Place.Stitch, kind.Count);
        text.Append(tally.In(terms));
        if (row.Short.Taken > 0) text.Append(Culture, $", the last of them over {row.Short.Taken} left before");
        if (row.Short.Left > 0) text.Append(Culture, $", {row.Short.Left} stitches left for later at its end");
        if (row.End is { } end) text.Append(", ").Append(StepText(end, "end").TrimEnd(' ', ','));
        text.Append('.');
    }

    private static string StepText(Step step, string where) =>
        string.Create(Culture, $"{step.Count} {(step.Adds ? "chains added" : "stitches left")} at its {where}, ");
}
