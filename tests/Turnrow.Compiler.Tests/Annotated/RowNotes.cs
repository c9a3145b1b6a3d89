using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Tests.Annotated;

/// <summary>The rows that a line made, in each piece: numbers, sides, stitches, hook and steps.</summary>
internal static class RowNotes
{
    public static IEnumerable<string> Of(Compilation compilation, LineSyntax line)
    {
        foreach (var piece in compilation.Pattern.Pieces)
        {
            var rows = piece.InSizes.Select(p => p.Rows.Where(r => IsOf(r, line)).ToList()).ToList();
            if (rows.TrueForAll(r => r.Count == 0)) continue;
            yield return Rows(piece.Name, rows);
            foreach (var hand in new[] { Hand.Right, Hand.Left })
            {
                if (StepsAt(hand, rows) is { } steps) yield return steps;
            }
        }
    }

    private static bool IsOf(Row row, LineSyntax line) =>
        row.Origin.Value is { } made && (ReferenceEquals(made, line.Statement) || ReferenceEquals(made, line));

    private static string Rows(string piece, List<List<Row>> rows)
    {
        var first = InSizes.Text(rows.Select(r => r is [var row, ..] ? $"{row.Number} {(row.RightSide ? "RS" : "WS")}" : "-"));
        var last = InSizes.Text(rows.Select(r => r is [.., var row] ? $"{row.Number} {(row.RightSide ? "RS" : "WS")}" : "-"));
        var numbers = first == last ? $"row {first}" : $"rows {first} to {last}";
        var (from, to) = (InSizes.Text(rows.Select(r => r.Count > 0 ? Counts(r[0]) : "-")), InSizes.Text(rows.Select(r => r.Count > 0 ? Counts(r[^1]) : "-")));
        var stitches = from == to ? to : $"{from}, at the end {to}";
        return $"{piece} {numbers}: {stitches}; opens {InSizes.Text(rows.Select(r => r.Count > 0 ? Opening(r[0]) : "-"))}; hook {InSizes.Text(rows.Select(r => r.Count > 0 ? Name(r[^1].EndsAt) : "-"))}";
    }

    private static string Counts(Row row)
    {
        if (row.Work is not { } work) return "?";
        var kinds = work.Tops.Kinds().GroupBy(k => k.Place.Kind == PlaceKind.Space ? "sp" : k.Place.Stitch?.Id ?? "ch");
        return string.Join(" ", kinds.Select(g => $"{g.Sum(k => k.Count)} {g.Key}"));
    }

    private static string Opening(Row row)
    {
        if (row.Work?.Opening is not { } opening) return "?";
        var into = opening.FirstStitchIn > 0 ? $" in {opening.FirstStitchIn}" : string.Empty;
        return $"{row.Begins} ch {opening.Chains}{(opening.Counts ? " counts" : string.Empty)}{into}";
    }

    private static string? StepsAt(Hand hand, List<List<Row>> rows)
    {
        var steps = rows.Select(r => string.Join(", ", r.Where(x => x.StepAt(hand) is not null).Select(x => StepOf(x, x.StepAt(hand)!, hand)))).ToList();
        return steps.TrueForAll(s => s.Length == 0) ? null : $"  {Name(hand)} edge: {InSizes.Text(steps.Select(s => s.Length == 0 ? "nothing" : s))}";
    }

    private static string StepOf(Row row, Step step, Hand hand)
    {
        var how = (step.Adds, hand == row.StartsAt) switch
        {
            (true, true) => "chains worked on",
            (true, false) => "chains apart",
            (false, true) => "slipped over",
            _ => "left",
        };
        return $"row {row.Number}: {step.Count} {how}{(step.Edge is { } name ? " at " + name : string.Empty)}";
    }

    private static string Name(Hand hand) => hand == Hand.Right ? "right" : "left";
}
