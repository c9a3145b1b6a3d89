namespace Turnrow.Compiler.Tests.Naive;

/// <summary>The wrap waistcoat in seven sizes, with its counts worked out from the measures by hand.</summary>
public static class Waistcoat
{
    public static readonly Sized Hem = new(77, 85, 95, 105, 115, 125, 133);
    public static readonly Sized Drop = new(4, 7, 9, 12, 15, 18, 21);
    public static readonly Sized Shoulder = new(19, 20, 22, 23, 24, 25, 26);
    public static readonly Sized ArmholeRows = new(16, 18, 18, 20, 20, 22, 22);
    public static readonly Sized TieRows = new(55, 60, 65, 70, 75, 80, 85);

    private static readonly Word[] s_dcAcross = [new Across("dc")];

    public static NaivePattern Pattern { get; } = new(
        ["XS", "S", "M", "L", "1X", "2X", "3X"],
        [new TurnRule("dc", 3, true)],
        [
            new NaivePiece("back", new BeginWith(Hem), Back()),
            new NaivePiece("right-front", new PartOf("back", Shoulder, Hand.Right), RightFront()),
            new NaivePiece("left-front", new MirrorOf("right-front"), []),
            new NaivePiece(
                "right-tie",
                new PickedUp("right-front", null, "neck", new RowWindow(WindowKind.Last, 3), 2, "dc", 1, 6),
                [new Straight(Sized.For(7, size => TieRows[size] - 1))]),
            new NaivePiece("left-tie", new MirrorOf("right-tie"), []),
        ]);

    private static List<Statement> Back() =>
    [
        new NameEdge(EdgeRef.Both, "side-seam", false),
        new RowLine(s_dcAcross, 1, Side.RS) { Claim = Hem },
        new Straight(19),
        new NameEdge(EdgeRef.Both, "armhole", true),
        new LeaveAtEdge(Drop, EdgeRef.Both) { Claim = Sized.For(7, size => Hem[size] - 2 * Drop[size]) },
        new Straight(ArmholeRows),
    ];

    private static List<Statement> RightFront() =>
    [
        new NameEdge(EdgeRef.Right, "armhole", false),
        new NameEdge(EdgeRef.Left, "neck", false),
        new RowLine(s_dcAcross, 1) { Claim = Shoulder },
        new Shape(RowSpan.Between(2, ArmholeRows), [new Schedule(true, 1, EdgeRef.Named("neck"), [new Leg(1)])]),
        new AddAtEdge(Drop, EdgeRef.Named("armhole")),
        new NameEdge(EdgeRef.Right, "side-seam", true),
        new Shape(RowSpan.Of(20), [new Schedule(true, 1, EdgeRef.Named("neck"), [new Leg(2)])]),
        new FastenOff(),
    ];
}
