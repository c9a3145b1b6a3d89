namespace Turnrow.Compiler.Tests.Naive.Making;

/// <summary>Makes one number of a pattern one more or one less: the slip of a hand that a check has to notice.</summary>
public sealed class Nudge
{
    private readonly int _which;
    private readonly int _size;
    private readonly int _by;
    private int _seen;

    private Nudge(int which, int size, int by) => (_which, _size, _by) = (which, size, by);

    /// <summary>Nudges the number at the index, counted round all numbers of the pattern, in one size if it has sizes.</summary>
    public static NaivePattern One(NaivePattern pattern, int index, int size, int by)
    {
        var counter = new Nudge(-1, 0, 0);
        counter.Over(pattern);
        return new Nudge(index % counter._seen, size % pattern.Sizes.Count, by).Over(pattern);
    }

    private NaivePattern Over(NaivePattern pattern) => pattern with
    {
        Pieces = pattern.Pieces.Select(piece => piece with
        {
            Start = Of(piece.Start),
            Statements = piece.Statements.Select(statement => Of(statement) with { Claim = Maybe(statement.Claim) }).ToList(),
        }).ToList(),
    };

    private Start Of(Start start) => start switch
    {
        BeginWith begin => new BeginWith(N(begin.Stitches)),
        FoundationRow row => row with { Stitches = N(row.Stitches) },
        ChainStart chain => new ChainStart(N(chain.Chains)),
        RingOf { Chains: > 0 } ring => new RingOf(N(ring.Chains)),
        BothSidesOf both => new BothSidesOf(N(both.Stitches)),
        PartOf part => part with { Stitches = N(part.Stitches) },
        PickedUp up => up with
        {
            Window = up.Window.Kind == WindowKind.All ? up.Window : up.Window with { Rows = N(up.Window.Rows) },
            Stitches = N(up.Stitches),
            PerRows = N(up.PerRows),
            Evenly = Maybe(up.Evenly),
            Claim = Maybe(up.Claim),
        },
        PickedUpRim up => up with
        {
            Stitches = N(up.Stitches),
            PerRows = N(up.PerRows),
            InCorner = up.InCorner is { } corner ? N(corner) : null,
            InSpace = up.InSpace is { } space ? N(space) : null,
            ToCorner = up.ToCorner is { } side ? N(side) : null,
            Claim = Maybe(up.Claim),
        },
        _ => start,
    };

    private Statement Of(Statement statement) => statement switch
    {
        RowLine row => row with { Number = row.Number is { } number ? N(number) : null, Words = All(row.Words) },
        RowsLine rows => rows with { Span = Of(rows.Span), Words = All(rows.Words) },
        Straight straight => straight with { Rows = N(straight.Rows) },
        StraightIn straight => straight with { Rows = N(straight.Rows) },
        LeaveAtEdge leave => leave with { Stitches = N(leave.Stitches) },
        LeaveForLater later => later with { Stitches = N(later.Stitches) },
        AddAtEdge add => add with { Stitches = N(add.Stitches) },
        Shape shape => shape with { Span = Of(shape.Span), Schedules = shape.Schedules.Select(Of).ToList() },
        _ => statement,
    };

    private RowSpan Of(RowSpan span) => new(Maybe(span.From), N(span.Last));

    private Schedule Of(Schedule schedule) => schedule with
    {
        Stitches = N(schedule.Stitches),
        LeaveFirst = schedule.LeaveFirst == 0 ? 0 : N(schedule.LeaveFirst),
        After = schedule.After == 0 ? 0 : N(schedule.After),
        Legs = schedule.Legs.Select(leg => new Leg(N(leg.Every), leg.Times is { } times ? N(times) : null)).ToList(),
    };

    private List<Word> All(IReadOnlyList<Word> words) => words.Select(Of).ToList();

    private Word Of(Word word) => word switch
    {
        Each each => each with { Count = N(each.Count) },
        Until until => until with { Remain = N(until.Remain) },
        ToTurn to => to with { Remain = N(to.Remain) },
        ToCorner to => to with { Remain = N(to.Remain) },
        Into into => into with { Count = N(into.Count) },
        Group group => group with { Words = All(group.Words) },
        IntoRing ring => new IntoRing(All(ring.Words), ring.Times == 1 ? 1 : N(ring.Times)),
        Inc inc => inc with { Count = N(inc.Count) },
        Dec dec => dec with { Count = N(dec.Count) },
        Together together => together with { Over = Math.Max(2, N(together.Over)) },
        Hold hold => hold with { Count = N(hold.Count) },
        Bridge bridge => bridge with { Count = N(bridge.Count) },
        JoinNext { Skipping: > 0 } join => join with { Skipping = N(join.Skipping) },
        Skip skip => new Skip(N(skip.Count)),
        Space space => new Space(N(space.Chains)),
        SlipOver slip => new SlipOver(N(slip.Count)),
        LeaveUnworked leave => leave with { Count = Maybe(leave.Count) },
        Evenly evenly => evenly with { Count = N(evenly.Count) },
        SpreadOver spread => spread with { Times = N(spread.Times), AtEachEnd = Maybe(spread.AtEachEnd) },
        EachByKind each => each with { InSpace = N(each.InSpace) },
        Repeat { End: not RepeatEnd.Across } repeat => repeat with { Words = All(repeat.Words), Count = N(repeat.Count) },
        Repeat repeat => repeat with { Words = All(repeat.Words) },
        _ => word,
    };

    private Sized? Maybe(Sized? number) => number is null ? null : N(number);

    /// <summary>A number never becomes nothing by a nudge: what no stitch, no row and no time mean is not the point here.</summary>
    private Sized N(Sized number)
    {
        if (_seen++ != _which)
            return number;
        return number[_size] + _by < 1 ? number.Nudged(_size, 1) : number.Nudged(_size, _by);
    }

    private int N(int number)
    {
        if (_seen++ != _which)
            return number;
        return number + _by < 1 ? number + 1 : number + _by;
    }
}
