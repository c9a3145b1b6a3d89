using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Rows;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.StitchPatterns;

/// <summary>
/// Makes a stitch pattern of a picture: the bottom line is its first row, a right-side row, which is worked from the picture's right to its
/// left; wrong-side rows from its left to its right. In rounds that are not turned every line is read from right to left, and there are no
/// edges: what the key says of a row's first and last stitches is left out. What a letter does depends on what is below it, so the rows that come
/// the second time are made for themselves.
/// </summary>
/// <param name="context">What the file says.</param>
/// <param name="statement">The pattern's heading.</param>
/// <param name="block">Its lines.</param>
/// <param name="way">How rounds follow each other; null for rows.</param>
internal sealed class PictureBinder(Context context, StitchPatternStatement statement, StitchPatternBlock block, RoundWay? way = null)
{
    private const int MostRows = 200;
    private const int MostCells = 12_000;

    private readonly Dictionary<string, Key> _keys = new(StringComparer.Ordinal);
    private int _yarnsUnknown;
    private static readonly Key _none = new([], default);
    private Key _first = _none;
    private Key _last = _none;

    private sealed record Key(IReadOnlyList<Word> Words, TextSpan Span);

    /// <summary>The stitch pattern; null, and reported, if the picture can't be worked.</summary>
    public StitchPattern? Bind(int multiple, int plus)
    {
        var before = context.Findings.All.Count;
        var lines = new List<PictureRowStatement>();
        foreach (var line in block.Lines)
        {
            if (line.Statement is PictureRowStatement picture) lines.Add(picture);
            else if (line.Statement is KeyStatement key) AddKey(key);
            else context.Findings.Add(Picture.Line(line.Span));
        }

        if (!statement.FromPicture) context.Findings.Add(Picture.Unsaid(statement.Name.Span));
        if (lines.Count == 0) context.Findings.Add(Picture.Empty(statement.Name.Span, statement.Name.Text));
        if (lines.Count > MostRows || lines.Sum(static l => l.Cells.Count) > MostCells) context.Findings.Add(Picture.Large(statement.Name.Span, MostRows, MostCells));
        if (context.Findings.All.Count > before + _yarnsUnknown) return null;
        lines.Reverse();
        if (!CheckLetters(lines) || !CheckWidth(lines, multiple, plus)) return null;
        if (way is not null) (_first, _last, plus) = (_none, _none, 0);
        if (way == RoundWay.Turned && Wide(lines) is { } wide)
        {
            context.Findings.Add(PictureRounds.Wide(wide.Span, statement.Name.Text, wide.Text, PictureColumns.Takes(_keys[wide.Text].Words)));
            return null;
        }

        return RowsOf(lines, multiple, plus) is { } rows ? new StitchPattern(statement.Name.Text, multiple, plus, rows, lines.Count) { Way = way } : null;
    }

    // A round that was turned begins with the stitch at the join, which is the other end of the line: a letter must not lie across it.
    private NameSyntax? Wide(List<PictureRowStatement> lines)
    {
        foreach (var line in lines)
        {
            foreach (var cell in line.Cells)
            {
                if (PictureColumns.Takes(_keys[cell.Text].Words) > 1) return cell;
            }
        }

        return null;
    }

    private void AddKey(KeyStatement statement)
    {
        if (WordsOf(statement) is not { } words) return;
        if (words.Any(static word => !IsOverColumns(word))) context.Findings.Add(Picture.Word(statement.Span));
        var key = new Key(words, statement.Span);
        if (statement.Place == KeyPlace.First) _first = key;
        else if (statement.Place == KeyPlace.Last) _last = key;
        else if (!_keys.TryAdd(statement.Letter.Text, key)) context.Findings.Add(Picture.Twice(statement.Letter.Span, statement.Letter.Text, _keys[statement.Letter.Text].Span));
        var (takes, makes) = (PictureColumns.Takes(words), PictureColumns.Makes(words));
        if (takes != makes) context.Findings.Add(Picture.Columns(statement.Span, takes, makes));
    }

    // A letter that is a yarn is one plain stitch of it.
    private IReadOnlyList<Word>? WordsOf(KeyStatement key)
    {
        if (!key.IsYarn) return new RowBinder(context) { OfKey = true }.Bind(key.Items, null)[0];
        if (statement.Stitch is not { } word)
        {
            context.Findings.Add(PictureStitch.At(key.Span));
            return null;
        }

        if (StitchWord.Read(word.Text, context) is not { Together: 1, Stitch: { IsOne: true, Takes: 1 } stitch } || stitch == StitchBook.Chain)
        {
            context.ReportUnknown(word);
            return null;
        }

        // A yarn that is not there changes no count.
        var yarn = ((YarnItem)key.Items[0]).Yarn;
        if (!context.Yarns.Has(yarn.Text) && StitchWord.Read(yarn.Text, context) is not null)
        {
            context.Findings.Add(YarnUnknown.Stitch(yarn.Span, yarn.Text));
            context.Yarns.Misname();
            return null;
        }

        var told = context.Findings.All.Count;
        var name = context.Yarns.Use(yarn) ?? yarn.Text;
        _yarnsUnknown += context.Findings.All.Count - told;
        return [new ChangeYarn(name), Work.Plain(stitch, Amount.Once)];
    }

