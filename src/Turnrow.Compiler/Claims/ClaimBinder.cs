using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Pieces;
using Turnrow.Compiler.Rows;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Claims;

/// <summary>Reads claims and checks them, in all sizes at once.</summary>
internal sealed class ClaimBinder(Context context)
{
    private static readonly string[] StitchWords = ["st", "sts", "stitch", "stitches"];
    private static readonly string[] SpaceWords = ["sp", "sps", "space", "spaces"];

    /// <summary>The claim with its numbers; null if there is none or it can't be read.</summary>
    public BoundClaim? Bind(ClaimSyntax? claim)
    {
        if (claim is null) return null;
        var parts = new List<(ClaimKind, int?[], ClaimPartSyntax)>();
        foreach (var part in claim.Parts)
        {
            if (KindOf(part.Kind) is not { } kind) return null;
            parts.Add((kind, context.Evaluate.Counts(part.Count), part));
        }

        TakeTheirStitches(parts);

        return parts.Count == 0 ? null : new BoundClaim(claim, CountingOf(claim.Scope), parts);
    }

    /// <summary>Checks a claim on the last row of a line. Where the count was not known, the claim is believed.</summary>
    public void CheckRow(PieceState piece, BoundClaim? claim)
    {
        if (claim is null) return;
        Check(piece, claim, false, i => piece.Builders[i].LastWork is { } work ? (k => ClaimCounting.Of(work, k, claim.Counting)) : null);
        Trust(piece, claim, builder => WordsOf(claim.Syntax, builder));
    }

    /// <summary>Checks a claim on <c>leave</c>, <c>add</c> or a beginning: what the next row has to work over.</summary>
    public void CheckAhead(PieceState piece, BoundClaim? claim)
    {
        if (claim is null) return;
        Check(piece, claim, true, i => piece.Builders[i].Ahead is { } ahead ? (k => ClaimCounting.Ahead(ahead, k)) : null);
        Trust(piece, claim);
    }

    private Counting CountingOf(ClaimScope scope) => scope switch
    {
        ClaimScope.WithoutTurningChain => Counting.WithoutTurningChain,
        ClaimScope.WithChains => Counting.WithChains,
        _ => context.Counting,
    };

    private ClaimKind? KindOf(NameSyntax? word)
    {
        if (word is null || Is(word, StitchWords)) return ClaimKind.Stitches;
        if (Is(word, SpaceWords)) return new ClaimKind(true, null);
        return context.AnyStitchOf(word) is { } meaning ? new ClaimKind(false, meaning.Stitch) : null;
    }

    // A special stitch named in the claim takes its stitches with it: `7 shell, 8 sc` of a row of both.
    private static void TakeTheirStitches(List<(ClaimKind Kind, int?[] Claimed, ClaimPartSyntax Syntax)> parts)
    {
        List<Fabric.Stitches.Stitch>? named = null;
        foreach (var (kind, _, _) in parts)
        {
            if (kind.Stitch is { IsOne: false } special) (named ??= []).Add(special);
        }

        if (named is null) return;
        for (var i = 0; i < parts.Count; i++)
        {
            if (parts[i].Kind is { Stitch.IsOne: true } or { Spaces: true }) parts[i] = parts[i] with { Kind = parts[i].Kind with { Without = named } };
        }
    }

    private static bool Is(NameSyntax word, string[] words) =>
        Array.Exists(words, w => string.Equals(w, word.Text, StringComparison.OrdinalIgnoreCase));

    private void Check(PieceState piece, BoundClaim claim, bool ahead, Func<int, Func<ClaimKind, int>?> countsOf)
    {
        if (context.CountingInDoubt) return;
        var counts = new Func<ClaimKind, int>?[context.Sizes];
        for (var i = 0; i < counts.Length; i++) counts[i] = countsOf(i);
        foreach (var (kind, claimed, syntax) in claim.Parts)
        {
            var calculated = new int?[context.Sizes];
            var difference = new int?[context.Sizes];
            for (var i = 0; i < counts.Length; i++)
            {
                calculated[i] = counts[i]?.Invoke(kind);
                difference[i] = calculated[i] - claimed[i];
            }

            var wrong = Sized.Where(context.Sizes, i => difference[i] is { } d && d != 0);
            if (wrong.Length == 0 || piece.Causes.Explains(difference, true)) continue;
            var followers = piece.Causes.Tell(difference);
            var ledger = ahead ? new RowLedger(context).OfAhead(piece, wrong[0]) : new RowLedger(context).OfLast(piece, wrong[0], claim.Counting, calculated[wrong[0]]!.Value);
            context.Findings.AddLater(() => RowCount.At(context, syntax, kind, ahead, wrong, claimed, calculated, ledger, followers.Claims, ahead ? null : Made(piece, claim, kind, calculated)));
        }
    }

    // What the last row is made of, where that is another stitch than the one claimed: its number in all sizes, and its name.
    private string? Made(PieceState piece, BoundClaim claim, ClaimKind kind, int?[] calculated)
    {
        if (kind.Stitch is null || claim.Parts.Count > 1 || !Array.TrueForAll(calculated, static n => n == 0)) return null;
        var counts = new int?[context.Sizes];
        Stitch? only = null;
        for (var i = 0; i < counts.Length; i++)
        {
            if (piece.Builders[i].Rows is not [.., { Work: { Spaces: 0 } work }] || OnlyStitch(work) is not { } stitch || (only is not null && stitch != only)) return null;
            only = stitch;
            counts[i] = work.Count(claim.Counting);
        }

        return $"{Findings.InBrackets(counts)} {context.Word(only!)}";
    }

    private static Stitch? OnlyStitch(RowWork work)
    {
        Stitch? only = null;
        foreach (var run in work.Tops.Kinds())
        {
            if (run.Place is not { IsStitch: true, Stitch: { } stitch } || (only is not null && stitch != only)) return null;
            only = stitch;
        }

        return only;
    }

    // Those of the last row that the claim's own line made: where the line made none, what it would have made is not known.
    private static IReadOnlyList<Word>? WordsOf(ClaimSyntax claim, PieceBuilder builder) =>
        builder.Rows is [.., { Origin.Value: StatementSyntax line } last] && line.Span.Start <= claim.Span.Start && claim.Span.End <= line.Span.End
        && last.Plan.WordsFrom(last.StartsAt) is { Count: > 0 } words ? words : null;

    /// <summary>Believes a claim where the count is not known, if it tells all places that there are.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="claim">The claim; null for none.</param>
    /// <param name="wordsOf">The words of the row that it is of; null where they can't be read.</param>
    public static void Trust(PieceState piece, BoundClaim? claim, Func<PieceBuilder, IReadOnlyList<Word>?>? wordsOf = null)
    {
        if (claim is null) return;
        for (var i = 0; i < piece.Builders.Length; i++)
        {
            var builder = piece.Builders[i];
            if (builder.Ahead is null && !builder.WaitsForFirstStitch && claim.PlacesIn(i, wordsOf?.Invoke(builder)) is { } stitches) builder.Trust(stitches);
        }

        piece.Changed();
    }
}
