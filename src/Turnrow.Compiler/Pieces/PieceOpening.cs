using Turnrow.Compiler.Claims;
using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Joins;
using Turnrow.Compiler.Values;
using Turnrow.Fabric;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Pieces;

/// <summary>Opens a piece and begins it from what its line names.</summary>
internal sealed class PieceOpening(Context context, PieceBook book)
{
    /// <summary>What each of several is called.</summary>
    public static readonly string[] Ordinals = ["first", "second", "third", "fourth"];

    /// <summary>Which of several a word says, from 0; -1 if it says none.</summary>
    public static int OrdinalOf(NameSyntax word) => Array.FindIndex(Ordinals, nth => string.Equals(nth, word.Text, StringComparison.OrdinalIgnoreCase));

    private const int MostCopies = 4;

    /// <summary>The piece that a line opens. It is there even if the line is wrong.</summary>
    public PieceState Open(PieceStatement statement, bool broken)
    {
        if (!broken) CheckName(statement);
        var builders = new PieceBuilder[context.Sizes];
        for (var i = 0; i < builders.Length; i++) builders[i] = new PieceBuilder(statement.Name.Text, context.Rules, context.Worked) { RoundsAre = context.RoundsAre, Yarn = context.Yarns.First };
        var piece = new PieceState(statement.Name.Text, statement.Name.Span, builders);
        if (statement.Copies is not null) piece.Copies = CopiesOf(piece, statement);
        if (broken)
        {
            BrokenLines.Doubt(piece);
            context.Findings.Quietly(() => CheckClaim(piece, statement));
        }
        else
        {
            Begin(piece, statement);
            CheckClaim(piece, statement);
        }

        book.Add(piece);
        return piece;
    }

    /// <summary>A piece whose own line can't be read: it has no name and is not published, but its rows are counted.</summary>
    public PieceState OpenUnread(TextSpan span)
    {
        var builders = new PieceBuilder[context.Sizes];
        for (var i = 0; i < builders.Length; i++) builders[i] = new PieceBuilder("the piece", context.Rules, context.Worked) { RoundsAre = context.RoundsAre, Yarn = context.Yarns.First };
        var piece = new PieceState("the piece", span, builders);
        BrokenLines.Doubt(piece);
        return piece;
    }

    private IReadOnlyList<PieceState> CopiesOf(PieceState piece, PieceStatement statement)
    {
        var copies = statement.Copies!;
        if (copies.Count is < 2 or > MostCopies) context.Findings.Add(MadeSeveral.Number(copies.Span, copies.Count, MostCopies));
        else if (statement.Origin is MirrorOriginSyntax or AcrossOriginSyntax) context.Findings.Add(MadeSeveral.Begun(copies.Span, piece.Name));
        else return [.. Ordinals.Take(copies.Count).Select(nth => new PieceState($"{nth}-{piece.Name}", piece.Span, piece.Builders) { CopyOf = piece })];
        return [];
    }

    private void CheckName(PieceStatement statement)
    {
        if (context.TryStitch(statement.Name.Text) is not null) context.Findings.Add(NameIsStitch.At(statement.Name.Span, statement.Name.Text));
        if (book.Find(statement.Name.Text) is { } earlier) context.Findings.Add(DefinedTwice.At(statement.Name.Span, statement.Name.Text, earlier.Span));
    }

    private void Begin(PieceState piece, PieceStatement statement)
    {
        switch (statement.Origin)
        {
            case PartOriginSyntax part: BeginPart(piece, part); break;
            case NamedPartOriginSyntax part: BeginNamedPart(piece, part); break;
            case AcrossOriginSyntax across: new AcrossOpening(context, book).Begin(piece, across); break;
            case MirrorOriginSyntax mirror: BeginMirror(piece, mirror, statement); break;
            case PickUpOriginSyntax pickUp: BeginPickUp(piece, pickUp, statement); break;
        }
    }

    private void CheckClaim(PieceState piece, PieceStatement statement)
    {
        var binder = new ClaimBinder(context);
        if (binder.Bind(statement.Claim) is not { } claim) return;
        if (statement.Origin is PickUpOriginSyntax or MirrorOriginSyntax) binder.CheckRow(piece, claim);
        else if (piece.Lead.HasBegun) binder.CheckAhead(piece, claim);
    }

