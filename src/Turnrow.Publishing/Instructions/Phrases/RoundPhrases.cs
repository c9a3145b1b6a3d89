using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Phrases;

/// <summary>A foundation chain that is joined into a ring.</summary>
internal sealed record MakeRing(Sized<int> Chains) : Phrase
{
    protected override Phrase? Join(Phrase other) => other is MakeRing ring ? new MakeRing(Chains.And(ring.Chains)) : null;

    protected override string Text(Wording words) =>
        $"{words.Ch} {Chains.Written()}, join with {words.SlipStitch} in first {words.Ch} to form a ring, without twisting the chain";
}

/// <summary>Rows go over into rounds: the last row's end is joined to its beginning.</summary>
/// <param name="OfFoundation">True if that row makes its own foundation: it is all there is, so it twists easily, and a gap is left at its foot.</param>
internal sealed record JoinToRound(bool OfFoundation) : Phrase
{
    /// <summary>After a row.</summary>
    public static JoinToRound After(Row row) => new(row.Begins == RowBegins.FoundationStitches);

    protected override Phrase? Join(Phrase other) => Equals(other) ? this : null;

    protected override string Text(Wording words) => OfFoundation
        ? $"do not turn; taking care not to twist the row, join with {words.SlipStitch} in its first {words.St}, and work in rounds from here; the yarn end closes the gap below the join later"
        : $"do not turn; join with {words.SlipStitch} in the first {words.St} of the last row, and work in rounds from here";
}

/// <summary>Where a round is joined.</summary>
internal enum RoundJoin : byte
{
    /// <summary>In the top of the chain that stands for its first stitch.</summary>
    TopOfChain,

    /// <summary>In the top of the chains skipped at the beginning of the foundation, which stand for its first stitch.</summary>
    TopOfSkipped,

    /// <summary>In its first stitch.</summary>
    FirstStitch,

    /// <summary>In the stitch that is one decrease with the chain before it, which has no top of its own.</summary>
    BesideChain,

    /// <summary>In the space that it begins with.</summary>
    FirstSpace,
}

/// <summary>The end of a round is joined to its beginning.</summary>
/// <param name="At">Where.</param>
/// <param name="Stitch">Its first stitch, where that is one by itself; else null.</param>
/// <param name="Nth">Where the chain is longer than the stitch that it stands for, which of its chains is that stitch's top; else 0.</param>
/// <param name="Chains">The chain's length.</param>
internal sealed record JoinRound(RoundJoin At, Stitch? Stitch, int Nth, int Chains) : Phrase
{
    protected override Phrase? Join(Phrase other) => Equals(other) ? this : null;

    protected override string Text(Wording words) => $"join with {words.SlipStitch} in {Place(words)}";

    private string Place(Wording words) => At switch
    {
        RoundJoin.TopOfChain when Nth > 0 => $"{Numbers.Nth(Nth)} {words.Ch} of {words.Ch}-{Numbers.Plain(Chains)}",
        RoundJoin.TopOfChain => $"top of {words.Ch}-{Numbers.Plain(Chains)}",
        RoundJoin.TopOfSkipped => $"top of {words.ChainAtStart(true)}",
        RoundJoin.BesideChain => $"first {words.Stitch(Stitch!)} and not in the {words.Ch}",
        RoundJoin.FirstSpace => $"the {words.Ch}-{Numbers.Plain(Chains)} {words.Sp} at its beginning",
        _ => $"first {(Stitch is null ? words.St : words.Stitch(Stitch))}",
    };
}

/// <summary>A round is left open, since rows follow that go back over it.</summary>
internal sealed record DoNotJoin : Phrase
{
    protected override Phrase? Join(Phrase other) => Equals(other) ? this : null;

    protected override string Text(Wording words) => "do not join";
}

/// <summary>Stitches inside a row that are kept for another piece.</summary>
internal sealed record HoldPlaces(Sized<int> Count, PlaceName Place, string Name, bool FromFirst) : Phrase
{
    protected override Phrase? Join(Phrase other) =>
        other is HoldPlaces hold && hold.Name == Name && hold.FromFirst == FromFirst && Place.And(hold.Place) is { } place
            ? this with { Count = Count.And(hold.Count), Place = place }
            : null;

