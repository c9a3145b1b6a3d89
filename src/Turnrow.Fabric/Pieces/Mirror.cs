using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Pieces;

/// <summary>
/// Makes a piece that mirrors another. Right and left change places; all that depends on where the hook is comes out anew, since the
/// piece is worked again from what it was to be.
/// </summary>
/// <param name="turnedOver">
/// False for a mirror image: right-side rows stay right-side rows and are read from their other end. True for the same rows with
/// the other side facing, for a fabric without sides.
/// </param>
public sealed class Mirror(bool turnedOver)
{
    private readonly Dictionary<(IReadOnlyList<Word> Words, string? Yarn), WordsPlan> _plans = [];
    private readonly Dictionary<IReadOnlyList<Word>, bool> _joinDecrease = [];
    private (ShapedPlan Plan, ShapedPlan Turned)? _last;
    private bool _turns;

    /// <summary>
    /// True if, mirrored, stitches are left and chains added at one edge before one row: chains added one row apart go with the hook, not with
    /// the edge, so that they can meet what the original never put beside them.
    /// </summary>
    public bool StepsMeet { get; private set; }

    /// <summary>
    /// True if, mirrored, a row given in words would have to turn where it begins, or can't be worked because one before it turns a row later.
    /// </summary>
    public bool TurnsApart { get; private set; }

    /// <summary>True if, mirrored, rounds would begin elsewhere than those of the original do: they are turned, or begin further on.</summary>
    public bool RoundsApart { get; private set; }

    /// <summary>The original's first row that works a stitch into the place where a decrease ended: mirrored, it would go to the other leg. Null if there is none.</summary>
    public Row? SameApart { get; private set; }

    /// <summary>Works the original's events after its beginning, mirrored, on a piece that has begun.</summary>
    public void Work(Piece original, PieceBuilder mirrored)
    {
        var pickedUp = original.Start is PickUpStart;
        RoundsApart = !turnedOver && original.Rows.Any(static row => row is { Begins: RowBegins.RoundTurned or RowBegins.RoundBack or RowBegins.BothSides } or { Work.BegunAt: > 0 } or { Unworked: not null });
        SameApart = turnedOver ? null : original.Rows.FirstOrDefault(row => row.Work is { } work && JoinsDecrease(work));
        if (RoundsApart || SameApart is not null || original.JoinedTo.Count > 0) mirrored.Doubt(true);
        foreach (var step in original.Events)
        {
            // The first row of a pick-up is there as soon as the piece has begun.
            if (pickedUp && step is RowEvent)
            {
                pickedUp = false;
                if (original.Rows[0].Yarn is { } yarn) mirrored.BeginWith(yarn);
                continue;
            }

            Apply(step, mirrored);
        }
    }

    private void Apply(PieceEvent step, PieceBuilder mirrored)
    {
        switch (step)
        {
            case RuleEvent rule:
                mirrored.SetRule(rule.Stitch, rule.Rule, rule.NextRowOnly);
                break;
            case NameEvent name:
                mirrored.NameEdge(name.Hand.Opposite(), name.Name, name.FromBeginning);
                break;
            case StepEvent { Step: var made } edge:
                AddStep(mirrored, edge.Hand.Opposite(), made);
                break;
            case LaterEvent later:
                mirrored.LeaveForLater(later.Hand.Opposite(), later.Count, later.Origin);
                _turns = true;
                break;
            case ApartEvent apart:
                mirrored.AddChainsApart(apart.Count, apart.Origin);
                break;
            case RowEvent row:
                Row(row, mirrored);
                break;
            case RoundsEvent rounds:
                mirrored.WorkInRounds(rounds.Rounds);
                break;
            case RoundWayEvent way:
                mirrored.RoundsAre = way.Way;
                break;
            case SideEvent side:
                mirrored.BeginOnSide(side.RightSide != turnedOver);
                break;
            case FastenOffEvent:
                mirrored.FastenOff();
                break;
            case TurnsDoubtEvent doubt:
                // The mirror turns a row later, and so is sure a row later.
                mirrored.DoubtTurns(doubt.Rows + 1);
                break;
            case RowsDoubtEvent:
                mirrored.DoubtRows();
                break;
            case DoubtEvent { KnownStitches: { } known }:
                mirrored.Trust(known);
                break;
            case DoubtEvent doubt:
                mirrored.Doubt(doubt.Rows);
                break;
        }
    }

    private void Row(RowEvent row, PieceBuilder mirrored)
    {
        if (!row.Worked) mirrored.Doubt(false);
        // Said by words, a row turns where it ends. Its mirror image would have to begin there, with the yarn at the edge.
        if (!turnedOver && row.Worked && row.Plan is WordsPlan { Words: [.., Leave { ForLater: true, Count: > 0 }] })
        {
            TurnsApart = true;
            mirrored.Doubt(true);
        }

        mirrored.Yarn = row.Yarn;
        var fault = mirrored.WorkRow(PlanOf(row.Plan, row.Yarn), row.Origin, row.Ordinal);
        TurnsApart |= fault is not null && row.Worked && _turns;
        RoundsApart |= fault is not null && row.Worked && mirrored.InRounds;
    }

    // Rows worked alike share their work.
    private bool JoinsDecrease(RowWork work)
    {
        if (!_joinDecrease.TryGetValue(work.Words, out var joins)) _joinDecrease[work.Words] = joins = SamePlaces.JoinDecrease(work.Words);
        return joins;
    }

    private void AddStep(PieceBuilder mirrored, Hand hand, Step step)
    {
        if (step.Count > 0 && mirrored.PendingStep(hand) is { } pending && pending.Adds != step.Adds)
        {
            StepsMeet = true;
            mirrored.Doubt(false);
        }
        else
        {
            mirrored.AddStep(hand, step.Adds, step.Count, step.Origin);
        }
    }

    private RowPlan PlanOf(RowPlan plan, string? yarn)
    {
        if (plan is ShapedPlan shaped) return Turned(shaped);
        var words = ((WordsPlan)plan).Words;
        if (turnedOver) return plan;
        // All across is all across from either end, however many wait there.
        if (_turns && words is [Work { Takes: 1, Makes: 1, Amount.Reach: Reach.Across, Target.Aim: Aim.Next } across]) return new WordsPlan([across with { Amount = Amount.Across, Corners = 0 }]);
        // Words that take up yarns read otherwise for each yarn that they begin with.
        var key = (words, YarnWords.Has(words) ? yarn : null);
        if (!_plans.TryGetValue(key, out var turned)) _plans[key] = turned = new WordsPlan(WordReversal.Reverse(words, yarn));
        return plan is WordsPlan { Of: { } of } ? turned with { Of = of.Mirrored() } : turned;
    }

    // Made anew, not copied: a plan keeps the words that it has given, and those run from the other edge.
    private ShapedPlan Turned(ShapedPlan plan)
    {
        if (_last is not { } last || !ReferenceEquals(last.Plan, plan)) _last = last = (plan, new ShapedPlan(plan.Stitch, plan.Left, plan.Right) { Evenly = plan.Evenly });
        return last.Turned;
    }
}
