namespace Turnrow.Compiler.Tests.Naive;

/// <summary>A worked pattern: every piece in every size.</summary>
public sealed class NaiveResult(NaivePattern pattern, IReadOnlyDictionary<(string Piece, int Size), PieceResult> results)
{
    private readonly SeamWork _seams = Joined(pattern, results);

    public IEnumerable<string> Faults => All.Where(r => !r.IsValid).Select(r => r.WhyNot!).Concat(_seams.Faults);

    public bool IsValid => !Faults.Any();

    public bool IsUnclear => All.Any(r => r.IsUnclear);

    private static SeamWork Joined(NaivePattern pattern, IReadOnlyDictionary<(string Piece, int Size), PieceResult> results)
    {
        var seams = new SeamWork(pattern, results);
        if (pattern.Seams.Count > 0 && results.Values.All(result => result.IsValid))
            seams.Join();
        return seams;
    }

    private IEnumerable<PieceResult> All =>
        from piece in pattern.Pieces
        from size in Enumerable.Range(0, pattern.Sizes.Count)
        select results[(piece.Name, size)];

    public PieceResult Of(string piece, int size) => results[(piece, size)];

    public PatternFacts Facts() => new(
        Faults.ToList(),
        All.SelectMany(RowFacts).ToList(),
        All.SelectMany(EdgeFacts).ToList(),
        All.Select(StartFact).ToList())
    {
        Inner = All.SelectMany(InnerFacts).ToList(),
        Seams = _seams.Seams,
        UsedAgain = _seams.UsedAgain,
    };

    private IEnumerable<InnerFact> InnerFacts(PieceResult piece) =>
        piece.Inner.Select(inner => new InnerFact(piece.Piece, pattern.Sizes[piece.Size], inner.Row, inner.IsBridge, inner.Count, inner.Name));

    private IEnumerable<RowFact> RowFacts(PieceResult piece) => piece.Rows.Select(row => new RowFact(
        piece.Piece,
        pattern.Sizes[piece.Size],
        row.Number,
        row.Side,
        row.Stitches,
        row.Places.GroupBy(place => place.BaseStitch).ToDictionary(group => group.Key, group => group.Count()),
        row.Start,
        row.End,
        Enumerable.Range(1, row.Places.Count).Where(n => row.Places[n - 1].IsCorner).ToList())
    {
        IsRound = row.IsRound,
        Yarns = RowFact.InRuns(row.Yarns),
    });

    private IEnumerable<EdgeFact> EdgeFacts(PieceResult piece) =>
        from hand in new[] { Hand.Right, Hand.Left }
        let stretches = piece.Edge(hand).Select(s => new StretchFact(s.Kind, s.Stitch, s.Count, s.Name))
        select new EdgeFact(piece.Piece, pattern.Sizes[piece.Size], hand, stretches.ToList());

    private StartFact StartFact(PieceResult piece) =>
        new(piece.Piece, pattern.Sizes[piece.Size], piece.Yarn, piece.FoundationChains, piece.PickedUpRows);
}
