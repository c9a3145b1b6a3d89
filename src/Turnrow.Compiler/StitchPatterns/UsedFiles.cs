using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Header;
using Turnrow.Compiler.Stitches;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Patterns;
using Turnrow.Syntax;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.StitchPatterns;

/// <summary>Reads a file that a pattern uses: first those that it uses itself, then its own stitches and stitch patterns.</summary>
/// <param name="context">Where they go.</param>
/// <param name="pattern">The pattern's own file.</param>
/// <param name="at">The line that uses the first of them: what is wrong is told there.</param>
internal sealed class UsedFiles(Context context, string pattern, TextSpan at)
{
    private readonly HashSet<string> _read = new(StringComparer.OrdinalIgnoreCase);
    private readonly List<OpenFile> _way = [];

    /// <summary>Reads a file and all that it uses, the last of them first.</summary>
    public void Read(string name)
    {
        Open(name);
        while (_way.Count > 0)
        {
            var file = _way[^1];
            if (file.Next() is { } used)
            {
                Open(used);
                continue;
            }

            _way.RemoveAt(_way.Count - 1);
            Take(file);
        }
    }

    private void Open(string name)
    {
        if (Circle(name) is { } circle)
        {
            context.Findings.Add(UseFile.Circle(at, circle));
        }
        else if (_read.Add(name))
        {
            if (context.Beside(name) is { } text) _way.Add(new OpenFile(name, text));
            else Missing(name);
        }
    }

    private void Missing(string name)
    {
        context.Findings.Add(UseFile.Missing(at, name, _way.Count > 0 ? _way[^1].Name : null));
        context.StitchPatterns.InDoubt = context.Stitches.InDoubt = true;
    }

    // The circle that reading a file would close: it is on its own way, or it is the pattern itself.
    private IReadOnlyList<string>? Circle(string name)
    {
        var own = pattern[(pattern.LastIndexOfAny(['/', '\\']) + 1)..];
        if (string.Equals(name, own, StringComparison.OrdinalIgnoreCase)) return [own, .. _way.Select(static f => f.Name), name];
        var from = _way.FindIndex(f => string.Equals(f.Name, name, StringComparison.OrdinalIgnoreCase));
        return from < 0 ? null : [.. _way.Skip(from).Select(static f => f.Name), name];
    }

    private void Take(OpenFile file)
    {
        var unread = new UnreadLines(file.Tree);
        var findings = new Findings([string.Empty]);
        var scope = new Scope();
        var terms = TermsFinder.Find(file.Tree, unread, findings, out var termsInDoubt);
        var here = new Context(findings, scope, new Evaluator(findings, scope, false), terms, termsInDoubt) { Yarns = context.Yarns.Telling(findings) };
        here.Stitches.Take(context.Stitches);
        here.Stitches.InDoubt = file.Tree.Lines.Any(unread.MayDefineStitch);
        var found = new List<Diagnostic>(file.Tree.Diagnostics);
        var blocks = new StitchPatternLines(file.Tree).Blocks;
        var stitches = new StitchDefinition(here, new StitchLines(file.Tree.Lines.Select(static line => line.Statement)));
        foreach (var line in file.Tree.Lines)
        {
            context.StitchPatterns.InDoubt |= unread.MayBe(line, "stitch") || unread.MayBe(line, "use");
            if (line is { Broken: false, Statement: StitchStatement stitch }) stitches.Define(stitch);
            else if (blocks.FirstOrDefault(block => ReferenceEquals(block.Heading, line)) is { Statement: { } named } block) Take(file, block, named.Name.Text, here);
        }

        context.Stitches.Take(here.Stitches);
        context.Stitches.InDoubt |= here.Stitches.InDoubt;
        found.AddRange(findings.All);
        Tell(file, found);
    }

    // Its rows can use the stitches above it. Where there are more of them below, it is looked into at once; else when it is asked for.
    private void Take(OpenFile file, StitchPatternBlock block, string name, Context here)
    {
        var rounds = StitchPatternBinder.InRounds(here, context.Rules, block);
        if (file.HasStitchBehind(block.Heading)) context.StitchPatterns.Define(name, at, Made(file, block, here), rounds);
        else context.StitchPatterns.Define(name, at, () => Made(file, block, here), rounds);
    }

    private StitchPattern? Made(OpenFile file, StitchPatternBlock block, Context here)
    {
        var binder = new StitchPatternBinder(here, context.Rules);
        var made = binder.Bind(block);
        Tell(file, binder.Found);
        return made;
    }

    private void Tell(OpenFile file, IReadOnlyList<Diagnostic> found)
    {
        var errors = found.Where(static d => d.Kind.Severity == Severity.Error).OrderBy(static d => d.Span.Start).ToList();
        if (errors.Count > 0) context.Findings.Add(UseFile.Wrong(at, file.Name, file.Tree.Source.PositionOf(errors[0].Span.Start).Line, errors[0], errors.Count));
    }

    /// <summary>A file that is being read, and which of those that it uses comes next.</summary>
    private sealed class OpenFile(string name, string text)
    {
        private int _next;

        public string Name => name;

        public SyntaxTree Tree { get; } = SyntaxReader.Read(new SourceText(name, text));

        /// <summary>True if a stitch is defined, or may be, further down than a line.</summary>
        public bool HasStitchBehind(LineSyntax heading)
        {
            for (var i = Tree.Lines.Count - 1; !ReferenceEquals(Tree.Lines[i], heading); i--)
            {
                if (Tree.Lines[i] is { Broken: true } or { Statement: StitchStatement }) return true;
            }

            return false;
        }

        public string? Next()
        {
            while (_next < Tree.Lines.Count)
            {
                if (Tree.Lines[_next++] is { Broken: false, Statement: UseStatement use }) return use.File.Text;
            }

            return null;
        }
    }
}
