using Turnrow.Compiler.Claims;
using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Pieces;
using Turnrow.Compiler.Rows;
using Turnrow.Compiler.Values;
using Turnrow.Fabric;
using Turnrow.Fabric.Motifs;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Joins;

/// <summary>Reads <c>blanket throw of tile: 5 across, 7 down, join in each sp</c>, of hexagons <c>5 and 4 across</c> as well.</summary>
internal sealed class BlanketBinder(Context context, PieceBook book)
{
    private const int Most = 1000;

    /// <summary>The blanket; its rim is a piece from there on. Null, and reported, if it can't be made in any size.</summary>
    public BlanketInSizes? Bind(BlanketStatement statement)
    {
        if (context.TryStitch(statement.Name.Text) is not null) context.Findings.Add(NameIsStitch.At(statement.Name.Span, statement.Name.Text));
        if (book.Find(statement.Name.Text) is { } earlier) context.Findings.Add(DefinedTwice.At(statement.Name.Span, statement.Name.Text, earlier.Span));
        var rim = RimOf(statement);
        NameSyntax[] words = [statement.Motif, .. statement.MoreMotifs];
        var motifs = words.Select(book.Bind).OfType<PieceState>().ToList();
        var blankets = motifs.Count == words.Length ? InSizes(statement, motifs, words) : new Blanket?[context.Sizes];
        for (var i = 0; i < blankets.Length; i++)
        {
            if (blankets[i] is { } made)
            {
                rim.Builders[i].Assemble(made.Rim, new Origin(statement));
            }
            else
            {
                rim.Builders[i].BeginUnknown();
                rim.Builders[i].Doubt(true);
            }
        }

        rim.Changed();
        new ClaimBinder(context).CheckRow(rim, new ClaimBinder(context).Bind(statement.Claim));
        book.Add(rim);
        foreach (var motif in motifs) book.JoinedAsTheyGo.Add((rim, motif));
        return Array.Exists(blankets, static b => b is not null) ? new BlanketInSizes(statement.Name.Text, [.. motifs.Select(static m => m.Name)], blankets) : null;
    }

    private PieceState RimOf(BlanketStatement statement)
    {
        var builders = new PieceBuilder[context.Sizes];
        for (var i = 0; i < builders.Length; i++) builders[i] = new PieceBuilder(statement.Name.Text, context.Rules, context.Worked) { Yarn = context.Yarns.First };
        return new PieceState(statement.Name.Text, statement.Name.Span, builders) { Joined = true };
    }

    private Blanket?[] InSizes(BlanketStatement statement, List<PieceState> motifs, NameSyntax[] words)
    {
        var blankets = new Blanket?[context.Sizes];
        var (across, down) = (context.Evaluate.Counts(statement.Across), context.Evaluate.Counts(statement.Down));
        var rowsBetween = statement.Between is { } said ? context.Evaluate.Counts(said) : null;
        var stitch = statement.Stitch is { } word ? context.StitchOf(word) : StitchBook.Slip;
        foreach (var motif in motifs)
        {
            motif.Joined = true;
            book.JoinsInDoubt |= motif.EdgesInDoubt;
        }

        if (motifs.FindIndex(static m => m.Copies.Count > 0) is >= 0 and var several)
        {
            context.Findings.Add(BlanketNumber.Several(words[several].Span, motifs[several].Name));
            return blankets;
        }

        if (Enumerable.Range(1, motifs.Count - 1).FirstOrDefault(i => motifs.IndexOf(motifs[i]) < i) is > 0 and var again)
        {
            context.Findings.Add(BlanketKinds.Twice(words[again].Span, motifs[again].Name));
            return blankets;
        }

        if (!FilterOf(statement.Place, out var between) || stitch is null || motifs.Exists(static m => m.EdgesInDoubt)) return blankets;
        var few = Sized.Where(context.Sizes, i => across[i] is { } a && down[i] is { } d && (a < 1 || d < 1 || a * (long)d < 2 || a > Most || d > Most || rowsBetween?[i] is < 1 or > Most));
        if (few.Length > 0) context.Findings.Add(BlanketNumber.At(context, statement.Across.Span.To(statement.Down.Span), few, i => across[i]!.Value, i => down[i]!.Value, Most));
        var faults = new BlanketFault?[context.Sizes];
        for (var i = 0; i < blankets.Length; i++)
        {
            var made = motifs.ConvertAll(m => m.Finished[i]);
            if (few.Contains(i) || across[i] is not { } a || down[i] is not { } d || (rowsBetween is not null && rowsBetween[i] is null) || made.Exists(static m => m is { Top: null } or { CornersInDoubt: true } || m.Rows[^1].Work is null)) continue;
            (blankets[i], faults[i]) = new BlanketMaker(made, stitch, between, new Origin(statement)).Make(statement.Name.Text, a, rowsBetween?[i], d);
        }

        Report(statement, motifs, words, faults);
        return blankets;
    }

    // Corners are joined in any case; `in each corner` joins nothing else.
    private bool FilterOf(PlaceSyntax place, out PlaceFilter? between)
    {
        between = null;
        if (place is not { Word: PlaceWord.Each, Other: null, Remain: null, ToCorner: false })
        {
            context.Findings.Add(BlanketJoin.Place(place.Span));
            return false;
        }

        if (place is { Kind: [{ Text: "corner" }], AndKind.Count: 0 }) return true;
        if (new PlaceBinder(context).Bind(place) is not { } target) return false;
        between = target.Filter;
        return true;
    }

    private void Report(BlanketStatement statement, List<PieceState> motifs, NameSyntax[] words, BlanketFault?[] faults)
    {
        foreach (var fault in faults.OfType<BlanketFault>().Distinct().ToList())
        {
            var sizes = Sized.Where(context.Sizes, i => faults[i] == fault);
            var (motif, span) = (motifs[fault.Motif], words[fault.Motif].Span);
            var made = motif.Finished[sizes[0]];
            context.Findings.Add(fault.Kind switch
            {
                BlanketFaultKind.NoSuchSides => BlanketMotif.Sides(context, span, sizes, made, motif.Name),
                BlanketFaultKind.RowsUnlike => BlanketRows.At(context, statement.Across.Span.To(statement.Between!.Span), sizes, made, motif.Name),
                BlanketFaultKind.SidesUnlike => BlanketMotif.Unlike(context, span, sizes, made, motif.Name, fault.Side),
                BlanketFaultKind.KindsUnlike => BlanketKinds.Unlike(context, span, sizes, (motifs[0].Name, motifs[0].Finished[sizes[0]]), (motif.Name, made), fault.Side),
                BlanketFaultKind.KindsMissing => BlanketKinds.Missing(context, span, sizes, motif.Name, motifs.Count),
                _ => BlanketJoin.At(context, statement.Place.Span, sizes, fault.Kind, motif.Name),
            });
        }
    }
}
