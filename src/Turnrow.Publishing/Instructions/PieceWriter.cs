using Turnrow.Fabric.Colours;
using Turnrow.Fabric.Motifs;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Publishing.Instructions.Folding;
using Turnrow.Publishing.Instructions.Phrases;
using Turnrow.Publishing.Instructions.Telling;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions;

/// <summary>Writes one piece: its heading, its lines in order, and where the yarn is at its end.</summary>
internal sealed class PieceWriter(Pattern pattern, SizeNames names, Wording words)
{
    private readonly Paragraphs _paragraphs = new(names);

    /// <summary>The piece as paragraphs of Markdown.</summary>
    public IReadOnlyList<string> Write(PieceInSizes piece)
    {
        words.InPiece = piece.Name;
        var each = BeginsAt(piece.InSizes[0].Start) is { } other ? $", one on each {Names.Title(other)}" : string.Empty;
        var several = piece.Copies > 1 ? $" (make {Numbers.Plain(piece.Copies)}{each})" : string.Empty;
        _paragraphs.Add($"### {Names.Title(piece.Name)}{several}");
        AddNumber(piece);
        _paragraphs.AddRange(JoinPhrases.Sentences(piece.InSizes, words));
        var rows = new RowsWriter(pattern, names, words, _paragraphs);
        var lines = new PieceLines(piece, words);
        foreach (var rest in lines.WithoutPassage) rows.Write(rest);
        var hasRows = lines.WithoutPassage.Count > 0;
        var fastenedOff = false;
        string? prose = null;
        // A name that begins in some sizes stands above the first rows that those have under it.
        RowsPassage? waiting = null;
        foreach (var passage in piece.Passages)
        {
            prose = Prose(passage, prose);
            switch (passage)
            {
                case RowsPassage line:
                    var sizes = lines.Of(line);
                    waiting = line.Heading is null ? waiting : line;
                    if (waiting is { Heading: { } heading } && sizes.Any(s => s.Rows.Count > 0 && Has(waiting, s.Size)))
                    {
                        if (hasRows) _paragraphs.Add(waiting.HeadingSizes ?? names.Indexes, $"*{Names.Title(heading)}*");
                        waiting = null;
                    }

                    rows.Write(sizes);
                    hasRows = true;
                    break;
                case FastenOffPassage:
                    fastenedOff = true;
                    _paragraphs.Add(EndOf(piece, "Fasten off."));
                    break;
            }
        }

        if (prose is not null) _paragraphs.Add(prose);
        if (!fastenedOff) AddYarn(piece);
        return _paragraphs.InOrder();
    }

    // What motifs are worked around is made as often as they are.
    private void AddNumber(PieceInSizes piece)
    {
        var numbers = Enumerable.Range(0, piece.InSizes.Count).Select(size => (Size: size, Number: MotifNumbers.Of(pattern, size).GetValueOrDefault(piece.Name))).Where(static n => n.Number > 1).ToList();
        if (numbers.Count == 0) return;
        var blankets = pattern.Blankets.Where(b => b.Motifs.Any(motif => pattern.Pieces.Any(p => p.Name == motif && p.InSizes.Any(s => s.Start is PickUpStart start && start.Walk.Any(leg => leg.Piece.Name == piece.Name)))));
        var of = Wording.List([.. blankets.Select(static b => Names.Title(b.Name))]);
        _paragraphs.Add([.. numbers.Select(static n => n.Size)], $"Make {Sized.Over([.. numbers.Select(static n => (int)n.Number)]).Written()}, one for each motif{(of.Length > 0 ? $" of {of}" : string.Empty)}.");
    }

    private static bool Has(RowsPassage line, int size) => line.HeadingSizes is not { } some || some.Contains(size);

    // Lines of prose one after the other are one paragraph.
    private string? Prose(Passage passage, string? before)
    {
        if (passage is ProsePassage prose) return before is null ? prose.Text : $"{before}\n{prose.Text}";
        if (before is not null) _paragraphs.Add(before);
        return null;
    }

    private void AddYarn(PieceInSizes piece)
    {
        var ends = new List<(int Size, string Text)>();
        for (var i = 0; i < piece.InSizes.Count; i++)
        {
            if (piece.InSizes[i].Rows.Count > 0) ends.Add((i, YarnAfter(piece.InSizes[i], i)));
        }

        foreach (var group in ends.GroupBy(static e => e.Text))
        {
            _paragraphs.Add([.. group.Select(static e => e.Size)], EndOf(piece, group.Key));
        }
    }

