using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Pieces;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Pieces;

/// <summary>Begins a piece whose first row goes over the last rows of several others: <c>piece yoke across left-front, back, right-front</c>.</summary>
internal sealed class AcrossOpening(Context context, PieceBook book)
{
    /// <summary>Begins the piece in every size.</summary>
    public void Begin(PieceState piece, AcrossOriginSyntax across)
    {
        var over = across.Parts.Select(PartOf).ToList();
        if (over.Contains(null))
        {
            book.JoinsInDoubt = true;
            piece.Doubt(true);
            return;
        }

        CheckSides(across, over!);
        foreach (var (part, said) in over.Zip(across.Parts)) CheckOverlap(piece, part!, said);
        piece.Joined = true;
        for (var i = 0; i < context.Sizes; i++) BeginIn(piece, over!, i);
        piece.Changed();
    }

    // A whole last row, or a part of it by its name.
    private AcrossPart? PartOf(AcrossPartSyntax said)
    {
        if (book.Bind(said.Piece) is not { } from) return null;
        if (from.Copies.Count > 0) context.Findings.Add(MadeSeveral.GoesOn(said.Span, from.Name));
        from.Joined = true;
        if (said.Part is not { } name)
            return new AcrossPart(from, new int[context.Sizes], Array.ConvertAll(from.Finished, static p => p.LastStitches));
        if (from.Parts.TryGetValue(name.Text, out var part))
        {
            part.Used = true;
            return new AcrossPart(from, part.FromRight, part.Count);
        }

        if (!from.NamesInDoubt) context.Findings.Add(PartUnknown.At(name.Span, name.Text, from.Name, from.Parts.Keys));
        return null;
    }

    private void BeginIn(PieceState piece, List<AcrossPart> over, int size)
    {
        var builder = piece.Builders[size];
        var parts = new List<PartStart>();
        foreach (var part in over)
        {
            var made = part.From.Finished[size];
            if (made.Rows.Count == 0 || made.Top is null || part.FromRight[size] + part.Count[size] > made.LastStitches)
            {
                builder.BeginUnknown();
                builder.Doubt(true);
                return;
            }

            parts.Add(new PartStart(made, part.FromRight[size], part.Count[size], true));
        }

        var across = new AcrossStart(parts, true);
        builder.BeginAcross(across, hand => book.Find(across.First(hand).Base.Name)!.TakeYarn(size, across.First(hand), hand, parts.Count == 1));
    }

    // What ends in rounds may go on either way; of the others all have to face alike.
    private void CheckSides(AcrossOriginSyntax across, List<AcrossPart> over)
    {
        for (var at = 1; at < over.Count; at++)
        {
            var (first, second) = (over[0].From, over[at].From);
            if (first.RowsInDoubt || second.RowsInDoubt) continue;
            var apart = Sized.Where(context.Sizes, i => Faces(first.Finished[i]) is { } a && Faces(second.Finished[i]) is { } b && a != b);
            if (apart.Length == 0) continue;
            context.Findings.Add(AcrossSides.At(context, across.Parts[at].Span, apart, first.Name, second.Name, first.Finished[apart[0]].EndsOnRightSide));
            return;
        }
    }

    private static bool? Faces(Piece piece) => piece.Rows.Count == 0 || piece.EndsInRounds ? null : piece.EndsOnRightSide;

    private void CheckOverlap(PieceState piece, AcrossPart part, AcrossPartSyntax said)
    {
        foreach (var (name, right, count) in part.From.Taken)
        {
            var sizes = Sized.Where(context.Sizes, i => Both(part, i, right[i], count[i]) > 0);
            if (sizes.Length == 0) continue;
            context.Findings.Add(PartOverlap.At(context, said.Span, sizes, name, i => Both(part, i, right[i], count[i]),
                part.Count.Select(n => (int?)n), i => part.From.Finished[i].LastStitches));
            break;
        }

        part.From.Taken.Add((piece.Name, part.FromRight, part.Count));
    }

    private static int Both(AcrossPart part, int size, int right, int count) =>
        Math.Min(part.FromRight[size] + part.Count[size], right + count) - Math.Max(part.FromRight[size], right);

    private sealed record AcrossPart(PieceState From, int[] FromRight, int[] Count);
}
