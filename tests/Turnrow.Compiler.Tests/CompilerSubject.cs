using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Tests.Naive;
using Turnrow.Fabric.Colours;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using FabricRepeat = Turnrow.Fabric.Words.Repeat;
using FabricWord = Turnrow.Fabric.Words.Word;
using Fact = Turnrow.Compiler.Tests.Naive.RowFact;
using Hand = Turnrow.Fabric.Rows.Hand;
using NaiveHand = Turnrow.Compiler.Tests.Naive.Hand;
using NaiveStretch = Turnrow.Compiler.Tests.Naive.StretchKind;
using Stretch = Turnrow.Fabric.Pieces.Stretch;

namespace Turnrow.Compiler.Tests;

/// <summary>The compiler's row model, told as facts that the naive one can be laid beside.</summary>
public sealed class CompilerSubject : INaiveSubject
{
    public PatternFacts Read(string notationText)
    {
        var compilation = Compilation.Of(new SourceText("random.turnrow", notationText));
        var faults = compilation.Diagnostics.Where(d => d.Kind.Severity == Severity.Error).Select(d => $"{d.Kind.Name}: {d.Message}").ToList();
        var rows = new List<Fact>();
        var edges = new List<EdgeFact>();
        var starts = new List<StartFact>();
        var inner = new List<InnerFact>();
        foreach (var inSizes in compilation.Pattern.Pieces)
        {
            for (var i = 0; i < compilation.Pattern.Sizes.Count; i++)
            {
                var (piece, size) = (inSizes.InSizes[i], compilation.Pattern.Sizes[i]);
                rows.AddRange(piece.Rows.Select(row => RowOf(piece, size, row)));
                edges.Add(new EdgeFact(piece.Name, size, NaiveHand.Right, StretchesOf(piece, Hand.Right)));
                edges.Add(new EdgeFact(piece.Name, size, NaiveHand.Left, StretchesOf(piece, Hand.Left)));
                starts.Add(StartOf(piece, size));
                inner.AddRange(piece.Inner.Select(s => new InnerFact(piece.Name, size, s.FirstRow, s.Kind == Turnrow.Fabric.Pieces.StretchKind.BridgeChain, s.Count, s.Name)));
            }
        }

        var again = compilation.Diagnostics.Where(d => d.Kind == EdgeTwice.Kind).Select(d => LineAt(notationText, d.Span.Start)).Where(line => line.StartsWith("seam", StringComparison.Ordinal));
        return new PatternFacts(faults, rows, edges, starts)
        {
            Inner = inner,
            Seams = [.. compilation.Pattern.Items.OfType<SeamInSizes>().SelectMany(seam => seam.InSizes.Select((one, i) => SeamOf(one, compilation.Pattern.Sizes[i])).OfType<SeamFact>())],
            UsedAgain = [.. again.Distinct()],
        };
    }

    private static string LineAt(string text, int at)
    {
        var start = text.LastIndexOf('\n', at) + 1;
        return text[start..text.IndexOf('\n', at)];
    }

    private static SeamFact? SeamOf(Turnrow.Fabric.Joins.Seam? seam, string size) => seam is null ? null
        : new(size, Said(seam.First.Piece), seam.First.RowEnds, seam.First.Stitches, Said(seam.Second.Piece), seam.Second.RowEnds, seam.Second.Stitches)
        {
            Fold = seam.Fold is not { } fold ? "" : string.Join(' ', Enumerable.Range(0, fold.Pairs).Select(fold.Pair).Select(pair => $"{pair.First}+{pair.Second}").Concat(fold.Alone is { } alone ? [$"{alone}"] : [])),
        };

    // `first-sleeve` is what a designer calls `first sleeve`.
    private static string Said(Piece piece) => piece.Name.Replace('-', ' ');

    // The naive model knows a stitch by its name, from whichever end it is worked.
    private static string? NameOf(Stitch? stitch) => (stitch?.MirrorOf ?? stitch)?.Id;

