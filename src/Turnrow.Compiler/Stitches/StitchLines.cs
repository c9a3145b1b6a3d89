using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Stitches;

/// <summary>The lines of a file that define stitches: what stands below a line is not known there yet, but can be spoken of.</summary>
internal sealed class StitchLines(IEnumerable<StatementSyntax?> statements)
{
    // Made when it is first asked for: it serves messages alone.
    private List<StitchStatement>? _lines;

    private List<StitchStatement> Lines => _lines ??= [.. statements.OfType<StitchStatement>()];

    /// <summary>True if a line defines a stitch of this name or abbreviation.</summary>
    public static bool IsCalled(StitchStatement line, string word) =>
        string.Equals(line.Name.Text, word, StringComparison.OrdinalIgnoreCase) || string.Equals(line.Abbreviation?.Text, word, StringComparison.OrdinalIgnoreCase);

    /// <summary>The line further down that defines the stitch which a word means; null if there is none.</summary>
    public StitchStatement? Below(NameSyntax word) => Lines.Find(line => line.Span.Start > word.Span.Start && IsCalled(line, word.Text));

    /// <summary>True if a stitch is made of another, straight or by way of others.</summary>
    public bool Needs(StitchStatement line, StitchStatement other)
    {
        var (open, seen) = (new Queue<StitchStatement>([line]), new HashSet<StitchStatement>(ReferenceEqualityComparer.Instance) { line });
        while (open.TryDequeue(out var next))
        {
            foreach (var word in WordsOf(next))
            {
                if (IsCalled(other, word)) return true;
                if (Lines.Find(l => IsCalled(l, word)) is { } named && seen.Add(named)) open.Enqueue(named);
            }
        }

        return false;
    }

    private static IEnumerable<string> WordsOf(StitchStatement line)
    {
        var open = new Stack<RowItemSyntax>(line.Items);
        while (open.TryPop(out var item))
        {
            if (item is TogetherItem together) open.Push(together.What);
            else if (item is GroupItem group) foreach (var inside in group.Items) open.Push(inside);
            else if (item is StitchItem stitch) foreach (var word in stitch.Words) yield return word.Text;
        }
    }
}
