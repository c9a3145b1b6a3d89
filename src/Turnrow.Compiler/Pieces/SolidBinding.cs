using Turnrow.Compiler.Claims;
using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Solids;
using Turnrow.Fabric.Stitches;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Pieces;

/// <summary><c>solid sphere 10 cm across</c>: the rounds of a body of revolution, each with as many stitches as go round it.</summary>
internal sealed class SolidBinding
{
    // A point is closed from as many as it is usually begun with (published: 4 to 6).
    private const int LeastAtPoint = 6;

    private readonly Context _context;
    private readonly PieceState _piece;
    private readonly SolidStatement _statement;
    private readonly Stitch?[] _stitches;

    private SolidBinding(Context context, PieceState piece, SolidStatement statement, Stitch?[] stitches) =>
        (_context, _piece, _statement, _stitches) = (context, piece, statement, stitches);

    public static void Bind(Context context, PieceState piece, SolidStatement statement)
    {
        Begun.Check(context, piece, statement.Span);
        var claim = new ClaimBinder(context).Bind(statement.Claim);
        var stitches = PlainCheck.Stitches(context, piece, statement.Span, "solid", context.Here.Has);
        var solid = new SolidBinding(context, piece, statement, stitches);
        solid.Work(piece.Lead.RowCount == 0 ? Sized.Same<IReadOnlyList<int>?>(context.Sizes, null) : solid.Counts());
        new ClaimBinder(context).CheckRow(piece, claim);
    }

    // The counts of the rounds to come, a size; null, and reported, where they can't be told.
    private IReadOnlyList<int>?[] Counts()
    {
        var none = Sized.Same<IReadOnlyList<int>?>(_context.Sizes, null);
        var across = _context.Evaluate.Lengths(_statement.Across);
        var other = _statement.Other is { } said ? _context.Evaluate.Lengths(said) : null;
        var allowed = AllowedCounts();
        if (!RoundsAre() || ShapeMeant() is not { } shape || !MeasureIsRight(shape) || !WordsAreRight(shape)) return none;
        var least = shape.FromPole ? Sized.Each(_context.Sizes, LeastOf) : Sized.Same(_context.Sizes, 1);
        var wrong = Sized.Where(_context.Sizes, i => other?[i] is { } second && across[i] is { } wide && !IsWithin(shape, wide.ToDouble(), second.ToDouble()));
        if (wrong.Length > 0) _context.Findings.Add(SolidSize.At(_context, _statement, shape, wrong, i => across[i]!.Value, i => other![i]!.Value));
        var counts = Sized.Each(_context.Sizes, i => Array.IndexOf(wrong, i) < 0 && across[i] is { } wide && Gauge(i) is { } gauge && allowed[i] is { } may
            ? Rounds(shape, wide.ToDouble(), (other is null ? Rational.Zero : other[i] ?? Rational.Zero).ToDouble(), gauge, may, least[i])
            : null);
        var many = Sized.Where(_context.Sizes, i => Array.IndexOf(wrong, i) < 0 && across[i] is not null && (other is null || other[i] is not null) && allowed[i] is not null && Gauge(i) is not null && counts[i] is null);
        if (many.Length > 0) _context.Findings.Add(TooManyRows.At(_context, _statement.Span, many, PieceBuilder.MostRows));
        if (!shape.FromPole) CheckEnds(counts);
        return CheckSteps(counts);
    }

    // What is worked round a hole and back into it ends beside the round that it began with, and is sewn to it.
    private void CheckEnds(IReadOnlyList<int>?[] counts)
    {
        var begun = _piece.Builders.Select(static builder => builder.LastWork?.Stitches ?? 0);
        var apart = Sized.Where(_context.Sizes, i => begun[i] > 0 && counts[i] is [.., var last] && 10 * Math.Abs(last - begun[i]) >= last);
        if (apart.Length > 0) _context.Findings.Add(SolidRing.At(_context, _statement, apart, i => (begun[i], counts[i]![^1])));
    }

    private IReadOnlyList<int>? Rounds(SolidShape shape, double across, double other, Gauge gauge, Allowed allowed, int least)
    {
        var meridian = shape.MeridianOf(across, other, Says("closed"));
        if (Says("closing")) meridian = meridian.Reversed();
        return SolidRounds.Counts(meridian, gauge, allowed, least, PieceBuilder.MostRows) is not { } all ? null
            : Trimmed(all, shape, least);
    }

    // What begins at a point, or round a hole, has its first round already. That has more stitches than go round a point, so those come next that
    // are more yet; and what is drawn together to as few is done.
    private List<int> Trimmed(IReadOnlyList<int> all, SolidShape shape, int least)
    {
        var counts = all.ToList();
        if (!Says("closing")) counts.RemoveAt(0);
        if (!shape.FromPole) return counts;
        while (!Says("closing") && counts.Count > 0 && counts[0] <= least) counts.RemoveAt(0);
        while (counts.Count > 1 && counts[^1] <= least && counts[^2] <= least) counts.RemoveAt(counts.Count - 1);
        return counts;
    }