    // What goes to places by name or as far as it can has no width of its own.
    private static bool IsOverColumns(Word word) => word is Chains or Skip or ChangeYarn or Work { Amount.Reach: Reach.Fixed, Target.Aim: Aim.Next };

    private bool CheckLetters(List<PictureRowStatement> lines)
    {
        var sound = true;
        foreach (var line in lines)
        {
            foreach (var cell in line.Cells)
            {
                if (_keys.ContainsKey(cell.Text)) continue;
                context.Findings.Add(Picture.Letter(cell.Span, cell.Text, _keys.Keys));
                sound = false;
            }
        }

        return sound;
    }

    private bool CheckWidth(List<PictureRowStatement> lines, int multiple, int plus)
    {
        var edges = PictureColumns.Takes(_first.Words) + PictureColumns.Takes(_last.Words);
        var width = WidthOf(lines[^1]);
        foreach (var line in lines)
        {
            if (WidthOf(line) == width) continue;
            context.Findings.Add(Picture.Uneven(line.Span, WidthOf(line), width, lines[^1].Span));
            return false;
        }

        if (width == multiple && edges == plus) return true;
        context.Findings.Add(Picture.Width(statement.Multiple.Span, width, edges, multiple, plus));
        return false;
    }

    private int WidthOf(PictureRowStatement line) => PictureColumns.InAll(line.Cells, cell => PictureColumns.Takes(_keys[cell.Text].Words));

    // The first time over plain stitches, then over its own last row; where its rows are odd in number and turned, that is once on each side.
    private List<StitchPatternRow>? RowsOf(List<PictureRowStatement> lines, int multiple, int plus)
    {
        var rows = new List<StitchPatternRow>();
        var below = PictureColumns.Plain((2 * multiple) + plus);
        var isTurned = way is null or RoundWay.Turned;
        var count = lines.Count * (int.IsEvenInteger(lines.Count) || !isTurned ? 2 : 3);
        for (var row = 0; row < count; row++)
        {
            var line = lines[row % lines.Count];
            var rightSide = !isTurned || int.IsEvenInteger(row);
            IReadOnlyList<NameSyntax> cells = rightSide ? [.. line.Cells.Reverse()] : way is null ? line.Cells : [line.Cells[^1], .. line.Cells.SkipLast(1)];
            if (Row(cells, below) is not { } words)
            {
                context.Findings.Add(Picture.InsideSpace(line.Span, row >= lines.Count));
                return null;
            }

            rows.Add(new StitchPatternRow(words, isTurned ? rightSide : null, way is not null));
            List<Word> repeat = [.. cells.SelectMany(cell => _keys[cell.Text].Words)];
            below = PictureColumns.Above([.. _first.Words, .. repeat, .. repeat, .. _last.Words], way);
        }

        return rows;
    }

    // Tried over two repeats: both have to be worked alike.
    private List<Word>? Row(IReadOnlyList<NameSyntax> cells, PictureColumns below)
    {
        if (below.Over(_first.Words) is not { } first || Cells(cells, below) is not { } one || Cells(cells, below) is not { } other) return null;
        if (below.Over(_last.Words) is not { } last || !WordLists.Same(one, other)) return null;
        var remain = last.Sum(WordCounts.Takes);
        return [.. first, new Repeat(one, remain == 0 ? Amount.Across : Amount.Until(remain)), .. last];
    }

    private List<Word>? Cells(IReadOnlyList<NameSyntax> cells, PictureColumns below)
    {
        var words = new List<Word>();
        List<Word>? before = null;
        var times = 0;
        foreach (var cell in cells)
        {
            if (below.Over(_keys[cell.Text].Words) is not { } here) return null;
            if (before is not null && WordLists.Same(before, here))
            {
                times++;
                continue;
            }

            Add(words, before, times);
            (before, times) = (here, 1);
        }

        Add(words, before, times);
        return words;
    }

    // Like cells side by side are worked as one: so many more of a stitch, or a repeat.
    private static void Add(List<Word> words, List<Word>? cell, int times)
    {
        if (cell is null) return;
        if (cell[0] is ChangeYarn change && cell.FindLastIndex(static w => w is ChangeYarn) == 0)
        {
            if (YarnWords.Last(words) != change.Yarn) words.Add(change);
            cell = cell.GetRange(1, cell.Count - 1);
        }

        if (cell is [Work { Takes: 1, Makes: 1, Target.Aim: Aim.Next } plain])
        {
            var more = plain with { Amount = Amount.Of(plain.Amount.Count * times) };
            if (words.Count > 0 && words[^1] is Work last && last with { Amount = more.Amount, Origin = more.Origin } == more) words[^1] = more with { Amount = Amount.Of(last.Amount.Count + more.Amount.Count) };
            else words.Add(more);
        }
        else if (times == 1)
        {
            words.AddRange(cell);
        }
        else
        {
            words.Add(new Repeat(cell, Amount.Of(times)));
        }
    }
}
