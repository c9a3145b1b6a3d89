using System.Text.RegularExpressions;

namespace Turnrow.Publishing.Tests.Reader;

/// <summary>A pattern as a maker of one size made it from the published page.</summary>
internal sealed record ReadPattern(
    IReadOnlyDictionary<string, ReadPiece> Pieces, IReadOnlyList<ReadSeam> Seams, IReadOnlyList<Stumble> Stumbles, IReadOnlyList<Stumble> Doubts)
{
    /// <summary>Blankets of motifs, by their titles.</summary>
    public IReadOnlyDictionary<string, ReadBlanket> Blankets { get; init; } = new Dictionary<string, ReadBlanket>();
}

/// <summary>
/// Reads the published instructions as a maker would who has chosen her size: row by row, stitch by stitch. It shares no code with what
/// writes them; it knows the trade's conventions and what the page says.
/// </summary>
internal sealed partial class PatternReader
{
    private readonly Dictionary<string, ReadPiece> _pieces = [];
    private readonly Dictionary<string, IReadOnlyList<string>> _told = [];
    private readonly Dictionary<string, ReadBlanket> _blankets = [];
    private readonly List<ReadSeam> _seams = [];
    private readonly List<Stumble> _stumbles = [];
    private readonly List<Stumble> _doubts = [];
    private readonly PublishedText _text;
    private readonly StitchWords _stitches;
    private readonly SizeChoice _size;
    private readonly ChainRules _rules;
    private readonly IReadOnlySet<string> _prose;

    private PatternReader(PublishedText text, int size, IReadOnlySet<string> prose)
    {
        _text = text;
        _stitches = new StitchWords(text.Uk, text.Special);
        _size = new SizeChoice(text.Sizes, size);
        _rules = new ChainRules(text.Notes, _stitches);
        _prose = prose;
    }

    /// <param name="markdown">The page.</param>
    /// <param name="size">Her size, by index.</param>
    /// <param name="prose">The designer's own words, which say nothing of stitches.</param>
    public static ReadPattern Read(string markdown, int size, IReadOnlySet<string>? prose = null)
    {
        var reader = new PatternReader(PublishedText.Of(markdown), size, prose ?? new HashSet<string>());
        foreach (var part in reader._text.Parts)
        {
            if (part.IsPiece) reader.Piece(part);
            else reader.Joins(part);
        }

        return new ReadPattern(reader._pieces, reader._seams, reader._stumbles, reader._doubts) { Blankets = reader._blankets };
    }

    private void Piece(PublishedPart part)
    {
        if (part.Paragraphs.Any(static paragraph => paragraph.StartsWith("**First motif:**", StringComparison.Ordinal)))
        {
            Try(part.Title, "(the blanket)", () => Blanket(part));
            return;
        }

        var make = Regex.Match(part.Title, @"^(?<title>.+) \(make (?<copies>\d+)(?:, one on each .+)?\)$");
        var title = make.Success ? make.Groups["title"].Value : part.Title;
        // What is worked as another piece reads as that one does.
        if (part.Paragraphs is [var only] && AsOther().Match(only) is { Success: true } other && _told.TryGetValue(other.Groups["piece"].Value, out var model))
            part = part with { Paragraphs = model };
        _told[title] = part.Paragraphs;

        // One that is made on each of several is at its own: there is no more to it.
        if (!Made(part, title) || !make.Success || part.Title.Contains(", one on each ", StringComparison.Ordinal)) return;
        // She makes each of several alike, and is told which is which when they are joined.
        foreach (var nth in new[] { "First", "Second", "Third", "Fourth" }.Take(Number.Of(make.Groups["copies"].Value)).Append("Each"))
            Made(part, $"{nth} {char.ToLowerInvariant(title[0])}{title[1..]}", true);
    }

    private void Blanket(PublishedPart part)
    {
        var paragraphs = part.Paragraphs.Where(paragraph => !_prose.Contains(paragraph)).Select(_size.Choose).OfType<string>().ToList();
        if (ReadBlanket.Of(paragraphs, part.Title, _pieces, Motif) is not var (blanket, rim)) throw new Misread("it cannot be read");
        _blankets[part.Title] = blanket;
        _pieces[part.Title] = rim;
    }

    // All as the motif but its last round.
    private ReadPiece Motif(string name, IReadOnlyList<(string Edge, string Side)> beside, string round)
    {
        var piece = new ReadPiece(name);
        var doubts = new List<string>();
        var reader = new PieceReader(piece, _pieces, _stitches, _rules, new Claims(_text.Notes), doubts);
        foreach (var paragraph in _told[name].Where(paragraph => !_prose.Contains(paragraph) && paragraph != "Fasten off.").Select(_size.Choose).OfType<string>())
        {
            if (!reader.Read(paragraph)) throw new Misread($"`{paragraph}` can't be read");
        }

        reader.JoinInstead(beside.Select(b => (b.Edge, _pieces[name].SideOf(b.Side).AsEnumerable())));
        if (!reader.Read(round) || !reader.Read("Fasten off.")) throw new Misread("the joined round can't be read");
        reader.End();
        return piece;
    }

    private bool Made(PublishedPart part, string title, bool isCopy = false)
    {
        var piece = new ReadPiece(title) { IsCopy = isCopy };
        var doubts = new List<string>();
        var reader = new PieceReader(piece, _pieces, _stitches, _rules, new Claims(_text.Notes), doubts);
        var done = Each(part, doubts, paragraph => reader.Read(paragraph) || _prose.Contains(paragraph));
        if (!done || !Try(part.Title, "(the end of the piece)", reader.End)) return false;
        _pieces[title] = piece;
        return true;
    }

    [GeneratedRegex(@"^Work as (?<piece>[^.]+)\.$")]
    private static partial Regex AsOther();

    private void Joins(PublishedPart part) => Each(part, [], paragraph =>
    {
        if (ReadSeam.Of(paragraph, _stitches, EndsAt) is { } seam) _seams.Add(seam);
        else if (paragraph != "Weave in all ends." && !_prose.Contains(paragraph)) return false;
        return true;
    });

    private IReadOnlyList<int> EndsAt(SeamEdge edge) => edge.Edge is "right edge" or "left edge" && _pieces.TryGetValue(edge.Piece, out var piece)
        ? [.. piece.Edge(edge.Edge == "right edge" ? Side.Right : Side.Left).Where(static part => part.Lies == Lies.RowEnd).Select(static part => part.Row)]
        : [];

    private bool Each(PublishedPart part, List<string> doubts, Func<string, bool> read)
    {
        foreach (var paragraph in part.Paragraphs)
        {
            var done = Try(part.Title, paragraph, () =>
            {
                if (_size.Choose(paragraph) is { } mine && !read(mine)) throw new Misread("it cannot be read");
            });
            foreach (var doubt in doubts) _doubts.Add(new Stumble(part.Title, paragraph, doubt));
            doubts.Clear();
            if (!done) return false;
        }

        return true;
    }

    private bool Try(string part, string sentence, Action action)
    {
        try
        {
            action();
            return true;
        }
        catch (Misread misread)
        {
            _stumbles.Add(new Stumble(part, sentence, $"{misread.Message} (size {_size.Name})"));
            return false;
        }
    }
}
