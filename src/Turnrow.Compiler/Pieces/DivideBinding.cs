using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Values;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Pieces;

/// <summary><c>divide: 22 for left, skip 8, 50 for back, skip 8, 22 for right</c>: a whole row, read from its right edge.</summary>
internal static class DivideBinding
{
    public static void Bind(Context context, PieceState piece, DivideStatement statement)
    {
        Begun.Check(context, piece, statement.Span);
        var sums = Sized.Same<int?>(context.Sizes, 0);
        var all = new List<int?[]>();
        foreach (var part in statement.Parts)
        {
            var counts = context.Evaluate.Counts(part.Stitches, part.Name is null ? 0 : 1);
            all.Add(counts);
            if (part.Name is { } name) Name(context, piece, name, sums, counts);
            for (var i = 0; i < sums.Length; i++) sums[i] += counts[i];
        }

        var wrong = Sized.Where(context.Sizes, i => sums[i] is { } sum && piece.Builders[i].Ahead is { } ahead && ahead.Count != sum);
        if (wrong.Length > 0 && !piece.Causes.Explains(Difference(piece, sums), true))
            context.Findings.Add(DivideSum.At(context, statement, wrong, sums, all, i => piece.Builders[i].Ahead!.Count));
    }

    private static int?[] Difference(PieceState piece, int?[] sums)
    {
        var difference = new int?[sums.Length];
        for (var i = 0; i < sums.Length; i++) difference[i] = piece.Builders[i].Ahead?.Count - sums[i];
        return difference;
    }

    private static void Name(Context context, PieceState piece, NameSyntax name, int?[] before, int?[] counts)
    {
        if (piece.Parts.TryGetValue(name.Text, out var earlier))
        {
            context.Findings.Add(DefinedTwice.At(name.Span, name.Text, earlier.Span));
            return;
        }

        if (!Array.TrueForAll(before, n => n is not null) || !Array.TrueForAll(counts, n => n is not null))
        {
            piece.NamesInDoubt = true;
            return;
        }

        piece.Parts[name.Text] = new NamedPart(before.Select(n => n!.Value), counts.Select(n => n!.Value), name.Span);
    }
}
