using Turnrow.Compiler.Pieces;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A line that goes on counts rows where the piece is worked in rounds, or the other way about.</summary>
public static class RowsOrRounds
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "rows-or-rounds",
        "TR0335",
        Severity.Error,
        """
        `straight` and `shape` go on as the last row did. Here that was a round and the line says rows, or that was a row and the line says
        rounds. If the word alone is wrong, change it. If the piece goes over from rounds to rows or back at this point, write the first
        of them out: `row: dc across` is turned and worked back and forth from there, `round: dc around` is joined. A row that says `around`
        can't be meant as one: it would open the tube.
        """,
        SmallPattern.With("Wrist warmer",
            """
            piece cuff
              begin with 30 stitches
              round 1: sc around
              straight 8 rows
            """),
        SmallPattern.With("Wrist warmer",
            """
            piece cuff
              begin with 30 stitches
              round 1: sc around
              straight 8 rounds
            """));

    internal static void Check(Context context, PieceState piece, NameSyntax? word)
    {
        var builder = piece.Lead;
        if (word is null || builder.RowCount == 0 || builder.RowsInDoubt || SaysRounds(word) == builder.InRounds) return;
        var (is_, mend) = builder.InRounds ? ("rounds", word.Text.EndsWith('s') ? "rounds" : "round") : ("rows", word.Text.EndsWith('s') ? "rows" : "row");
        var first = builder.InRounds ? "row: dc across" : "round: dc around";
        context.Findings.Add(new(Kind, word.Span, Invariant($"{piece.Name} is worked in {is_} here, and this line counts {word.Text}"))
        {
            Help = $"write `{mend}`; to change from here on, write the first one out, such as `{first}`",
            Mends = [new Mend($"write {mend}", word.Span, mend)],
        });
    }

    /// <summary>True, and reported, of a row straight behind rounds that says itself that it goes around.</summary>
    internal static bool IsAround(Context context, PieceState piece, RowStatement row)
    {
        var builder = piece.Lead;
        if (row.IsRound || builder.RowsInDoubt || builder.Rows is not [.., { IsRound: true }] || !GoesAround(row.Items)) return false;
        var word = new TextSpan(row.Span.Start, row.Last is null ? "row".Length : "rows".Length);
        var round = row.Last is null ? "round" : "rounds";
        context.Findings.Add(new(Kind, word, $"{piece.Name} is worked in rounds here, and a row that is turned can't go around it")
        {
            Help = $"write `{round}`; to work back and forth from here on, write `across` in place of `around`",
            Mends = [new Mend($"write {round}", word, round)],
        });
        return true;
    }

    private static bool GoesAround(IReadOnlyList<RowItemSyntax> items)
    {
        var open = new Stack<RowItemSyntax>(items);
        while (open.TryPop(out var item))
        {
            if (item is StitchItem { Amount: AcrossAmount { Around: true } } or GroupItem { Times: AcrossAmount { Around: true } }) return true;
            if (item is GroupItem group) foreach (var inside in group.Items) open.Push(inside);
        }

        return false;
    }

    internal static bool SaysRounds(NameSyntax word) => word.Text.StartsWith("rou", StringComparison.OrdinalIgnoreCase);
}
