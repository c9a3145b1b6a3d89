using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Values;
using Turnrow.Fabric;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Words;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Pieces;

/// <summary>Works the rows of a line in every size, and tells what can't be worked once for all sizes.</summary>
internal sealed class RowWorking(Context context, PieceState piece, StatementSyntax statement)
{
    private readonly RowFailure?[] _failures = new RowFailure?[context.Sizes];
    private readonly int?[] _empty = new int?[context.Sizes];

    /// <summary>Works so many rows in a size; the plan of each comes from its number among them, from 0.</summary>
    public void Rows(int size, int count, Func<int, RowPlan?> plan)
    {
        for (var ordinal = 0; ordinal < count && context.Here.Has(size); ordinal++) One(size, plan(ordinal), ordinal);
    }

    /// <summary>Works one row in a size; without a plan its count is not known.</summary>
    /// <param name="size">The size, by index.</param>
    /// <param name="plan">What it is to be.</param>
    /// <param name="ordinal">Its number among the rows of its line, from 0.</param>
    /// <param name="again">The number of the row that it is a repeat of; null for none.</param>
    public void One(int size, RowPlan? plan, int ordinal, int? again = null)
    {
        var builder = piece.Builders[size];
        if (plan is null) builder.Doubt(false);
        var below = builder.Ahead;
        var number = builder.RowCount + 1;
        var waiting = builder.WaitingAt(builder.HookAt.Opposite());
        var startsAtTurn = builder.WaitingAt(builder.HookAt) > 0;
        var fault = builder.WorkRow(plan ?? new WordsPlan([]), new Origin(statement), ordinal);
        if (fault is null && builder.Rows[^1].Work is { Tops.Count: 0 })
        {
            // Told once: the rows that follow have nothing to work over for the same reason.
            _empty[size] = number;
            builder.Doubt(false);
        }

        if (fault is null || plan is null) return;
        _failures[size] ??= new RowFailure(fault, plan, number, below?.Count ?? fault.There, builder.Rows[^1].StartsAt)
        {
            Below = below,
            StartsAtTurn = startsAtTurn,
            Waiting = waiting,
            UpToFault = builder.UpToFault,
            Again = again,
        };
    }

    /// <summary>Reports what could not be worked, and ends the line.</summary>
    public void Finish()
    {
        piece.AddRowsPassage(statement);
        var empty = Sized.Where(context.Sizes, i => _empty[i] is not null);
        if (empty.Length > 0) context.Findings.Add(RowEmpty.At(context, RowFaults.RowSpan(statement), piece, empty, _empty[empty[0]]!.Value));
        var open = Sized.Where(context.Sizes, i => _failures[i] is { } f && !IsKnownCause(i, f));
        while (open.Length > 0)
        {
            var first = _failures[open[0]]!;
            var alike = open.Where(i => _failures[i]!.IsLike(first)).ToArray();
            RowFaults.Report(context, piece, statement, alike, i => _failures[i]!);
            open = [.. open.Except(alike)];
        }
    }

    /// <summary>The numbers of rows; null, and reported, in a size where a piece would get more than it may have.</summary>
    public static int?[] Bounded(Context context, PieceState piece, TextSpan span, int?[] more)
    {
        var sizes = Sized.Where(context.Sizes, i => more[i] is { } n && piece.Builders[i].RowCount + (long)n > PieceBuilder.MostRows);
        if (sizes.Length > 0) context.Findings.Add(TooManyRows.At(context, span, sizes, PieceBuilder.MostRows));
        else if (context.Rows.Take(more.Sum(n => (long)(n ?? 0)), span)) return more;
        return Sized.Same<int?>(more.Length, null);
    }

    // A row that is short or over by what a claim above was already off has the same cause.
    private bool IsKnownCause(int size, RowFailure failure) => failure.Fault.Kind switch
    {
        RowFaultKind.LeftOver => piece.Causes.Explains(size, failure.Fault.There),
        RowFaultKind.NotEnough => piece.Causes.Explains(size, failure.Fault.Needed - failure.Fault.There),
        _ => false,
    };
}

/// <summary>A row that could not be worked.</summary>
/// <param name="Fault">Why.</param>
/// <param name="Plan">What it was to be.</param>
/// <param name="Row">Its number.</param>
/// <param name="Places">Places that it had to work over.</param>
/// <param name="Start">The edge where it starts.</param>
internal sealed record RowFailure(RowFault Fault, RowPlan Plan, int Row, int Places, Hand Start)
{
    /// <summary>Those places; null if they are not known.</summary>
    public PlaceSequence? Below { get; init; }

    /// <summary>True if it starts where a row before it turned.</summary>
    public bool StartsAtTurn { get; init; }

    /// <summary>Of those places the ones that rows before it left for later; 0 for none.</summary>
    public int Waiting { get; init; }

    /// <summary>Its words as far as they were worked; null if none was.</summary>
    public IReadOnlyList<Word>? UpToFault { get; init; }

    /// <summary>The number of the row that it is a repeat of; null for none.</summary>
    public int? Again { get; init; }

    /// <summary>True if both are the same fault of the same word.</summary>
    public bool IsLike(RowFailure other) =>
        Fault.Kind == other.Fault.Kind && ReferenceEquals(Fault.Word?.Origin.Value, other.Fault.Word?.Origin.Value);
}
