using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Pieces;

/// <summary>How many rows <c>12 rows</c>, <c>to 20 cm from armhole, even rows</c> or <c>for 6 cm</c> are, in every size.</summary>
internal sealed class RowsWanted(Context context, PieceState piece, RowExtentSyntax extent)
{
    /// <summary>The rows; null, and reported, in a size where they can't be told.</summary>
    public int?[] Count(Onward[] onward)
    {
        CheckSides();
        if (PlainCheck.NothingToGoOnWith(piece, onward)) return Sized.Same<int?>(context.Sizes, null);
        var marks = MarkOf();
        if (extent.From is not null && marks is null) return Sized.Same<int?>(context.Sizes, null);
        if (extent.Extent == StraightExtent.Rows) return GivenRows(marks);
        var lengths = context.Evaluate.Lengths(extent.Amount);
        return OfLength(onward.Select((o, i) => GaugeOf(o.Fabric, i)).ToArray(), lengths, marks);
    }

    // Rounds are worked with the same side facing, so none of them ends on another.
    private void CheckSides()
    {
        var sizes = Sized.Where(context.Sizes, i => context.Here.Has(i) && piece.Builders[i] is { InRounds: true, RowCount: > 0, RowsInDoubt: false, RoundsAre: not RoundWay.Turned });
        if (sizes.Length == 0) return;
        foreach (var fix in extent.Fixes)
        {
            if (IsSide(fix)) context.Findings.Add(RowsFix.InRounds(context, fix, sizes, piece.Builders[sizes[0]].NextIsRightSide));
        }
    }

    private static bool IsSide(RowFixSyntax fix) => fix.Fix is RowFix.EndRightSide or RowFix.EndWrongSide;

    private Gauge? GaugeOf(Stitch? stitch, int size)
    {
        if (stitch is null || !context.Here.Has(size)) return null;
        var gauge = context.Gauges.Of(stitch);
        if (gauge is null && !context.GaugesInDoubt) context.Findings.Add(GaugeMissing.At(extent.Amount.Span, context.Word(stitch)));
        return gauge;
    }

    private int?[] OfLength(
        Gauge?[] gauges, Rational?[] lengths, int?[]? marks)
    {
        var (passed, large) = (new List<int>(), new List<int>());
        var heights = new HeightsSoFar(context, piece, extent);
        var so = new Rational?[context.Sizes];
        var counts = new int?[context.Sizes];
        for (var i = 0; i < counts.Length; i++)
        {
            var builder = piece.Builders[i];
            if (lengths[i] is not { } length || gauges[i] is not { } gauge || builder.RowsInDoubt || (marks is not null && marks[i] is null)) continue;
            var since = (marks?[i] ?? 1) - 1;
            var height = extent.Extent == StraightExtent.To ? heights.Of(i, since) : Rational.Zero;
            so[i] = height;
            if (height is not { } done) continue;
            if (length - done is not { } left || gauge.RowsFor(left) is not { } exact)
            {
                large.Add(i);
                continue;
            }

            if (AllowedRows(extent.Extent == StraightExtent.To ? builder.RowCount - since : 0, builder) is not { } allowed) continue;
            var rows = allowed.Nearest(exact);
            if (rows < 0) passed.Add(i);
            else counts[i] = (int)Math.Min(rows, int.MaxValue);
        }

        heights.Report();
        if (large.Count > 0) context.Findings.Add(TooLarge.At(extent.Amount.Span, context.Findings, large, Evaluator.LargestCount));
        if (passed.Count > 0) context.Findings.Add(LengthPassed.At(context, extent.Amount.Span, [.. passed], i => so[i]!.Value, i => lengths[i]!.Value, marks is not null));
        return counts;
    }

    private int?[] GivenRows(int?[]? marks)
    {
        var counts = context.Evaluate.Counts(extent.Amount);
        for (var i = 0; i < counts.Length; i++)
        {
            if (marks is not null) counts[i] -= piece.Builders[i].RowCount - marks[i] + 1;
        }

        var passed = Sized.Where(context.Sizes, i => counts[i] is < 0);
        if (passed.Length > 0) context.Findings.Add(RowsPassed.At(context, extent.Amount.Span, passed, i => -counts[i]!.Value, i => piece.Builders[i].RowCount - marks![i]!.Value + 1));
        var wrong = Sized.Where(context.Sizes, i => counts[i] is { } n && n >= 0 && !piece.Builders[i].RowsInDoubt
            && AllowedRows(0, piece.Builders[i]) is { } allowed && !allowed.Has(n));
        if (wrong.Length > 0) context.Findings.Add(RowsFix.At(context, Unmet(counts[wrong[0]]!.Value, piece.Builders[wrong[0]]), wrong, counts));
        return counts.Select(c => c is < 0 ? null : c);
    }

    // The parity of the rows added, given those that count with them.
    private Allowed? AllowedRows(int counted, PieceBuilder builder)
    {
        var allowed = Allowed.Any;
        var nextIsRightSide = builder.NextIsRightSide;
        foreach (var fix in extent.Fixes)
        {
            if (KeepsItsSide(builder) && IsSide(fix)) continue;
            if (allowed.And(IsOdd(fix, counted, nextIsRightSide) ? Allowed.Odd : Allowed.Even) is { } both)
            {
                allowed = both;
                continue;
            }

            context.Findings.Add(FixesConflict.OfRows(fix.Span, IsOdd(fix, counted, nextIsRightSide)));
            return null;
        }

        return allowed;
    }

    // Whether a wish asks for an odd number of rows more.
    private static bool IsOdd(RowFixSyntax fix, int counted, bool nextIsRightSide) => fix.Fix switch
    {
        RowFix.EvenRows => counted % 2 != 0,
        RowFix.OddRows => counted % 2 == 0,
        RowFix.EndRightSide => nextIsRightSide,
        _ => !nextIsRightSide,
    };

    private RowFixSyntax Unmet(int rows, PieceBuilder builder)
    {
        foreach (var fix in extent.Fixes)
        {
            if (!(KeepsItsSide(builder) && IsSide(fix)) && IsOdd(fix, 0, builder.NextIsRightSide) != (rows % 2 != 0)) return fix;
        }

        return extent.Fixes[0];
    }

    private int?[]? MarkOf()
    {
        if (extent.From is not { } name) return null;
        if (piece.Marks.TryGetValue(name.Text, out var rows))
        {
            var without = Sized.Where(context.Sizes, i => rows[i] is null && context.Here.Has(i));
            if (without.Length > 0 && !piece.NamesInDoubt) context.Findings.Add(MarkUnknown.InSizes(context, name.Span, name.Text, without));
            return rows;
        }

        if (!piece.NamesInDoubt) context.Findings.Add(MarkUnknown.At(name.Span, name.Text, piece.Marks.Keys));
        return null;
    }

    // Rounds that are not turned all have one side.
    private static bool KeepsItsSide(PieceBuilder builder) => builder is { InRounds: true, RoundsAre: not RoundWay.Turned };
}
