using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Pieces;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Pieces;

/// <summary>Begins a piece whose first row goes over the last rows of several others: <c>piece yoke across left-front, back, right-front</c>.</summary>
internal sealed class AcrossOpening(Context context, PieceBook book)
{
    /// <summary>Begins the piece in every size.</summary>
    public void Begin(PieceState piece, AcrossOriginSyntax across)
    {
        var named = across.Parts.Select(Bind).ToList();
        var over = named.Select(one => one is null ? null : PartOf(WhichOf(one, named))).ToList();
        if (over.Contains(null))
        {
            book.JoinsInDoubt = true;
            piece.Doubt(true);
            return;
        }

        CheckSides(across, over!);
        foreach (var part in over) CheckOverlap(piece, part!, over!);
        piece.Joined = true;
        for (var i = 0; i < context.Sizes; i++) BeginIn(piece, over!, i);
        piece.Changed();
    }

    private NamedPiece? Bind(AcrossPartSyntax said) =>
        book.Bind(said.Words, out var named) is { } piece ? new NamedPiece(piece, [.. said.Words.Take(named)], [.. said.Words.Skip(named)]) : null;

    // Of a piece that is made several times it has to be said which. Unsaid, it is reported, and the row is counted over the next of them, as it
    // will be once that is written.
    private NamedPiece WhichOf(NamedPiece one, List<NamedPiece?> named)
    {
        if (one.Piece.Copies is not { Count: > 0 } copies) return one;
        var next = copies.FirstOrDefault(copy => copy.Taken.Count == 0 && !named.Exists(n => n?.Piece == copy));
        var mended = Behind(one, copies) ?? one with { Piece = next ?? copies[0] };
        named[named.IndexOf(one)] = mended;
        // Where none is left, the row has it twice whatever is written, and that is told.
        if (next is null && mended.Piece == copies[0]) return mended;
        context.Findings.Add(MadeSeveral.WhichInRow(one.Words[0].Span.To(mended.Words[^1].Span), one.Piece.Name, copies.Count, copies.ToList().IndexOf(mended.Piece)));
        return mended;
    }

    // `sleeve second` for `second sleeve`.
    private static NamedPiece? Behind(NamedPiece one, IReadOnlyList<PieceState> copies) =>
        one.Part.Count > 0 && one.Piece.PartNamed(one.Part[0].Text) is null && PieceOpening.OrdinalOf(one.Part[0]) is var nth and >= 0 && nth < copies.Count
            ? new NamedPiece(copies[nth], [.. one.Words, one.Part[0]], [.. one.Part.Skip(1)])
            : null;

    // A whole last row, or a part of it by its name.
    private AcrossPart? PartOf(NamedPiece one)
    {
        var from = one.Piece;
        from.Joined = true;
        var span = one.Words[0].Span.To((one.Part.Count > 0 ? one.Part : one.Words)[^1].Span);
        if (one.Part is not [var name, ..])
        {
            // Over all of it goes over each part of it too.
            foreach (var partName in from.PartNames) from.PartNamed(partName)!.Used = true;
            return new AcrossPart(from, new int[context.Sizes], Array.ConvertAll(from.Finished, static p => p.LastStitches), span);
        }

        if (one.Part.Count == 1 && from.PartNamed(name.Text) is { } part)
        {
            part.Used = true;
            return new AcrossPart(from, part.FromRight, part.Count, span);
        }

        if (one.Part.FirstOrDefault(word => book.Find(word.Text) is not null || PieceOpening.OrdinalOf(word) >= 0) is { } next && from.PartNamed(next.Text) is null)
            context.Findings.Add(PartUnknown.Comma(next));
        else if (!from.NamesInDoubt)
            context.Findings.Add(PartUnknown.At(name.Span.To(one.Part[^1].Span), string.Join(' ', one.Part.Select(word => word.Text)), from.Name, from.PartNames));
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

    private void CheckOverlap(PieceState piece, AcrossPart part, List<AcrossPart> over)
    {
        foreach (var (name, right, count) in part.From.Taken)
        {
            var sizes = Sized.Where(context.Sizes, i => Both(part, i, right[i], count[i]) > 0);
            if (sizes.Length == 0) continue;
            context.Findings.Add(name == piece.Name
                ? PartOverlap.InOneRow(context, part.Span, sizes, part.From.Name, OtherOf(part.From, over))
                : PartOverlap.At(context, part.Span, sizes, name, i => Both(part, i, right[i], count[i]), part.Count.Select(n => (int?)n), i => part.From.Finished[i].LastStitches, OtherOf(part.From, over)));
            break;
        }

        part.From.Taken.Add((piece.Name, part.FromRight, part.Count));
    }

    // Of several that are made alike, the first from which nothing goes on.
    private static string? OtherOf(PieceState piece, List<AcrossPart> over) =>
        piece.CopyOf is { } model && model.Copies.ToList().FindIndex(copy => copy.Taken.Count == 0 && !over.Exists(part => part.From == copy)) is var nth and >= 0
            ? $"{PieceOpening.Ordinals[nth]} {model.Name}"
            : null;

    private static int Both(AcrossPart part, int size, int right, int count) =>
        Math.Min(part.FromRight[size] + part.Count[size], right + count) - Math.Max(part.FromRight[size], right);

    private sealed record NamedPiece(PieceState Piece, IReadOnlyList<NameSyntax> Words, IReadOnlyList<NameSyntax> Part);

    private sealed record AcrossPart(PieceState From, int[] FromRight, int[] Count, TextSpan Span);
}