    private void BeginPart(PieceState piece, PartOriginSyntax part)
    {
        var from = book.Bind(part.Piece);
        var counts = context.Evaluate.Counts(part.Stitches, 1);
        var hands = part.Edge.Word == EdgeWord.Both || from is null ? null : EdgeBinder.Bind(context, from, part.Edge);
        if (part.Edge.Word == EdgeWord.Both) context.Findings.Add(PartBothEdges.At(part.Edge.Span));
        if (from is null || hands is null)
        {
            book.JoinsInDoubt = true;
            for (var i = 0; i < counts.Length; i++) BeginInDoubt(piece.Builders[i], counts[i]);
            return;
        }

        var wide = Sized.Where(context.Sizes, i => counts[i] is { } n && from.Finished[i].Top is { } top && n > top.Count);
        if (wide.Length > 0) context.Findings.Add(PartTooWide.At(context, part.Stitches.Span, from, wide, counts, i => from.Finished[i].LastStitches));
        var fromRight = new int?[context.Sizes];
        for (var i = 0; i < fromRight.Length; i++)
        {
            if (counts[i] is { } n && from.Finished[i].Top is { } top && n <= top.Count) fromRight[i] = hands[0] == Hand.Right ? 0 : top.Count - n;
        }

        BeginFrom(piece, from, fromRight, counts, part.Stitches);
    }

    private void BeginNamedPart(PieceState piece, NamedPartOriginSyntax part)
    {
        if (book.Bind(part.Piece) is not { } from)
        {
            piece.Doubt(true);
            return;
        }

        if (!from.Parts.TryGetValue(part.Part.Text, out var named))
        {
            book.JoinsInDoubt = true;
            if (!from.NamesInDoubt) context.Findings.Add(PartUnknown.At(part.Part.Span, part.Part.Text, from.Name, from.Parts.Keys));
            piece.Doubt(true);
            return;
        }

        named.Used = true;
        foreach (var copy in from.Copies) copy.PartNamed(part.Part.Text)!.Used |= piece.Copies.Count > 0;
        BeginFrom(piece, from, named.FromRight.Select(n => (int?)n), named.Count.Select(n => (int?)n), part.Part);
    }

    private void BeginFrom(PieceState piece, PieceState from, int?[] fromRight, int?[] counts, SyntaxNode place)
    {
        // Of several, each goes on from its own of as many.
        if (from.Copies.Count != piece.Copies.Count && !from.Unread) context.Findings.Add(from.Copies.Count > 0 ? MadeSeveral.GoesOn(place.Span, from.Name) : MadeSeveral.Begun(place.Span, piece.Name));
        CheckOverlap(piece, from, fromRight, counts, place);
        from.Joined = piece.Joined = true;
        for (var i = 0; i < context.Sizes; i++)
        {
            var origin = from.Finished[i];
            if (fromRight[i] is not { } right || counts[i] is not { } count || right + count > (origin.Top?.Count ?? int.MaxValue) || origin.Rows.Count == 0)
            {
                BeginInDoubt(piece.Builders[i], counts[i]);
                continue;
            }

            var start = new PartStart(origin, right, count, true);
            var size = i;
            piece.Builders[i].BeginPart(start, hand => from.TakeYarn(size, start, hand));
            if (origin.Top is null) piece.Builders[i].Trust(count);
        }

        piece.Changed();
    }

    // What a part begins with is said by its own line, whatever is wrong with the piece that it goes on from.
    private static void BeginInDoubt(PieceBuilder builder, int? count)
    {
        builder.BeginUnknown();
        builder.Doubt(true);
        if (count is { } stitches) builder.Trust(stitches);
    }

    private void CheckOverlap(PieceState piece, PieceState from, int?[] fromRight, int?[] counts, SyntaxNode place)
    {
        foreach (var (name, right, count) in from.Taken)
        {
            if (!Overlaps(right, count, fromRight, counts)) continue;
            var sizes = Sized.Where(context.Sizes, i => Overlap(right[i], count[i], fromRight[i], counts[i]));
            context.Findings.Add(PartOverlap.At(context, place.Span, sizes, name,
                i => Math.Min(fromRight[i]!.Value + counts[i]!.Value, right[i] + count[i]) - Math.Max(fromRight[i]!.Value, right[i]),
                counts,
                i => from.Finished[i].LastStitches));
            break;
        }

        if (Array.TrueForAll(fromRight, n => n is not null) && Array.TrueForAll(counts, n => n is not null))
            from.Taken.Add((piece.Name, fromRight.Select(n => n!.Value), counts.Select(n => n!.Value)));
    }

