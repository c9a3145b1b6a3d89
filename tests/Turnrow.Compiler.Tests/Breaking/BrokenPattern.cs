using Turnrow.Syntax;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Tests.Breaking;

/// <summary>A pattern with one break: which of its lines are changed, and what has become of them.</summary>
internal sealed class BrokenPattern
{
    private readonly SyntaxTree _before;
    private readonly Edit _edit;
    private readonly bool _another;

    public BrokenPattern(PatternWords pattern, Edit edit)
    {
        var before = pattern.Tree;
        (_before, _edit) = (before, edit);
        var after = SyntaxReader.Read(new SourceText(before.Source.FileName, edit.Text));
        Changed = Enumerable.Range(0, before.Lines.Count).Where(i => edit.Touches(Extent(before.Lines[i].Span))).ToHashSet();
        var untouched = before.Lines.Where((_, i) => !Changed.Contains(i)).Select(line => AfterEdit(line.Span.Start)).ToHashSet();
        Now = [.. after.Lines.Where(line => !untouched.Contains(line.Span.Start))];
        _another = NotationWords.Statement(edit.NewText.Trim()) is not null;
        Known = new KnownCounts(pattern, Changed, Now, _another, InsertedBehind());
    }

    /// <summary>Indexes of the lines that the break touches.</summary>
    public IReadOnlySet<int> Changed { get; }

    /// <summary>The lines that stand there now.</summary>
    public IReadOnlyList<LineSyntax> Now { get; }

    /// <summary>Which counts do not depend on the break.</summary>
    public KnownCounts Known { get; }

    /// <summary>True if none of the lines that stand there now says anything else instead.</summary>
    public bool IsUnreadable => Now.Count > 0 && Now.All(line => line.Broken);

    /// <summary>What the break looks like to the compiler: the same for all breaks that it can't tell apart.</summary>
    public string Shape =>
        string.Join(' ', Changed.Order()) + (_another ? "|another|" : "|") + string.Join('|', Now.Select(line => $"{line.Keyword} {line.Broken} {TreeText.Of(line.Statement)}"));

    /// <summary>The break in words.</summary>
    public override string ToString() =>
        $"`{_before.Source.ToString(_edit.Span)}` at {_before.Source.PositionOf(_edit.Span.Start)} becomes `{_edit.NewText}`, which leaves [{string.Join(" | ", Now.Select(l => _edit.Text.AsSpan(l.Span.Start, l.Span.Length).ToString()))}]";

    /// <summary>What is found beside what is wrong with the broken lines' own words: the line's index (-1 on the break), and the finding.</summary>
    public IReadOnlyList<(int Line, Diagnostic Found)> Compile(IReadOnlyList<Plant> plants)
    {
        var text = _edit.Text;
        foreach (var plant in plants.Reverse()) text = text.Insert(AfterEdit(plant.Position), plant.Text);
        var compilation = Compilation.Of(new SourceText(_before.Source.FileName, text), Repository.Beside);
        var read = compilation.Tree.Diagnostics.ToHashSet();
        return [.. compilation.Diagnostics.Where(d => !read.Contains(d)).Select(d => (LineOf(d.Span.Start, plants), d))];
    }

    private int LineOf(int position, IReadOnlyList<Plant> plants)
    {
        foreach (var plant in plants)
        {
            if (position >= AfterEdit(plant.Position) + plant.Text.Length) position -= plant.Text.Length;
        }

        if (Now.Any(line => position >= line.Span.Start && position <= line.Span.End)) return -1;
        if (position >= _edit.Span.Start + _edit.NewText.Length) position -= _edit.Shift;
        for (var i = 0; i < _before.Lines.Count; i++)
        {
            if (position <= _before.Lines[i].Span.End) return Changed.Contains(i) ? -1 : i;
        }

        return -1;
    }

    // The line behind which the break has put a line of its own, where no line was; -1 for none.
    private int InsertedBehind()
    {
        if (Changed.Count > 0 || Now.Count == 0) return -1;
        var last = -1;
        for (var i = 0; i < _before.Lines.Count && _before.Lines[i].Span.Start < _edit.Span.Start; i++) last = i;
        return last;
    }

    private int AfterEdit(int position) => position >= _edit.Span.End ? position + _edit.Shift : position;

    private TextSpan Extent(TextSpan span) =>
        _before.Source.LineSpan(_before.Source.PositionOf(span.Start).Line).To(_before.Source.LineSpan(_before.Source.PositionOf(span.End).Line));
}