    private static Fact RowOf(Piece piece, string size, Row row)
    {
        var counts = new Dictionary<string, int>();
        foreach (var kind in row.Work?.Tops.Kinds() ?? [])
        {
            var key = NameOf(kind.Place.Stitch) ?? (kind.Place.Kind == PlaceKind.BridgeChain ? "ch" : "sp");
            counts[key] = counts.GetValueOrDefault(key) + kind.Count;
        }

        return new Fact(
            piece.Name, size, row.Number, row.RightSide ? Side.RS : Side.WS, row.Work?.Stitches ?? -1, counts,
            HandOf(row.StartsAt), HandOf(row.EndsAt), CornersOf(row))
        {
            IsRound = row.IsRound,
            Yarns = YarnsOf(row),
        };
    }

    // From the right edge to the left, place by place.
    private static string YarnsOf(Row row)
    {
        if (row is not { Yarn: { } yarn, Work: { } work }) return "";
        var yarns = new List<string>();
        AddYarns(work.Words, ref yarn, yarns);
        if (row.StartsAt == Hand.Left) yarns.Reverse();
        return RowFact.InRuns(yarns);
    }

    private static void AddYarns(IReadOnlyList<FabricWord> words, ref string yarn, List<string> yarns)
    {
        foreach (var word in words)
        {
            if (word is ChangeYarn change) yarn = change.Yarn;
            else if (word is not FabricRepeat repeat) yarns.AddRange(Enumerable.Repeat(yarn, YarnPlaces.Made(word)));
            else
            {
                foreach (var way in repeat.Ways.Count > 0 ? repeat.Ways : [repeat])
                {
                    for (var i = 0; i < way.Amount.Times; i++) AddYarns(way.Words, ref yarn, yarns);
                }
            }
        }
    }

    private static List<int> CornersOf(Row row)
    {
        var tops = row.StartsAt == Hand.Right ? row.Work?.Tops : row.Work?.Tops.Reversed();
        return tops is null ? [] : [.. Enumerable.Range(1, tops.Count).Where(n => tops.Slice(n - 1, 1).First.IsCorner)];
    }

    private static NaiveHand HandOf(Hand hand) => hand == Hand.Right ? NaiveHand.Right : NaiveHand.Left;

    private static List<StretchFact> StretchesOf(Piece piece, Hand hand) =>
        [.. piece.At(hand).Stretches.Select(s => new StretchFact(KindOf(piece, hand, s), NameOf(s.Stitch) ?? "", s.Count, s.Name ?? ""))];

    private static NaiveStretch KindOf(Piece piece, Hand hand, Stretch stretch)
    {
        if (stretch.Kind == Turnrow.Fabric.Pieces.StretchKind.RowEnds) return NaiveStretch.RowEnd;
        var atStart = piece.Rows[stretch.FirstRow].StartsAt == hand;
        return stretch.Kind == Turnrow.Fabric.Pieces.StretchKind.AddedChain
            ? atStart ? NaiveStretch.AddedChain : NaiveStretch.SeparateChain
            : atStart ? NaiveStretch.SlippedOver : NaiveStretch.Left;
    }

    private static StartFact StartOf(Piece piece, string size) => piece.Start switch
    {
        FoundationStart foundation => new(piece.Name, size, YarnAt.Begun, foundation.Chains, []),
        PartStart part => new(piece.Name, size, part.Joined ? YarnAt.JoinedAnew : YarnAt.GoesOn, null, []),
        PickUpStart pickUp => new(piece.Name, size, pickUp.Joined ? YarnAt.JoinedAnew : YarnAt.GoesOn, null, [.. pickUp.Walk.Where(leg => leg.Stretch.Kind == Turnrow.Fabric.Pieces.StretchKind.RowEnds).SelectMany(RowsOf)]),
        AcrossStart across => new(piece.Name, size, across.Joined ? YarnAt.JoinedAnew : YarnAt.GoesOn, null, []),
        _ => new(piece.Name, size, YarnAt.Begun, null, []),
    };

    private static IEnumerable<int> RowsOf(PickUpLeg leg)
    {
        var rows = Enumerable.Range(leg.Stretch.FirstRow, leg.Stretch.Count);
        return leg.Upwards ? rows : rows.Reverse();
    }
}

/// <summary>The compiler against the naive model.</summary>
public sealed class CompilerAgreesWithNaiveModel : BothModelsAgree
{
    protected override INaiveSubject Subject { get; } = new CompilerSubject();
}
