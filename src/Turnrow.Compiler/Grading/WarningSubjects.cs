using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Grading;

/// <summary>What a warning is about by name: the count, the measure or the finished measure of its line, or the piece that the line is of.</summary>
internal sealed class WarningSubjects
{
    private readonly List<(TextSpan Span, string? Name, string? Piece)> _lines = [];

    public WarningSubjects(SyntaxTree tree)
    {
        string? piece = null;
        foreach (var line in tree.Lines)
        {
            if (line.Statement is PieceStatement opened) piece = opened.Name.Text;
            _lines.Add((line.Span, NameOf(line.Statement), piece));
        }
    }

    /// <summary>True if it is what the warning is about.</summary>
    public bool IsAbout(Diagnostic warning, string name)
    {
        var (_, own, piece) = _lines.Find(line => line.Span.Start <= warning.Span.Start && warning.Span.Start < line.Span.End);
        return Same(own, name) || (own is null && Same(piece, name));
    }

    /// <summary>The name that a warning is best accepted by; null for none.</summary>
    public string? Of(Diagnostic warning)
    {
        var (_, own, piece) = _lines.Find(line => line.Span.Start <= warning.Span.Start && warning.Span.Start < line.Span.End);
        return own ?? piece;
    }

    private static bool Same(string? a, string b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);

    private static string? NameOf(StatementSyntax? statement) => statement switch
    {
        MeasureStatement measure => measure.Name.Text,
        CountStatement count => count.Name.Text,
        FinishedStatement finished => finished.Name.Text,
        EaseStatement ease => ease.Name.Text,
        MadeStatement made => made.Piece.Text,
        _ => null,
    };
}
