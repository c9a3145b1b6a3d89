using System.Globalization;
using System.Text;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Charts.Drawing;
using Turnrow.Publishing.Charts.Layout;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Charts;

/// <summary>What a chart says in words: its heading, and the text for those who do not see it.</summary>
internal sealed class ChartText(ChartLayout layout, string size, Terms terms, Counting counting)
{
    private static readonly CultureInfo Culture = CultureInfo.InvariantCulture;

    /// <summary>The heading.</summary>
    public string Heading
    {
        get
        {
            var sized = size.Length == 0 ? string.Empty : $", size {size}";
            return $"{Names.Title(layout.Piece.Name)}{sized} ({(terms == Terms.US ? "US" : "UK")} terms)";
        }
    }

    /// <summary>One sentence that says what a person should see.</summary>
    public string Sight
    {
        get
        {
            var rows = layout.Rows.Count == 1 ? $"1 {Names.Row(layout.Rows[0].Row)}" : string.Create(Culture, $"{layout.Rows.Count} {Names.Row(layout.Rows[^1].Row)}s");
            var folded = layout.Axis.Folds.Count > 0 ? ", its plain middle folded into gaps that say how many" : string.Empty;
            return $"To be seen: {rows} from the foot up, {Stitches(layout.Rows[0].Row)} in the first and {Stitches(layout.Rows[^1].Row)} in the last{folded}; every number where its {Names.Row(layout.Rows[^1].Row)} starts{(layout.Rows.All(static r => r.Row.IsRound) ? string.Empty : ", wrong-side rows shaded")}.";
        }
    }

    /// <summary>The longest line written between the rows.</summary>
    public string Longest
    {
        get
        {
            var longest = BasePainter.Caption(layout.Piece, layout.Rows[0], terms);
            foreach (var band in layout.Bands.OfType<HiddenBand>())
            {
                var text = HiddenPainter.Sentence(band, counting);
                if (text.Length > longest.Length) longest = text;
            }

            return longest;
        }
    }

    /// <summary>The chart in words, band by band.</summary>
    public string Description
    {
        get
        {
            var text = new StringBuilder();
            text.Append("Begins: ").Append(BasePainter.Caption(layout.Piece, layout.Rows[0], terms)).Append('.');
            foreach (var band in layout.Bands)
            {
                if (band is RowBand { Row.Row: var row }) Append(text, row);
                else Append(text, HiddenPainter.Sentence((HiddenBand)band, counting));
            }

            return text.ToString();
        }
    }

    private string Stitches(Row row) => row.Work is { } work ? string.Create(Culture, $"{work.Count(counting)} stitches") : "a number of stitches that is not known";

    private static void Append(StringBuilder text, string sentence) =>
        text.Append(' ').Append(char.ToUpperInvariant(sentence[0])).Append(sentence.AsSpan(1)).Append('.');

    private void Append(StringBuilder text, Row row)
    {
        if (row.IsRound) text.Append(Culture, $" Round {row.Number}: ");
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
