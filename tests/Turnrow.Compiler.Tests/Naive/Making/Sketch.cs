namespace Turnrow.Compiler.Tests.Naive.Making;

/// <summary>What the next row stands on, as far as the next words have to know it.</summary>
public enum Ground { Plain, Changed, Mesh }

/// <summary>Row-ends and steps of one edge in one size, in order; enough to know where picking up is plain.</summary>
public readonly record struct EdgeMark(bool IsStep, string Name);

/// <summary>A piece while it is being made up: its statements, and the counts that they must come to.</summary>
public sealed class Sketch
{
    private readonly List<EdgeMark>[] _marks;

    public Sketch(string name, Start start, int sizes)
    {
        Name = name;
        Start = start;
        Widths = new int[sizes];
        Rows = new int[sizes];
        _marks = new List<EdgeMark>[2 * sizes];
        for (var i = 0; i < _marks.Length; i++)
            _marks[i] = [];
    }

    public string Name { get; }

    public Start Start { get; set; }

    /// <summary>The stitches that the piece began with.</summary>
    public int[] Begun { get; init; } = [];

    public List<Statement> Statements { get; } = [];

    public int[] Widths { get; set; }

    public int[] Rows { get; private init; }

    public int Sizes => Widths.Length;

    public Ground Ground { get; set; }

    /// <summary>The stitch that `straight` would go on with.</summary>
    public string? PlainStitch { get; set; }

    /// <summary>In a mesh, in the order of the next row: stitches before the first space, spaces, stitches between, stitches after.</summary>
    public (int[] Lead, int[] Spaces, int Gap, int[] Tail) Mesh { get; set; }

    public string[] Names { get; private init; } = ["", ""];

    public Manner Manner { get; set; } = new(null, null);

    public int NamesUsed { get; set; }

    /// <summary>Stitches of the last row taken by a part, by hand.</summary>
    public int[]?[] Taken { get; } = [null, null];

    /// <summary>The side of row 1, where it is the same in all sizes.</summary>
    public Side? FirstSide { get; set; }

    /// <summary>True once the last row is a round.</summary>
    public bool InRounds { get; set; }

    /// <summary>Rows whose loops the row above may have left free, where that is the same in all sizes.</summary>
    public List<int> LoopRows { get; } = [];

    /// <summary>Names of stitches held and of bridges that nothing is picked up along yet.</summary>
    public List<string> Inner { get; init; } = [];

    public int InnerUsed { get; set; }

    /// <summary>True once rounds are turned: what stood behind is then met first, behind where they are joined.</summary>
    public bool TurnsRounds { get; set; }

    public bool CanBeMirrored { get; set; } = true;

    /// <summary>Which rows reach an edge then depends on the hook, so nothing is picked up along it.</summary>
    public bool HasShortRows { get; set; }

    /// <summary>True once another is joined to it while it is worked: it is made once then.</summary>
    public bool IsJoined { get; set; }

    /// <summary>How often it is made.</summary>
    public int Copies { get; set; } = 1;

    /// <summary>Nothing goes on from it then but what is picked up.</summary>
    public bool EndsInCorners { get; set; }

    public string? Counterpart { get; set; }

    public bool StandsOnStitches => Ground != Ground.Mesh;

    public int Narrowest => Widths.Min();

    public int Widest => Widths.Max();

    public IReadOnlyList<EdgeMark> Marks(Hand hand, int size) => _marks[2 * size + (int)hand];

    public Sized For(Func<int, int> value) => Sized.For(Sizes, value);

    public void AddRows(Func<int, int> rows)
    {
        for (var size = 0; size < Sizes; size++)
        {
            Rows[size] += rows(size);
            // Rows on both sides of a tube lie along no one edge.
            if (InRounds)
            {
                _marks[2 * size].Add(new EdgeMark(true, Names[0]));
                _marks[2 * size + 1].Add(new EdgeMark(true, Names[1]));
                continue;
            }
            foreach (var hand in new[] { Hand.Right, Hand.Left })
                _marks[2 * size + (int)hand].AddRange(Enumerable.Repeat(new EdgeMark(false, Names[(int)hand]), rows(size)));
        }
    }

    /// <summary>A row of one size, after the steps that are made before it.</summary>
    public void AddRow(int size, bool rightStep, bool leftStep)
    {
        Rows[size]++;
        foreach (var (hand, step) in new[] { (Hand.Right, rightStep), (Hand.Left, leftStep) })
        {
            var marks = _marks[2 * size + (int)hand];
            if (step)
                marks.Add(new EdgeMark(true, Names[(int)hand]));
            marks.Add(new EdgeMark(false, Names[(int)hand]));
        }
    }

    public void AddStep(Hand hand)
    {
        for (var size = 0; size < Sizes; size++)
            _marks[2 * size + (int)hand].Add(new EdgeMark(true, Names[(int)hand]));
    }

    public Sketch MirroredAs(string name)
    {
        var mirror = new Sketch(name, new MirrorOf(Name), Sizes)
        {
            Widths = [.. Widths],
            Begun = Begun,
            Rows = [.. Rows],
            Ground = Ground,
            PlainStitch = PlainStitch,
            Manner = Manner,
            Names = [Names[1], Names[0]],
            FirstSide = FirstSide,
            CanBeMirrored = false,
            HasShortRows = HasShortRows,
            EndsInCorners = EndsInCorners,
            InRounds = InRounds,
            Inner = [.. Inner],
            InnerUsed = InnerUsed,
            Counterpart = Name,
        };
        for (var i = 0; i < _marks.Length; i++)
            mirror._marks[i].AddRange(_marks[i ^ 1]);
        CanBeMirrored = false;
        Counterpart = name;
        return mirror;
    }
}
