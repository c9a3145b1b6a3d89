using Turnrow.Compiler.Claims;
using Turnrow.Compiler.Colours;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Pieces;

/// <summary>A piece while its lines are read: a builder for each size, and what the lines said that is the same in all of them.</summary>
internal sealed class PieceState(string name, TextSpan span, PieceBuilder[] builders)
{
    private Piece[]? _finished;
    private int _lead;
    private bool _joined;
    private bool _namesInDoubt;
    private Piece[]? _model;
    private readonly Dictionary<string, NamedPart> _ownParts = new(StringComparer.OrdinalIgnoreCase);

    public string Name { get; } = name;

    /// <summary>Where the piece is opened.</summary>
    public TextSpan Span { get; } = span;

    public PieceBuilder[] Builders { get; } = builders;

    /// <summary>The builder of the first size that the line being read is for.</summary>
    public PieceBuilder Lead => Builders[_lead];

    public List<Passage> Passages { get; } = [];

    /// <summary>Number of the row after a mark, a size; null in a size where it is not set.</summary>
    public Dictionary<string, int?[]> Marks { get; } = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>Where the marks are set.</summary>
    public Dictionary<string, TextSpan> MarkSpans { get; } = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>The parts that <c>divide</c> named: stitches from the right edge, and how many, a size.</summary>
    public Dictionary<string, NamedPart> Parts { get; } = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>The part that <c>divide</c> named so; null for none. Each of several that are made alike has it for itself.</summary>
    public NamedPart? PartNamed(string name)
    {
        if (CopyOf is not { } model) return Parts.GetValueOrDefault(name);
        if (model.Parts.TryGetValue(name, out var part)) _ownParts.TryAdd(name, part with { Used = false });
        return _ownParts.GetValueOrDefault(name);
    }

    /// <summary>The names of its parts.</summary>
    public IReadOnlyCollection<string> PartNames => (CopyOf ?? this).Parts.Keys;

    /// <summary>Parts of the last row that later pieces go on from: stitches from the right edge, and how many, a size.</summary>
    public List<(string Piece, int[] FromRight, int[] Count)> Taken { get; } = [];

    /// <summary>The edges that its rows are joined to, by the words that name them; null for words that name none.</summary>
    public Dictionary<string, Fabric.Joins.JoinedEdge?[]?> JoinedTo { get; } = new(StringComparer.Ordinal);

    /// <summary>How edges are shaped here, a size.</summary>
    public ShapingManner[] Manners { get; } = new ShapingManner[builders.Length];

    /// <summary>The yarn taken up last by a line, a size; null where none was, or where something was there already that it is for.</summary>
    public TakenUp?[] TakenUp { get; } = new TakenUp?[builders.Length];

    /// <summary>Differences of claims already reported, for one cause is told once.</summary>
    public CountCauses Causes { get; set; } = new();

    /// <summary>By how much its rows' numbers are off, a size, as was told: later ones that are off by the same have the same cause.</summary>
    public int[] NumbersOff { get; } = new int[builders.Length];

    /// <summary>The piece that it mirrors; null for none.</summary>
    public PieceState? MirrorOf { get; set; }

    /// <summary>True if a line that may have named an edge, a mark or a part could not be read.</summary>
    public bool NamesInDoubt
    {
        get => _namesInDoubt || CopyOf is { NamesInDoubt: true };
        set => _namesInDoubt = value;
    }

    /// <summary>True in a size where the yarn of its last row was taken up by a later piece.</summary>
    public bool[] YarnTaken { get; } = new bool[builders.Length];

    /// <summary>
    /// Lets a part take the yarn if it begins where the yarn hangs; true if it does, and goes on with it. After rounds it hangs where they are
    /// joined, and that is at both edges; a round begun after rows is joined from their end to their beginning, all across.
    /// </summary>
    /// <param name="size">The size.</param>
    /// <param name="part">The part.</param>
    /// <param name="startsAt">The edge where its first row starts.</param>
    /// <param name="alone">True if that row goes over this part alone.</param>
    public bool TakeYarn(int size, PartStart part, Hand startsAt, bool alone = true)
    {
        var piece = Finished[size];
        var atStart = startsAt == Hand.Right ? part.FromRight == 0 : part.FromLeft == 0;
        var isHookThere = piece.EndsInRounds || piece.HookAt == startsAt || (alone && part.FromRight + part.FromLeft == 0);
        var atHook = atStart && isHookThere;
        var goesOn = atHook && !YarnTaken[size] && !piece.FastenedOff;
        YarnTaken[size] |= goesOn;
        return goesOn;
    }

    /// <summary>
    /// True once the piece is joined to another by a seam, a part or a pick-up. What closes each of several by itself is enough where none of
    /// them is joined to anything, as with mittens; where one is, the others have to be.
    /// </summary>
    public bool Joined
    {
        get => _joined || (CopyOf is { _joined: true } model && !model.Copies.Any(static copy => copy._joined));
        set => _joined = value;
    }