    private static bool Overlaps(int[] right, int[] count, int?[] otherRight, int?[] otherCount)
    {
        for (var i = 0; i < right.Length; i++)
        {
            if (Overlap(right[i], count[i], otherRight[i], otherCount[i])) return true;
        }

        return false;
    }

    private static bool Overlap(int right, int count, int? otherRight, int? otherCount) =>
        otherRight is { } from && otherCount is { } many && from < right + count && right < from + many;

    private void BeginPickUp(PieceState piece, PickUpOriginSyntax pickUp, PieceStatement statement)
    {
        var bound = new PickUpBinder(context, book, piece).Bind(pickUp);
        for (var i = 0; i < context.Sizes; i++)
        {
            if (bound?.InSizes[i] is { } start)
            {
                piece.Builders[i].BeginPickUp(start.Start, bound.Stitch, start.Stitches, new Origin(statement));
                if (!start.Start.Joined && book.Find(start.Start.Walk[0].Piece.Name) is { } source) source.YarnTaken[i] = true;
            }
            else
            {
                piece.Builders[i].BeginUnknown();
                piece.Builders[i].WorkInRounds(pickUp.Around);
                piece.Builders[i].Doubt(false);
                piece.Builders[i].WorkRow(new WordsPlan([]), new Origin(statement), 0);
            }
        }

        piece.Joined = true;
        piece.AddRowsPassage(statement);
    }

    private void BeginMirror(PieceState piece, MirrorOriginSyntax mirror, PieceStatement statement)
    {
        if (book.Bind(mirror.Piece) is not { } original)
        {
            piece.NamesInDoubt = true;
            piece.Doubt(true);
            return;
        }

        piece.MirrorOf = original;
        piece.Causes = original.Causes.Further();
        piece.NamesInDoubt = original.NamesInDoubt;
        piece.StepsInDoubt = original.StepsInDoubt;
        piece.Joined = original.Finished[0].Start is PartStart or PickUpStart or AcrossStart;
        if (!context.Rows.Take(original.Builders.Sum(b => (long)b.RowCount), mirror.Span))
        {
            piece.Doubt(true);
            return;
        }

        var beginning = new MirrorBeginning(book, piece, original, mirror.TurnedOver, new Origin(statement));
        for (var i = 0; i < context.Sizes; i++) beginning.Work(i);
        beginning.NoteTaken();
        if (original.Finished[0].Start is PickUpStart) book.Uses.AddMirrored(piece.Builders.Select(b => b.Finish().Start as PickUpStart), book.Find, mirror.Span, context);
        if (beginning.Overlaps.Count > 0) context.Findings.Add(PartOverlap.Mirrored(context, mirror.Piece.Span, [.. beginning.Overlaps.Distinct()], original.Name));
        if (beginning.HeldApart is [var apart, ..]) context.Findings.Add(HeldMirrored.At(context, mirror.Piece.Span, [.. beginning.HeldApart.Select(static h => h.Size)], original.Name, apart.Held, apart.Turned));
        if (beginning.StepsMeet.Count > 0) context.Findings.Add(StepsMeet.Mirrored(context, mirror.Piece.Span, [.. beginning.StepsMeet], original.Name));
        if (original.Finished.SelectMany(static p => p.JoinedTo).FirstOrDefault() is { } joined) context.Findings.Add(JoinMirrored.At(mirror.Piece.Span, original.Name, joined.Edge.Side.Piece.Name));
        else if (beginning.RoundsApart.Count > 0) context.Findings.Add(RoundMirrored.At(context, mirror.Piece.Span, [.. beginning.RoundsApart], original.Name));
        else if (beginning.SameApart is [var same, ..]) context.Findings.Add(SameMirrored.At(context, mirror.Piece.Span, [.. beginning.SameApart.Select(static s => s.Size)], original.Name, same.Row.Number, same.Row.IsRound ? "round" : "row"));
        else if (beginning.TurnsApart.Count > 0) context.Findings.Add(ShortRowMirrored.At(context, mirror.Piece.Span, [.. beginning.TurnsApart], original.Name));
        original.Manners.CopyTo(piece.Manners, 0);
        foreach (var (name, rows) in original.Marks) piece.Marks[name] = rows;
        foreach (var (name, part) in original.Parts)
            piece.Parts[name] = part with { FromRight = Sized.Each(context.Sizes, i => original.Finished[i].LastStitches - part.FromRight[i] - part.Count[i]), Used = false };
        foreach (var passage in original.Passages)
        {
            if (passage is not Turnrow.Fabric.Patterns.ProsePassage) piece.Passages.Add(passage);
        }

        piece.Changed();
    }
}