    // A spiral has no join at its end.
    private string EndOf(PieceInSizes piece, string end) =>
        piece.InSizes.Any(static p => p.Rows is [.., { IsRound: true, Way: RoundWay.Spiral }]) ? $"{Wording.Sentence(new SpiralEnds().Written(words))}. {end}" : end;

    private string YarnAfter(Piece piece, int size)
    {
        var between = new List<string>();
        foreach (var inSizes in pattern.Pieces.SkipWhile(p => p.Name != piece.Name).Skip(1))
        {
            if (size >= inSizes.InSizes.Count || inSizes.InSizes[size] is not { Rows.Count: > 0 } later) continue;
            if (!GoesOn(later, piece.Name)) between.Add(Names.Title(later.Name));
            else return Waiting(piece, later, between);
        }

        return "Fasten off.";
    }

    // What is made several times and begins at another piece has its own of that.
    private static string? BeginsAt(PieceStart? start) => start switch
    {
        PartStart part => part.Base.Name,
        PickUpStart { Walk: [var leg, ..] } => leg.Piece.Name,
        _ => null,
    };

    // Where another piece comes first, the loop has to be kept until then, and that piece has yarn of its own.
    private string Waiting(Piece piece, Piece later, List<string> between)
    {
        var side = words.Side(later.Rows[0].RightSide);
        var (title, kind) = (Names.Title(later.Name), later.Rows[0].IsRound ? "round" : "row");
        var goesOn = piece.EndsInRounds
            ? $"{title} goes on from where the last round is joined, with a {side} {kind}"
            : $"the yarn is at the {words.Edge(piece.HookAt)}, where {title} goes on with a {side} row";
        if (between.Count == 0) return $"Do not fasten off: {goesOn}.";
        words.KeepLoop(piece.Name, later.Name);
        return $"Do not fasten off, but put the loop on a marker: {goesOn}. {Wording.List(between)} {(between.Count == 1 ? "comes" : "come")} first, with another ball of yarn.";
    }

    private static bool GoesOn(Piece later, string name) => later.Start switch
    {
        PartStart { Joined: false } part => part.Base.Name == name,
        AcrossStart { Joined: false } across => later.Rows.Count > 0 && across.First(later.Rows[0].StartsAt).Base.Name == name,
        PickUpStart { Joined: false, Walk: [var leg, ..] } => leg.Piece.Name == name,
        _ => false,
    };
}

/// <summary>The rows of a piece by the line that makes them, told size by size.</summary>
internal sealed class PieceLines
{
    private readonly PieceInSizes _piece;
    private readonly Dictionary<object, List<ToldRow>[]> _byLine = new(ReferenceEqualityComparer.Instance);
    private readonly object _noLine = new();

    public PieceLines(PieceInSizes piece, Wording words)
    {
        _piece = piece;
        var order = new List<object>();
        // A piece of one yarn says it where it begins; rows of several each say theirs, since a maker comes back to them for a repeat.
        var changes = words.NamesYarns && YarnsWorked.AreSeveral(piece.InSizes);
        for (var size = 0; size < piece.InSizes.Count; size++)
        {
            var inSize = piece.InSizes[size];
            var teller = new PieceTeller(inSize, words.NamesYarns ? new YarnTeller(inSize, changes, words.MostFloat) : null);
            for (var i = 0; i < inSize.Rows.Count; i++)
            {
                var line = inSize.Rows[i].Origin.Value ?? _noLine;
                if (!_byLine.TryGetValue(line, out var rows))
                {
                    _byLine[line] = rows = [.. piece.InSizes.Select(static _ => new List<ToldRow>())];
                    order.Add(line);
                }

                rows[size].Add(new ToldRow(inSize.Rows[i], teller.Tell(i)));
            }
        }

        var told = new HashSet<object>(piece.Passages.OfType<RowsPassage>().Select(static p => p.Line), ReferenceEqualityComparer.Instance);
        WithoutPassage = [.. order.Where(l => !told.Contains(l)).Select(SizesOf)];
    }

    /// <summary>Rows of lines that no passage names: a beginning picked up or mirrored.</summary>
    public IReadOnlyList<IReadOnlyList<SizeRows>> WithoutPassage { get; }

    /// <summary>The rows of a line, a size.</summary>
    public IReadOnlyList<SizeRows> Of(RowsPassage passage) => _byLine.ContainsKey(passage.Line) ? SizesOf(passage.Line) : [];

    private List<SizeRows> SizesOf(object line) =>
        [.. _byLine[line].Select((rows, size) => new SizeRows(size, _piece.InSizes[size], rows))];
}
