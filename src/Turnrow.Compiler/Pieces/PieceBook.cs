using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Values;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Pieces;

/// <summary>The pieces opened so far, and those still to come.</summary>
internal sealed class PieceBook(Context context)
{
    private readonly List<PieceState> _pieces = [];
    private readonly Dictionary<string, PieceState> _byName = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<PieceState, PieceState> _mirrors = [];
    private Joins.MeetingPoints[]? _meetingPoints;
    private readonly Dictionary<string, TextSpan> _later = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>The pieces in order.</summary>
    public IReadOnlyList<PieceState> All => _pieces;

    /// <summary>The pieces as they lie there in the end: of those that are made several times, each.</summary>
    public IEnumerable<PieceState> Made => _pieces.SelectMany(static p => p.Copies.Count > 0 ? p.Copies : [p]);

    /// <summary>The edges used so far.</summary>
    public Joins.EdgeUses Uses { get; } = new();

    /// <summary>The seams so far.</summary>
    public List<(IReadOnlyList<Joins.BoundWalk> First, IReadOnlyList<Joins.BoundWalk> Second)> Seams { get; } = [];

    /// <summary>The pieces that are joined to others while they are worked.</summary>
    public List<(PieceState Piece, PieceState Other)> JoinedAsTheyGo { get; } = [];

    /// <summary>The points where edges meet, a size.</summary>
    public Joins.MeetingPoints[] MeetingPoints => _meetingPoints ??= Sized.Each(context.Sizes, i => new Joins.MeetingPoints(this, i));

    /// <summary>True if a line that may have opened a piece could not be read.</summary>
    public bool InDoubt { get; set; }

    /// <summary>True if a line that joins pieces, or goes on from one, could not be used: what seems unjoined may be joined by it.</summary>
    public bool JoinsInDoubt { get; set; }

    public void Announce(NameSyntax name) => _later.TryAdd(name.Text, name.Span);

    public void Add(PieceState piece)
    {
        _pieces.Add(piece);
        _byName.TryAdd(piece.Name, piece);
        foreach (var copy in piece.Copies) _byName.TryAdd(copy.Name, copy);
        if (piece.MirrorOf is { } original) _mirrors.TryAdd(original, piece);
    }

    public PieceState? Find(string name) => _byName.GetValueOrDefault(name);

    /// <summary>The mirror of a piece: what mirrors it, or what it mirrors; null for none.</summary>
    public PieceState? MirrorOf(string name) =>
        Find(name) is { } piece ? _mirrors.GetValueOrDefault(piece) ?? piece.MirrorOf : null;

    /// <summary>
    /// The piece that words begin with, <c>sleeve</c> or <c>second sleeve</c>; of one that is made several times <c>sleeve</c> alone is each of
    /// them. Null, and reported, if there is none.
    /// </summary>
    /// <param name="words">The words.</param>
    /// <param name="named">How many of them name the piece.</param>
    public PieceState? Bind(IReadOnlyList<NameSyntax> words, out int named)
    {
        named = 1;
        var nth = PieceOpening.OrdinalOf(words[0]);
        if (nth < 0 || words.Count < 2 || Find(words[0].Text) is not null || Find(words[1].Text) is not { } piece) return Bind(words[0]);
        named = 2;
        if (nth < piece.Copies.Count) return piece.Copies[nth];
        JoinsInDoubt = true;
        var span = words[0].Span.To(words[1].Span);
        if (piece.Copies.Count > 0) context.Findings.Add(MadeSeveral.TooMany(span, piece.Name, piece.Copies.Count));
        else if (!InDoubt && !piece.NamesInDoubt) context.Findings.Add(MadeSeveral.Once(span, piece.Name));
        return null;
    }

    /// <summary>The piece that a word names; null, and reported, if there is none yet.</summary>
    public PieceState? Bind(NameSyntax name)
    {
        if (Find(name.Text) is { } piece) return piece;
        JoinsInDoubt = true;
        if (_later.TryGetValue(name.Text, out var later)) context.Findings.Add(PieceBelow.At(name.Span, name.Text, later));
        else if (!InDoubt) context.Findings.Add(UnknownPiece.At(name.Span, name.Text, _byName.Keys));
        return null;
    }
}
