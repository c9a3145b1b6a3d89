using System.Text;
using Turnrow.Compiler.Diagnostics;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Tests.Diagnostics;

/// <summary>The diagnostics of reading and of compiling, and the examples of their pages.</summary>
internal static class Examples
{
    /// <summary>Every kind there is.</summary>
    public static IReadOnlyList<DiagnosticKind> Kinds { get; } = [.. SyntaxDiagnostics.All, .. CompilerDiagnostics.All];

    /// <summary>The kind that has a name.</summary>
    public static DiagnosticKind Kind(string name) => Kinds.Single(kind => kind.Name == name);

    /// <summary>The bad example, from the bytes where it has some of its own.</summary>
    public static SourceText Bad(DiagnosticKind kind) =>
        SourceText.FromBytes("bad", kind.BadFile?.Invoke() ?? Encoding.UTF8.GetBytes(kind.Bad));

    /// <summary>A text with a mend put in.</summary>
    public static SourceText With(SourceText source, Mend mend) =>
        new("mended", string.Concat(source.Text.AsSpan(0, mend.Span.Start), mend.NewText, source.Text.AsSpan(mend.Span.End)));

    /// <summary>What is found in a text.</summary>
    public static IReadOnlyList<Diagnostic> Found(SourceText source) => Compilation.Of(source).Diagnostics;
}
