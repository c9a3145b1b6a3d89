using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Header;
using Turnrow.Fabric.Stitches;
using Turnrow.Syntax;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.StitchPatterns;

/// <summary>Reads the stitch patterns of a file, and of those that it uses.</summary>
/// <param name="context">Where they go.</param>
/// <param name="lines">The file's own.</param>
/// <param name="source">The file.</param>
internal sealed class DefinitionBinder(Context context, StitchPatternLines lines, SourceText source)
{
    private readonly Dictionary<string, TextSpan> _used = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>A stitch pattern of the file itself.</summary>
    public void Define(StitchPatternStatement statement)
    {
        var block = lines.Blocks.First(b => ReferenceEquals(b.Heading.Statement, statement));
        CheckName(statement.Name);
        var binder = new StitchPatternBinder(context.Terms, context.TermsInDoubt, context.Scope.InDoubt, context.Rules, context.Yarns);
        var pattern = binder.Bind(block);
        foreach (var found in binder.Found) context.Findings.Add(found);
        context.StitchPatterns.Define(statement.Name.Text, statement.Name.Span, pattern);
    }

    /// <summary>The stitch patterns of another file, and of those that it uses in turn. What is wrong there is told at the line that uses it.</summary>
    public void Use(UseStatement statement)
    {
        var first = statement.File;
        if (!_used.TryAdd(first.Text, first.Span))
        {
            context.Findings.Add(UseFile.Twice(first.Span, first.Text, _used[first.Text]));
            return;
        }

        var open = new Queue<UsedFile>([new UsedFile(first.Text, [])]);
        var read = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        while (open.TryDequeue(out var next))
        {
            if (next.Closes(NameOf(source.FileName)) is { } circle) context.Findings.Add(UseFile.Circle(first.Span, circle));
            else if (read.Add(next.Name)) Read(next, first.Span, open);
        }
    }

    private void Read(UsedFile file, TextSpan at, Queue<UsedFile> open)
    {
        if (context.Beside(file.Name) is not { } text)
        {
            context.Findings.Add(UseFile.Missing(at, file.Name, file.Way));
            context.StitchPatterns.InDoubt = true;
            return;
        }

        var tree = SyntaxReader.Read(new SourceText(file.Name, text));
        var unread = new UnreadLines(tree);
        var findings = new Findings([string.Empty]);
        var terms = TermsFinder.Find(tree, unread, findings, out var termsInDoubt);
        var found = new List<Diagnostic>(tree.Diagnostics);
        found.AddRange(findings.All);
        var blocks = new StitchPatternLines(tree);
        foreach (var line in tree.Lines)
        {
            context.StitchPatterns.InDoubt |= unread.MayBe(line, "stitch") || unread.MayBe(line, "use");
            if (line is { Broken: false, Statement: UseStatement use }) open.Enqueue(file.Using(use.File.Text));
        }

        foreach (var block in blocks.Blocks) found.AddRange(Take(block, terms, termsInDoubt, at));
        if (found.Find(static d => d.Kind.Severity == Severity.Error) is { } wrong) context.Findings.Add(UseFile.Wrong(at, file.Name, tree.Source.PositionOf(wrong.Span.Start).Line, wrong, found.Count(static d => d.Kind.Severity == Severity.Error)));
    }

    private IReadOnlyList<Diagnostic> Take(StitchPatternBlock block, Terms terms, bool termsInDoubt, TextSpan at)
    {
        var binder = new StitchPatternBinder(terms, termsInDoubt, false, context.Rules, context.Yarns);
        var pattern = binder.Bind(block);
        if (block.Statement is { } statement) context.StitchPatterns.Define(statement.Name.Text, at, pattern);
        return binder.Found;
    }

    private void CheckName(NameSyntax name)
    {
        if (context.TryStitch(name.Text) is not null) context.Findings.Add(NameIsStitch.At(name.Span, name.Text));
        if (context.Scope.Find(name.Text) is { OfBody: false } earlier) context.Findings.Add(DefinedTwice.At(name.Span, name.Text, earlier.Span));
    }

    private static string NameOf(string path) => path[(path.LastIndexOfAny(['/', '\\']) + 1)..];

    /// <summary>A file to be read, and the files that lead to it.</summary>
    private sealed record UsedFile(string Name, IReadOnlyList<string> Way)
    {
        public UsedFile Using(string name) => new(name, [.. Way, Name]);

        /// <summary>The circle that reading it would close: it is on its own way, or it is the pattern itself.</summary>
        public IReadOnlyList<string>? Closes(string pattern)
        {
            if (string.Equals(Name, pattern, StringComparison.OrdinalIgnoreCase)) return [pattern, .. Way, Name];
            for (var i = 0; i < Way.Count; i++)
            {
                if (string.Equals(Way[i], Name, StringComparison.OrdinalIgnoreCase)) return [.. Way.Skip(i), Name];
            }

            return null;
        }
    }
}