    /// <summary>The piece that this is one of several of; null where a piece is made once, and for the lines that all of them share.</summary>
    public PieceState? CopyOf { get; init; }

    /// <summary>Each of several that are made alike: the first, the second; none for a piece that is made once.</summary>
    public IReadOnlyList<PieceState> Copies { get; set; } = [];

    /// <summary>The name of the edge heading that rows to come belong under.</summary>
    public string? Heading { get; set; }

    /// <summary>The sizes that have that heading; null for all.</summary>
    public IReadOnlyList<int>? HeadingSizes { get; set; }

    /// <summary>The piece as it stands, a size.</summary>
    public Piece[] Finished => CopyOf is { } model ? LikeModel(model.Finished) : _finished ??= Array.ConvertAll(Builders, b => b.Finish());

    /// <summary>True if the number of rows is not certain in a size.</summary>
    public bool RowsInDoubt => Array.Exists(Builders, b => b.RowsInDoubt);

    /// <summary>True if any of its lines could not be read.</summary>
    public bool Unread { get; set; }

    /// <summary>True if it is not certain how long its edges are and what they are called.</summary>
    public bool EdgesInDoubt => RowsInDoubt || NamesInDoubt || StepsInDoubt || CopyOf is { EdgesInDoubt: true };

    /// <summary>True if it is not known how many stitches were left or added at an edge.</summary>
    public bool StepsInDoubt { get; set; }

    // It is fastened off: the maker begins the next one, or puts both aside until they are joined.
    private Piece[] LikeModel(Piece[] model)
    {
        if (!ReferenceEquals(model, _model)) _finished = Array.ConvertAll(model, p => p with { Name = Name, FastenedOff = true });
        _model = model;
        return _finished!;
    }

    /// <summary>Something was added: the finished piece is made anew when it is asked for.</summary>
    public void Changed() => _finished = null;

    /// <summary>A line of the piece can't be used: counts are not known until the next claim.</summary>
    public void Doubt(bool rows)
    {
        foreach (var builder in Builders)
        {
            if (!builder.HasBegun) builder.BeginUnknown();
            builder.Doubt(rows);
        }

        Changed();
    }

    /// <summary>
    /// Reads a line for some sizes. In the others a piece of which nothing is known stands in, so that the line says nothing of them and
    /// leaves them alone.
    /// </summary>
    public void During(bool[] sizes, Action read)
    {
        var others = Array.ConvertAll(Builders, static b => b);
        var unknown = new PieceBuilder(Name, new Dictionary<Stitch, TurnRule>());
        unknown.BeginUnknown();
        unknown.Doubt(true);
        for (var i = 0; i < sizes.Length; i++)
        {
            if (!sizes[i]) Builders[i] = unknown;
        }

        _lead = Array.IndexOf(sizes, true);
        read();
        _lead = 0;
        for (var i = 0; i < sizes.Length; i++)
        {
            if (!sizes[i]) Builders[i] = others[i];
        }

        Changed();
    }

    /// <summary>Adds the passage of a line that makes rows.</summary>
    public void AddRowsPassage(object line)
    {
        Passages.Add(new RowsPassage(line, Heading) { HeadingSizes = HeadingSizes });
        Heading = null;
        Changed();
    }

    /// <summary>The edges that have a name now.</summary>
    public static Hand[] HandsNamed(PieceBuilder builder, string edge)
    {
        var right = string.Equals(builder.NameOf(Hand.Right), edge, StringComparison.OrdinalIgnoreCase);
        var left = string.Equals(builder.NameOf(Hand.Left), edge, StringComparison.OrdinalIgnoreCase);
        return (right, left) switch
        {
            (true, true) => [Hand.Right, Hand.Left],
            (true, false) => [Hand.Right],
            (false, true) => [Hand.Left],
            _ => [],
        };
    }

    /// <summary>The one stitch that the last row is made of, in all sizes; null if there are several, or none.</summary>
    public Stitch? OnlyStitch()
    {
        Stitch? only = null;
        var known = false;
        foreach (var builder in Builders)
        {
            if (builder.Rows is not [.., { Work: { } work }]) continue;
            var kinds = work.Tops.Kinds();
            var here = kinds.Count > 0 && kinds.All(k => k.Place.Stitch == kinds[0].Place.Stitch) ? kinds[0].Place.Stitch : null;
            if (known && here != only) return null;
            (only, known) = (here, true);
        }

        return known ? only : PlainStitch();
    }

    /// <summary>The plain stitch that the piece goes on with in the first size that has one; null if none has.</summary>
    public Stitch? PlainStitch()
    {
        foreach (var builder in Builders)
        {
            if (builder.PlainStitch() is { } stitch) return stitch;
        }

        return null;
    }
}

/// <summary>A part of a divided row.</summary>
internal sealed record NamedPart(int[] FromRight, int[] Count, TextSpan Span)
{
    /// <summary>True once a piece goes on from it.</summary>
    public bool Used { get; set; }
}