    protected override string Text(Wording words)
    {
        var places = Count.All(static n => n == 1) ? Place.One(words) : Place.Counted(Count, words);
        return $"{words.Terms.Skip} {(FromFirst ? "first" : "next")} {places} ({words.Noting(Note.HeldStitches, "held for")} {Names.Words(Name)})";
    }
}

/// <summary>Chains over a gap, each of which the next row is worked into.</summary>
internal sealed record BridgeOver(Sized<int> Chains, string? Name) : Phrase
{
    protected override Phrase? Join(Phrase other) =>
        other is BridgeOver bridge && bridge.Name == Name ? this with { Chains = Chains.And(bridge.Chains) } : null;

    protected override string Text(Wording words) =>
        $"{words.Ch} {Chains.Written()} {(Name is null ? "over the gap" : $"for {Names.Words(Name)}")}";
}

/// <summary>The row goes over the last rows of several pieces.</summary>
/// <param name="RightSide">True if their right sides face.</param>
/// <param name="Pieces">The pieces in working order, with their stitches that it goes over.</param>
internal sealed record OverPieces(bool RightSide, IReadOnlyList<(string Piece, LastStitches Stitches)> Pieces) : Phrase
{
    public bool Equals(OverPieces? other) =>
        other is not null && base.Equals(other) && other.RightSide == RightSide && Pieces.SequenceEqual(other.Pieces);

    public override int GetHashCode() => HashCode.Combine(RightSide, Pieces.Count);

    protected override Phrase? Join(Phrase other)
    {
        if (other is not OverPieces over || over.RightSide != RightSide || over.Pieces.Count != Pieces.Count) return null;
        var all = new List<(string, LastStitches)>();
        for (var i = 0; i < Pieces.Count; i++)
        {
            if (over.Pieces[i].Piece != Pieces[i].Piece || over.Pieces[i].Stitches.IsRound != Pieces[i].Stitches.IsRound) return null;
            all.Add((Pieces[i].Piece, Pieces[i].Stitches.And(over.Pieces[i].Stitches)));
        }

        return this with { Pieces = all };
    }

    protected override string Text(Wording words)
    {
        var parts = Pieces.Select(p => Part(p.Piece, p.Stitches, words)).ToList();
        var counted = Pieces.All(static p => p.Stitches.IsAll) ? string.Empty
            : $" ({words.Sts} are counted from the {(Pieces.All(static p => p.Stitches.IsRound) ? "beginning of the round" : words.Edge(RightSide ? Hand.Right : Hand.Left))}{(IsAll ? string.Empty : "; those between stay unworked")})";
        var (held, whose) = IsOne ? (Names.Title(Pieces[0].Piece), $"its last {Rows[..^1]}") : ("these pieces side by side", $"their last {Rows}");
        return $"hold {held} with {words.Side(RightSide)} facing and work over {whose} as one, in this order: {Wording.List(parts)}{counted}";
    }

    private bool IsOne => Pieces.All(p => p.Piece == Pieces[0].Piece);

    // In every size each piece is worked over whole, be it in parts.
    private bool IsAll => Pieces.GroupBy(static p => p.Piece).All(static parts =>
    {
        var all = parts.First().Stitches.All.Values;
        return all.Select((stitches, size) => parts.Sum(p => p.Stitches.Last.Values[size] - p.Stitches.First.Values[size] + 1) == stitches).All(static whole => whole);
    });

    private string Rows => Pieces.All(static p => p.Stitches.IsRound) ? "rounds" : "rows";

    private static string Part(string piece, LastStitches stitches, Wording words) => stitches.IsAll
        ? $"all {PlaceName.AnyStitch.Counted(stitches.Last, words)} of {Names.Title(piece)}"
        : $"{(stitches.First.Equals(stitches.Last) ? words.St : words.Sts)} {stitches.First.WrittenTo(stitches.Last)} of {Names.Title(piece)}";
}
