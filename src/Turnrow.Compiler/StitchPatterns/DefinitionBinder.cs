using Turnrow.Compiler.Diagnostics.Kinds;
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
        var binder = new StitchPatternBinder(context, context.Rules);
        var pattern = binder.Bind(block);
        foreach (var found in binder.Found) context.Findings.Add(IsOfSizes(found) ? PatternNumber.At(found.Span) : found);
        context.StitchPatterns.Define(statement.Name.Text, statement.Name.Span, pattern, StitchPatternBinder.InRounds(context, context.Rules, block));
    }

    /// <summary>What another file defines, and those that it uses in turn. What is wrong there is told at the line that uses it.</summary>
    public void Use(UseStatement statement)
    {
        var file = statement.File;
        if (!_used.TryAdd(file.Text, file.Span)) context.Findings.Add(UseFile.Twice(file.Span, file.Text, _used[file.Text]));
        else new UsedFiles(context, source.FileName, file.Span).Read(file.Text);
    }

    // A stitch pattern is read by itself: a list in sizes and a count of the file are strange to it, and told as what they are.
    private bool IsOfSizes(Diagnostic found) =>
        (found.Kind == SizesList.Kind && context.Sizes > 1) || (found.Kind == UnknownName.Kind && context.Scope.Find(source.ToString(found.Span)) is not null);

    private void CheckName(NameSyntax name)
    {
        if (context.TryStitch(name.Text) is not null) context.Findings.Add(NameIsStitch.At(name.Span, name.Text));
        if (context.Scope.Find(name.Text) is { OfBody: false } earlier) context.Findings.Add(DefinedTwice.At(name.Span, name.Text, earlier.Span));
    }
}
