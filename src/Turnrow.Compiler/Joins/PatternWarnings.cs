using Turnrow.Compiler.Colours;
using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Pieces;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Joins;

/// <summary>Looks at the whole pattern once all of it is read: what is never joined, never used, or turned in two ways in print.</summary>
internal static class PatternWarnings
{
    public static void Add(Context context, PieceBook book, SyntaxTree tree)
    {
        foreach (var piece in book.All) Unworked(context, piece);
        if (!book.InDoubt && !book.JoinsInDoubt)
        {
            Unjoined(context, book);
            if (IsWhole(tree))
            {
                new OpenEdges(context, book).Add();
                PieceGroups.Add(context, book);
            }

            foreach (var piece in book.All)
            {
                UnusedParts(context, piece);
                UnusedHolds(context, book, piece);
            }
        }

        YarnWarnings.Add(context, book);
        if (!context.TurnsInDoubt) HowIsItTurned(context, book, tree);
    }

    // While a pattern is being written, seams are missing because she has not come to them.
    private static bool IsWhole(SyntaxTree tree) => tree.Lines.Any(l => l.Statement is WeaveInStatement);

    private static void Unworked(Context context, PieceState piece)
    {
        if (piece.RowsInDoubt || piece.NamesInDoubt) return;
        var builder = piece.Lead;
        if (builder.RowCount == 0 && piece.MirrorOf is null) context.Findings.Add(PieceEmpty.At(piece.Span, piece.Name));
        if (builder.RowCount == 0) return;
        WaitingCheck.Add(context, piece);
        JoinBinder.CheckRest(context, piece);
        foreach (var inSize in piece.Builders)
        {
            foreach (var step in inSize.UnworkedSteps())
            {
                if (step.Origin.Value is SyntaxNode line) context.Findings.Add(StepUnworked.At(line.Span, step.Adds, piece.Name));
            }
        }
    }

    private static void Unjoined(Context context, PieceBook book)
    {
        var made = book.Made.ToList();
        if (made.Count < 2 || ArePair(book, made)) return;
        foreach (var piece in made)
        {
            if (!piece.Joined && !piece.RowsInDoubt) context.Findings.Add(PieceUnjoined.At(piece.Span, piece.Name));
        }
    }

    // Socks and mittens, of which one is made like the other or mirrors it, are joined to nothing.
    private static bool ArePair(PieceBook book, List<PieceState> made) =>
        made.TrueForAll(static piece => !piece.Joined)
        && (made.TrueForAll(piece => piece.CopyOf is not null && piece.CopyOf == made[0].CopyOf) || (made.Count == 2 && book.MirrorOf(made[0].Name) == made[1]));

    private static void UnusedParts(Context context, PieceState piece)
    {
        foreach (var (name, part) in piece.Parts)
        {
            if (part.Used) continue;
            // Of several that are made alike each has its own to be gone on from.
            var open = piece.Copies.Where(copy => copy.PartNamed(name) is { Used: false }).ToList();
            if (open.Count == piece.Copies.Count) context.Findings.Add(PartUnused.At(part.Span, name, piece.Name));
            else foreach (var copy in open) context.Findings.Add(PartUnused.At(part.Span, name, copy.Name));
        }
    }

    private static void UnusedHolds(Context context, PieceBook book, PieceState piece)
    {
        if (piece.NamesInDoubt) return;
        // Of several that are made alike each has its own to be taken up.
        IReadOnlyList<PieceState> made = piece.Copies.Count > 0 ? piece.Copies : [piece];
        var held = new HashSet<string>();
        foreach (var stretch in piece.Finished.SelectMany(static size => size.Inner))
        {
            if (stretch.Kind == StretchKind.HeldStitches) held.Add(stretch.Name!);
        }

        foreach (var name in held)
        {
            foreach (var one in made)
            {
                var open = Sized.Where(context.Sizes, i => Held(piece, i, name) is not null && !book.Uses.IsUsed(one, i, name));
                if (open.Length > 0) context.Findings.Add(HeldUnused.At(context, HoldSpan(piece, open[0], name), open, one.Name, name));
            }
        }
    }

    private static Stretch? Held(PieceState piece, int size, string name) =>
        piece.Finished[size].Inner.FirstOrDefault(s => s.Kind == StretchKind.HeldStitches && s.Name == name);

    private static TextSpan HoldSpan(PieceState piece, int size, string name)
    {
        var row = piece.Builders[size].Rows[Held(piece, size, name)!.FirstRow - 1];
        var word = row.Work?.Inner.FirstOrDefault(w => w is Hold hold && hold.Name == name);
        return (word?.Origin.Value as SyntaxNode)?.Span ?? piece.Span;
    }

    private static void HowIsItTurned(Context context, PieceBook book, SyntaxTree tree)
    {
        foreach (var piece in book.All)
        {
            foreach (var builder in piece.Builders)
            {
                if (TurnedUnsaid(context, piece, builder.Rows) is not { } unsaid) continue;
                var span = unsaid.Line is RowStatement { Items: [var first, ..] } ? first.Span : unsaid.Line.Span;
                context.Findings.Add(TurnUnsaid.At(span, context.Word(unsaid.Stitch), unsaid.Stitch.Height, FirstPiece(tree), LineEnd(tree.Source)));
                return;
            }
        }
    }

    private static (Stitch Stitch, SyntaxNode Line)? TurnedUnsaid(Context context, PieceState piece, IReadOnlyList<Row> rows)
    {
        for (var i = 0; i < rows.Count; i++)
        {
            // Where no chain stands for the first stitch, as before a puff, nobody asks what it counts.
            if (rows[i].Work?.Opening is not { Counts: true, Stitch: { TurningChainCounts: null } stitch } || context.Rules.ContainsKey(stitch) || context.Rules.ContainsKey(stitch.Rule)) continue;
            if (rows[i].Origin.Value is SyntaxNode line && !piece.Lead.SaysRuleOf(stitch) && !piece.Lead.SaysRuleOf(stitch.Rule)) return (stitch, line);
        }

        return null;
    }

    // Where a line for the whole pattern can be put.
    private static TextSpan FirstPiece(SyntaxTree tree)
    {
        foreach (var line in tree.Lines)
        {
            if (line.Keyword == "piece") return new TextSpan(line.Span.Start, 0);
        }

        return new TextSpan(0, 0);
    }

    private static string LineEnd(SourceText source) => source.Text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
}