    private static bool IsWithin(SolidShape shape, double across, double other) =>
        other > 0 && across > 0 && other >= shape.Between.Least * across && other <= shape.Between.Most * across;

    private int LeastOf(int size) => Says("closing") ? LeastAtPoint : _piece.Builders[size].LastWork?.Stitches ?? LeastAtPoint;

    private bool Says(string word) => _statement.Parts.Any(part => string.Equals(part.Text, word, StringComparison.OrdinalIgnoreCase));

    private bool RoundsAre()
    {
        if (Array.TrueForAll(_piece.Builders, static b => b.InRounds || b.RowsInDoubt)) return true;
        _context.Findings.Add(SolidInRows.At(_statement.Span, _piece.Name));
        return false;
    }

    private SolidShape? ShapeMeant()
    {
        if (SolidShape.Find(_statement.Shape.Text) is { } shape) return shape;
        _context.Findings.Add(SolidUnknown.At(_statement.Shape));
        return null;
    }

    private bool MeasureIsRight(SolidShape shape)
    {
        var said = _statement.Other is null ? SolidMeasure.None : _statement.Thick ? SolidMeasure.Thick : SolidMeasure.High;
        if (said == shape.Measure) return true;
        _context.Findings.Add(SolidSize.Other(_statement, shape));
        return false;
    }

    private bool WordsAreRight(SolidShape shape)
    {
        foreach (var part in _statement.Parts)
        {
            var closing = string.Equals(part.Text, "closing", StringComparison.OrdinalIgnoreCase);
            if (closing && shape.FromPole) continue;
            if (!closing && string.Equals(part.Text, "closed", StringComparison.OrdinalIgnoreCase) && shape.Name is "dome" or "cone" or "cylinder") continue;
            _context.Findings.Add(SolidUnknown.Word(part, shape));
            return false;
        }

        return true;
    }

    private Allowed?[] AllowedCounts()
    {
        if (_statement.Multiple is not { } multiple) return Sized.Same<Allowed?>(_context.Sizes, Allowed.Any);
        return _context.Evaluate.Counts(multiple, 1).Select(n => n is { } every ? (Allowed?)Allowed.Multiple(every, 0) : null);
    }

    private Gauge? Gauge(int size)
    {
        if (_stitches[size] is not { } stitch || !_context.Here.Has(size)) return null;
        var gauge = _context.Gauges.Of(stitch);
        if (gauge is null && !_context.GaugesInDoubt) _context.Findings.Add(GaugeMissing.At(_statement.Across.Span, _context.Word(stitch)));
        return gauge;
    }

    // A round can have twice as many stitches as the one before it, or half as many.
    private IReadOnlyList<int>?[] CheckSteps(IReadOnlyList<int>?[] counts)
    {
        var steep = new (int Round, int Before, int Wanted)?[counts.Length];
        for (var i = 0; i < counts.Length; i++)
        {
            if (counts[i] is not { } rounds || _piece.Builders[i].LastWork is not { } last) continue;
            var before = last.Stitches;
            for (var r = 0; r < rounds.Count && steep[i] is null; r++)
            {
                if (rounds[r] > 2 * before || 2 * rounds[r] < before) steep[i] = (_piece.Builders[i].RowCount + r + 1, before, rounds[r]);
                before = rounds[r];
            }
        }

        var sizes = Sized.Where(_context.Sizes, i => steep[i] is not null);
        if (sizes.Length > 0) _context.Findings.Add(SolidSteep.At(_context, _statement, sizes, i => steep[i]!.Value));
        return Sized.Each(_context.Sizes, i => steep[i] is null ? counts[i] : null);
    }

    private void Work(IReadOnlyList<int>?[] counts)
    {
        var rows = RowWorking.Bounded(_context, _piece, _statement.Span, counts.Select(c => c?.Count));
        var working = new RowWorking(_context, _piece, _statement);
        for (var i = 0; i < _context.Sizes; i++)
        {
            var builder = _piece.Builders[i];
            if (counts[i] is not { } rounds || rows[i] is null || _stitches[i] is not { } stitch)
            {
                if (_context.Here.Has(i)) builder.Doubt(true);
                continue;
            }

            var shifted = false;
            for (var r = 0; r < rounds.Count && _context.Here.Has(i); r++)
            {
                var change = builder.Ahead is { } there ? rounds[r] - there.Count : 0;
                working.One(i, new ShapedPlan(stitch, default, default) { Evenly = new SpreadChange(change, shifted && change != 0) }, r);
                if (change != 0) shifted = !shifted && _statement.Stacking is { Staggered: true };
            }
        }

        working.Finish();
    }
}
