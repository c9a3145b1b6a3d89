using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Pieces;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Colours;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Colours;

/// <summary><c>with navy</c>, <c>stripes are navy 2 rows, cream 4 rows</c>: the yarn of the rows to come.</summary>
internal static class YarnBinding
{
    private const int MostStripes = 100;

    public static void Bind(Context context, PieceState piece, YarnInHandStatement statement)
    {
        if (context.Yarns.Use(statement.Yarn) is not { } yarn) return;
        Each(context, piece, statement.Span, yarn, (builder, _) => builder.TakeUp(yarn));
    }

    public static void Bind(Context context, PieceState piece, StripesStatement statement)
    {
        var orders = new List<Stripe>?[context.Sizes];
        for (var i = 0; i < orders.Length; i++) orders[i] = [];
        foreach (var stripe in statement.Stripes)
        {
            var yarn = context.Yarns.Use(stripe.Yarn);
            var rows = context.Evaluate.Counts(stripe.Rows);
            for (var i = 0; i < orders.Length; i++)
            {
                if (yarn is not null && rows[i] is { } count) orders[i]?.Add(new Stripe(yarn, count));
                else orders[i] = null;
            }
        }

        var wrong = Sized.Where(context.Sizes, i => context.Here.Has(i) && orders[i] is { } order && !IsSound(order));
        if (wrong.Length > 0) context.Yarns.Misname();
        if (wrong.Length > 0) context.Findings.Add(StripesEmpty.At(context, statement.Span, wrong, PieceBuilder.MostRows));
        if (statement.Stripes.Count > MostStripes) context.Findings.Add(StripesEmpty.Many(statement.Span, MostStripes));
        var first = orders.FirstOrDefault(static o => o is { Count: > 0 })?[0].Yarn;
        if (first is null || statement.Stripes.Count > MostStripes) return;
        Each(context, piece, statement.Span, first, (builder, i) =>
        {
            if (orders[i] is { } order && IsSound(order)) builder.TakeTurns(new Stripes(order));
        });
    }

    /// <summary>Tells of a yarn that is taken up and worked with in no row.</summary>
    public static void CheckFollowed(Context context, PieceState piece)
    {
        if (piece.RowsInDoubt || piece.Unread) return;
        for (var i = 0; i < piece.TakenUp.Length; i++)
        {
            if (piece.TakenUp[i] is not { } taken || !context.Here.Has(i)) continue;
            var rows = piece.Builders[i].Rows;
            // What could not be begun has no rows for that reason, and a first row that is not known may be what was picked up with it.
            if (piece.Builders[i].LastWork is null && (piece.Builders[i].Ahead is null || rows.Count > 0)) continue;
            // A row that names its own yarn first leaves the line as idle as no row at all.
            if (rows.Count > taken.Rows && (!taken.Alone || IsWorkedWith(rows, taken))) continue;
            context.Findings.Add(YarnNothing.Line(taken.Span, taken.Yarn));
            context.Yarns.Misname();
        }
    }

    // Behind the rows of a stitch pattern, which have its yarns, the line is for the row that comes next.
    private static bool IsWorkedWith(IReadOnlyList<Row> rows, TakenUp taken)
    {
        for (var i = taken.Rows; i < rows.Count; i++)
        {
            if (rows[i].Plan is not WordsPlan { Of: not null }) return rows[i].Yarn == taken.Yarn;
            if (YarnsWorked.In(rows[i]).Contains(taken.Yarn)) return true;
        }

        return false;
    }

    private static bool IsSound(List<Stripe> order) => order.Sum(static s => (long)s.Rows) is > 0 and <= PieceBuilder.MostRows;

    private static void Each(Context context, PieceState piece, TextSpan span, string yarn, Action<PieceBuilder, int> take)
    {
        CheckFollowed(context, piece);
        for (var i = 0; i < context.Sizes; i++)
        {
            if (!context.Here.Has(i)) continue;
            var builder = piece.Builders[i];
            var pickedUp = builder.IsJustPickedUp;
            take(builder, i);
            piece.TakenUp[i] = pickedUp ? null : new TakenUp(span, yarn, builder.RowCount, !builder.IsInStripes);
        }

        piece.Changed();
    }
}

/// <summary>A yarn that was taken up.</summary>
/// <param name="Span">The line.</param>
/// <param name="Yarn">The yarn.</param>
/// <param name="Rows">Rows that the piece had.</param>
/// <param name="Alone">True of one yarn, false of several that take turns.</param>
internal sealed record TakenUp(TextSpan Span, string Yarn, int Rows, bool Alone);
