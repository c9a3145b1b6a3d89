using Antlr4.Runtime;
using Turnrow.Syntax.Building;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Diagnostics.Kinds;
using Turnrow.Syntax.Generated;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Syntax.Reading;

/// <summary>One reading of one file: physical lines are lexed, joined to logical ones, and each is parsed alone.</summary>
internal sealed class FileReading
{
    private readonly SourceText _source;
    private readonly LineLexer _lexer;
    private readonly LineParser _parser = new();
    private readonly LineFaults _faults;
    private readonly LineJoiner _joiner = new();
    private readonly List<LineSyntax> _lines = [];
    private readonly List<Diagnostic> _diagnostics = [];

    public FileReading(SourceText source)
    {
        _source = source;
        _lexer = new LineLexer(source.Text);
        _faults = new LineFaults(_parser);
    }

    public SyntaxTree Read()
    {
        foreach (var span in _source.WrongBytes) _diagnostics.Add(WrongBytes.At(span));
        while (_lexer.Next(out var line)) Take(line);
        EndLine();
        return new SyntaxTree(_source, _lexer.Tokens, _lines, DiagnosticOrder.ByPosition(_diagnostics));
    }

    private void Take(PhysicalLine line)
    {
        if (line.TooLong)
        {
            EndLine();
            Unread(line.Content);
            return;
        }

        if (line.Tokens.Count == 0)
        {
            // A comment between two parts of a line is no reason to end it; a blank line is.
            if (!line.HasComment) EndLine();
            return;
        }

        StatementStarts.LowerFirstWord(line.Tokens, _source.Text);
        if (!_joiner.GoesOnIn(line)) EndLine();
        _joiner.Add(line.Tokens);
    }

    private void Unread(TextSpan content)
    {
        var keyword = _source.Text.AsSpan(content.Start, 64).TrimStart();
        var length = 0;
        while (length < keyword.Length && char.IsAsciiLetter(keyword[length])) length++;
        _diagnostics.Add(LineLong.At(content, LineLexer.LongestLine));
        _lines.Add(new LineSyntax(null, NotationWords.Statement(keyword[..length].ToString())?.Text, true, content));
    }

    private void EndLine()
    {
        if (_joiner.Tokens.Count == 0) return;
        _lines.Add(Line(_joiner.Tokens));
        _joiner.Clear();
    }

    private LineSyntax Line(IReadOnlyList<IToken> tokens)
    {
        var span = LineBuilding.Span(tokens[0]).To(LineBuilding.Span(tokens[^1]));
        var line = new LineBuilding(_source);
        var keyword = tokens[0].Type != TurnrowLexer.PROSE && StatementStarts.Begins(tokens[0].Type)
            ? Words.Spelling(tokens[0].Type)
            : null;
        var (statement, fault) = Statement(tokens, line);
        if (fault is not null && !IsWrongByte(fault)) _diagnostics.Add(fault);
        statement ??= Salvage.Statement(tokens, span, line, _parser, fault);
        return new LineSyntax(statement, keyword, fault is not null, span);
    }

    private (StatementSyntax? Statement, Diagnostic? Fault) Statement(IReadOnlyList<IToken> tokens, LineBuilding line)
    {
        if (_faults.BeforeParsing(tokens, line) is { } fault) return (null, fault);
        var (context, error) = _parser.Statement(tokens);
        if (error is not null) return (null, _faults.WhileParsing(tokens, error, line));
        var statement = StatementBuilder.Statement(context!, line);
        return (statement, line.Fault);
    }

    // Bytes that are no text have a diagnostic of their own already.
    private bool IsWrongByte(Diagnostic fault) => fault.Kind == StrangeCharacter.Kind && _source.HasWrongByteAt(fault.Span.Start);
}
