using Turnrow.Compiler.Claims;
using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Pieces;

/// <summary><c>straight 12 rows</c>, <c>straight to 20 cm, even rows</c>, <c>straight for 6 cm</c></summary>
internal static class StraightBinding
{
    public static void Bind(Context context, PieceState piece, StraightStatement statement)
    {
        Begun.Check(context, piece, statement.Span);
        var claim = new ClaimBinder(context).Bind(statement.Claim);
        var stitches = PlainCheck.Stitches(context, piece, statement.Span, "straight");
        var counts = RowWorking.Bounded(context, piece, statement.Amount.Span, RowsOf(context, piece, statement, stitches));
        var working = new RowWorking(context, piece, statement);
        for (var i = 0; i < context.Sizes; i++)
        {
            var plan = stitches[i] is { } stitch ? ShapedPlan.Plain(stitch) : null;
            if (counts[i] is { } count)
            {
                working.Rows(i, count, _ => plan);
                continue;
            }

            // However many rows they are, the count stays the same: one stands for all of them.
            piece.Builders[i].DoubtRows();
            working.One(i, plan, 0);
        }

        working.Finish();
        new ClaimBinder(context).CheckRow(piece, claim);
    }

    private static int?[] RowsOf(Context context, PieceState piece, StraightStatement statement, Stitch?[] stitches)
    {
        if (PlainCheck.NothingToGoOnWith(piece, stitches)) return Sized.Same<int?>(context.Sizes, null);
        var marks = MarkOf(context, piece, statement);
        if (statement.From is not null && marks is null) return Sized.Same<int?>(context.Sizes, null);
        if (statement.Extent == StraightExtent.Rows) return GivenRows(context, piece, statement, marks);
        var lengths = context.Evaluate.Lengths(statement.Amount);
        return OfLength(context, piece, statement, stitches.Select((s, i) => GaugeOf(context, statement, s, i)).ToArray(), lengths, marks);
    }

    private static Gauge? GaugeOf(Context context, StraightStatement statement, Stitch? stitch, int size)
    {
        if (stitch is null || !context.Here.Has(size)) return null;
        var gauge = context.Gauges.Of(stitch);
        if (gauge is null && !context.GaugesInDoubt) context.Findings.Add(GaugeMissing.At(statement.Amount.Span, context.Word(stitch)));
        return gauge;
    }

    private static int?[] OfLength(
        Context context, PieceState piece, StraightStatement statement, Gauge?[] gauges, Rational?[] lengths, int?[]? marks)
    {
        var (passed, large) = (new List<int>(), new List<int>());
        var so = new Rational?[context.Sizes];
        var counts = new int?[context.Sizes];
        for (var i = 0; i < counts.Length; i++)
        {
            var builder = piece.Builders[i];
            if (lengths[i] is not { } length || gauges[i] is not { } gauge || builder.RowsInDoubt || (marks is not null && marks[i] is null)) continue;
            var since = (marks?[i] ?? 1) - 1;
            var height = statement.Extent == StraightExtent.To ? context.Gauges.HeightOf(builder.Rows, since) : Rational.Zero;
            so[i] = height;
            if (height is not { } done) continue;
            if (length - done is not { } left || gauge.RowsFor(left) is not { } exact)
            {
                large.Add(i);
                continue;
            }

            if (AllowedRows(context, statement, statement.Extent == StraightExtent.To ? builder.RowCount - since : 0, builder.NextIsRightSide) is not { } allowed) continue;
            var rows = allowed.Nearest(exact);
            if (rows < 0) passed.Add(i);
            else counts[i] = (int)Math.Min(rows, int.MaxValue);
        }

        if (large.Count > 0) context.Findings.Add(TooLarge.At(statement.Amount.Span, context.Findings, large, Evaluator.LargestCount));
        if (passed.Count > 0) context.Findings.Add(LengthPassed.At(context, statement.Amount.Span, [.. passed], i => so[i]!.Value, i => lengths[i]!.Value, marks is not null));
        return counts;
    }

    private static int?[] GivenRows(Context context, PieceState piece, StraightStatement statement, int?[]? marks)
    {
        var counts = context.Evaluate.Counts(statement.Amount);
        for (var i = 0; i < counts.Length; i++)
        {
            if (marks is not null) counts[i] -= piece.Builders[i].RowCount - marks[i] + 1;
        }

        var passed = Sized.Where(context.Sizes, i => counts[i] is < 0);
        if (passed.Length > 0) context.Findings.Add(RowsPassed.At(context, statement.Amount.Span, passed, i => -counts[i]!.Value, i => piece.Builders[i].RowCount - marks![i]!.Value + 1));
        var wrong = Sized.Where(context.Sizes, i => counts[i] is { } n && n >= 0 && !piece.Builders[i].RowsInDoubt
            && AllowedRows(context, statement, 0, piece.Builders[i].NextIsRightSide) is { } allowed && !allowed.Has(n));
        if (wrong.Length > 0) context.Findings.Add(RowsFix.At(context, Unmet(statement, counts[wrong[0]]!.Value, piece.Builders[wrong[0]].NextIsRightSide), wrong, counts));
        return counts.Select(c => c is < 0 ? null : c);
    }

    // The parity of the rows added, given those that count with them.
    private static Allowed? AllowedRows(Context context, StraightStatement statement, int counted, bool nextIsRightSide)
    {
        var allowed = Allowed.Any;
        foreach (var fix in statement.Fixes)
        {
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

    private static RowFixSyntax Unmet(StraightStatement statement, int rows, bool nextIsRightSide)
    {
        foreach (var fix in statement.Fixes)
        {
            if (IsOdd(fix, 0, nextIsRightSide) != (rows % 2 != 0)) return fix;
        }

        return statement.Fixes[0];
    }

    private static int?[]? MarkOf(Context context, PieceState piece, StraightStatement statement)
    {
        if (statement.From is not { } name) return null;
        if (piece.Marks.TryGetValue(name.Text, out var rows))
        {
            var without = Sized.Where(context.Sizes, i => rows[i] is null && context.Here.Has(i));
            if (without.Length > 0 && !piece.NamesInDoubt) context.Findings.Add(MarkUnknown.InSizes(context, name.Span, name.Text, without));
            return rows;
        }

        if (!piece.NamesInDoubt) context.Findings.Add(MarkUnknown.At(name.Span, name.Text, piece.Marks.Keys));
        return null;
    }
}
