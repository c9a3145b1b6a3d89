using System.Globalization;
using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Words;

namespace Turnrow.Compiler.Rows;

/// <summary>Lays a row out as a ledger: what each part takes, makes, and how many stitches there are by then.</summary>
internal sealed class RowLedger(Context context)
{
    private const int MostLines = 14;

    /// <summary>The ledger of a piece's last row in one size; empty if that row is not known.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="size">The size.</param>
    /// <param name="counting">What a claim on it leaves out or takes in.</param>
    /// <param name="counted">What is counted so.</param>
    public IReadOnlyList<string> OfLast(PieceState piece, int size, Counting counting, int counted)
    {
        var builder = piece.Builders[size];
        if (builder.Rows is not [.., { Work: { } work } row]) return [];
        var lines = new List<(string Text, int Takes, int Makes)>();
        if (row.Start is { } start) lines.Add(StepLine(start, row.StartsAt));
        foreach (var word in work.Words) lines.Add((new WordText(context).Of(word), WordCounts.Takes(word), WordCounts.Makes(word)));
        if (row.End is { } end) lines.Add(StepLine(end, row.EndsAt));
        var laid = Lay(Title(piece, row, size), lines, work.Stitches);
        if (counting == Counting.WithoutTurningChain) laid.Add($"without the turning chain: {Number(counted)}");
        if (counting == Counting.WithChains) laid.Add($"with the chains of spaces: {Number(counted)}");
        return laid;
    }

    /// <summary>What the next row has to work over in one size, and how that comes from the last row.</summary>
    public IReadOnlyList<string> OfAhead(PieceState piece, int size)
    {
        var builder = piece.Builders[size];
        if (builder.Rows is not [.., { Work: { } work } row] || builder.Ahead is not { } ahead) return [];
        var change = ahead.Count - work.Tops.Count;
        List<string> lines = [$"{RowName.Of(piece, size, row.Number)} of {piece.Name}{context.Findings.InSize(size)} makes {Number(work.Tops.Count)}"];
        if (change != 0) lines.Add($"{Number(Math.Abs(change))} {(change > 0 ? "added" : "left")} since: {Number(ahead.Count)} for the next row");
        return lines;
    }

    /// <summary>The ledger of the words before a fault, in one size.</summary>
    public IReadOnlyList<string> Of(PieceState piece, IReadOnlyList<Word> words, int row, int places, int size)
    {
        var lines = words.Select(w => (new WordText(context).Of(w), WordCounts.Takes(w), WordCounts.Makes(w))).ToList();
        var title = $"{RowName.Of(piece, size, row)} of {piece.Name}{context.Findings.InSize(size)}, over {Number(places)} places:";
        return Lay(title, lines, null);
    }

    private string Title(PieceState piece, Row row, int size)
    {
        var below = row.Begins switch
        {
            RowBegins.Foundation => $"into {Number(row.Work!.Opening.Chains)} chains",
            RowBegins.FoundationStitches => "each on a chain of its own",
            _ => $"over the {Number(BelowCount(row))} below",
        };
        return $"{RowName.Of(piece, size, row.Number)} of {piece.Name}{context.Findings.InSize(size)}, {below}:";
    }

    private static int BelowCount(Row row) =>
        row.Work!.Below.Count + StepCount(row.Start) + StepCount(row.End);

    private static int StepCount(Step? step) => step is null ? 0 : step.Adds ? -step.Count : step.Count;

    private static (string Text, int Takes, int Makes) StepLine(Step step, Hand hand)
    {
        var edge = step.Edge ?? (hand == Hand.Right ? "right edge" : "left edge");
        return step.Adds ? ($"{Number(step.Count)} chains added at {edge}", -step.Count, 0) : ($"leave {Number(step.Count)} at {edge}", step.Count, 0);
    }

    private static List<string> Lay(string title, List<(string Text, int Takes, int Makes)> lines, int? total)
    {
        var result = new List<string> { title };
        var shown = Math.Min(lines.Count, MostLines);
        var width = 6;
        for (var i = 0; i < shown; i++) width = Math.Max(width, lines[i].Text.Length);
        width = Math.Min(width, 48);
        var (takes, makes) = (0L, 0L);
        for (var i = 0; i < lines.Count; i++)
        {
            takes += lines[i].Takes;
            makes += lines[i].Makes;
            if (i < shown) result.Add($"  {lines[i].Text.PadRight(width)}  {Takes(lines[i].Takes)}  {Makes(lines[i].Makes, makes)}".TrimEnd());
        }

        if (lines.Count > shown) result.Add($"  … and {Number(lines.Count - shown)} more");
        if (total is { } all && lines.Count > 1) result.Add($"  {"in all".PadRight(width)}  {Takes(takes)}  makes {all.ToString(CultureInfo.InvariantCulture)}".TrimEnd());
        return result;
    }

    private static string Takes(long takes) =>
        (takes < 0 ? $"adds {(-takes).ToString(CultureInfo.InvariantCulture)}" : $"takes {takes.ToString(CultureInfo.InvariantCulture)}").PadRight(11);

    private static string Makes(int makes, long sum) =>
        makes == 0 ? string.Empty : $"makes {Number(makes)}".PadRight(11) + $" so far {sum.ToString(CultureInfo.InvariantCulture)}";

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
