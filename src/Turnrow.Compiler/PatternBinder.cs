using Turnrow.Compiler.Claims;
using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Grading;
using Turnrow.Compiler.Header;
using Turnrow.Compiler.Joins;
using Turnrow.Compiler.Pieces;
using Turnrow.Compiler.StitchPatterns;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Patterns;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler;

/// <summary>
/// Makes the row model of a file's lines. Each step runs on whatever of the file the step before understood, and a line that can't be
/// used says nothing more about it.
/// </summary>
internal sealed class PatternBinder
{
    private readonly SyntaxTree _tree;
    private readonly UnreadLines _unread;
    private readonly StitchPatternLines _stitchPatterns;
    private readonly Context _context;
    private readonly PieceBook _book;
    private readonly ExpectBinder _expect;
    private readonly List<Func<PatternItem?>> _items = [];
    private readonly FinishedBinder _finished;
    private readonly MadeBinder _made;
    private readonly List<(FinishedStatement Line, FinishedMeasure Measure)> _measured = [];
    private PieceState? _piece;
    private bool _full;
    private bool _pieceSeen;

    private PatternBinder(SyntaxTree tree, UnreadLines unread, Context context)
    {
        _tree = tree;
        _unread = unread;
        _stitchPatterns = new StitchPatternLines(tree);
        _context = context;
        _book = new PieceBook(context);
        _expect = new ExpectBinder(context, _book);
        _finished = new FinishedBinder(context, _book);
        _made = new MadeBinder(context, _book);
        context.Evaluate.PieceValues = _expect.ValuesOf;
        context.EdgesJoined = new JoinBinder(context, _book).Bind;
    }

    /// <summary>Where claims could stand and do not.</summary>
    public List<MissingClaim> MissingClaims { get; } = [];

    /// <summary>The model of a tree, and what was found.</summary>
    public static (Pattern Pattern, Findings Findings, IReadOnlyList<MissingClaim> MissingClaims) Bind(SyntaxTree tree, Func<string, string?> beside)
    {
        var unread = new UnreadLines(tree);
        var sizes = SizesFinder.Find(tree, unread, out var inDoubt, out var report);
        var findings = new Findings(sizes);
        foreach (var diagnostic in report) findings.Add(diagnostic);
        var terms = TermsFinder.Find(tree, unread, findings, out var termsInDoubt);
        var scope = new Scope();
        var context = new Context(findings, scope, new Evaluator(findings, scope, inDoubt), terms, termsInDoubt) { Beside = beside, SizesInDoubt = inDoubt };
        var binder = new PatternBinder(tree, unread, context);
        var pattern = binder.Whole(sizes);
        return (pattern, findings, binder.MissingClaims);
    }

    private Pattern Whole(IReadOnlyList<string> sizes)
    {
        Announce();
        _context.InInches = LengthUnits.InInches(_tree);
        var header = new HeaderBinder(_context, new DefinitionBinder(_context, _stitchPatterns, _tree.Source)).Bind(HeaderStatements(), sizes);
        foreach (var line in _tree.Lines) One(line);
        PatternWarnings.Add(_context, _book, _tree);
        GradeCheck.Add(_context, _tree);
        FitCheck.Add(_context, _tree, _measured);
        EaseCheck.Add(_context, _tree, _measured);
        OddNumbers.Add(_context, _tree);
        LostRows.Add(_context, _book, _tree);
        var items = new List<PatternItem>();
        foreach (var item in _items)
        {
            if (item() is { } made) items.Add(made);
        }

        return header with
        {
            Items = items,
            InInches = _context.InInches,
            Finished = [.. _measured.Select(static m => m.Measure)],
            Made = _made.Bind(),
            Measures = [.. BodyMeasures(header.BodySource), .. header.Measures],
        };
    }

    // Of a body's many measures those that the pattern uses are told.
    private IEnumerable<Measure> BodyMeasures(string? source)
    {
        foreach (var name in _context.Scope.Names)
        {
            if (_context.Scope.Find(name) is { OfBody: true, Used: true } body && Array.TrueForAll(body.Values, v => v is not null))
                yield return new Measure(name, [.. body.Values.Select(v => v!.Value.Number)]) { OfTable = true, Source = body.Source == source ? null : body.Source };
        }
    }

    private void Announce()
    {
        foreach (var line in _tree.Lines)
        {
            NoteDoubt(line);
            if (line is { Broken: false, Statement: StitchPatternStatement defined }) _context.StitchPatterns.Announce(defined.Name);
            switch (line.Statement)
            {
                case MeasureStatement or CountStatement when line.Broken: break;
                case MeasureStatement measure: _context.Scope.Announce(measure.Name.Text, measure.Name.Span, NamesIn.Expression(measure.Value)); break;
                case CountStatement count: _context.Scope.Announce(count.Name.Text, count.Name.Span, NamesIn.Expression(count.Value)); break;
                case PieceStatement piece: _book.Announce(piece.Name); break;
                case BlanketStatement blanket: _book.Announce(blanket.Name); break;
            }
        }
    }

    private void NoteDoubt(LineSyntax line)
    {
        if (!line.Broken) return;
        // A piece that nobody knows may be one that this line opens, whatever it begins with now.
        _book.InDoubt = true;
        _context.Scope.InDoubt |= _unread.MayBe(line, "measure") || _unread.MayBe(line, "count") || _unread.MayBe(line, "body");
        // All claims hang on this one, so it is not doubted for every line that has lost its first word.
        _context.CountingInDoubt |= _unread.MayBeClaims(line);
        NoteStitchDoubt(line);
        _context.GaugesInDoubt |= _unread.MayBe(line, "gauge") || _unread.MayBe(line, "terms");
        _context.TurnsInDoubt |= _unread.MayBe(line, "turn") || _unread.MayBe(line, "terms");
        _context.Yarns.InDoubt |= _unread.MayBe(line, "yarn");
        _context.StitchPatterns.InDoubt |= _unread.MayBeStitchPattern(line);
        _book.JoinsInDoubt |= _unread.MayBe(line, "seam") || _unread.MayBe(line, "blanket") || _unread.MayBe(line, "piece");
    }

    // Of a stitch whose line tells its name at least, no other is in doubt.
    private void NoteStitchDoubt(LineSyntax line)
    {
        if (line is { Keyword: "stitch", Statement: UnfinishedStatement { Names: { Count: > 0 } names } } && _unread.NamesWhole(line, names[0].Span))
            foreach (var name in names) _context.Stitches.Define(name.Text, null);
        else
            _context.Stitches.InDoubt |= _unread.MayDefineStitch(line);
    }

    // Turning chains are set for the pattern only before the first piece; within a piece they hold for it from there on.
    private IEnumerable<StatementSyntax> HeaderStatements()
    {
        var inPiece = false;
        foreach (var line in _tree.Lines)
        {
            inPiece |= IsPieceLine(line);
            if (_stitchPatterns.Has(line) && line.Statement is not StitchPatternStatement) continue;
            if (line.Broken || line.Statement is null || IsOfPiece(line.Statement, inPiece)) continue;
            yield return line.Statement;
        }
    }

    private static bool IsPieceLine(LineSyntax line) => line.Keyword == "piece";

    private static bool IsOfPiece(StatementSyntax statement, bool inPiece) => statement is TurnStatement turn && (inPiece || turn.NextRowOnly);

    private void One(LineSyntax line)
    {
        _pieceSeen |= IsPieceLine(line);
        if (_stitchPatterns.Has(line)) return;
        if (line.Statement is PieceStatement opened)
        {
            Open(opened, line.Broken);
            return;
        }

        if (line.Broken)
        {
            Broken(line);
            return;
        }

        switch (line.Statement)
        {
            case null or TermsStatement or SizesStatement: break;
            case TurnStatement turn when IsOfPiece(turn, _pieceSeen): InPiece(turn); break;
            case RoundsAreStatement rounds when !_pieceSeen: _context.RoundsAre = PieceStatements.WayOf(rounds); break;
            case SeamStatement seam: Join(seam); break;
            case BlanketStatement blanket: Join(blanket); break;
            case WeaveInStatement: _items.Add(() => new WeaveInItem()); break;
            case ProseStatement prose: Prose(prose); break;
            case ExpectMeasureStatement expect: _expect.Check(expect); break;
            case ExpectEqualStatement expect: _expect.Check(expect); break;
            case ExpectLieStatement expect: _expect.Check(expect); break;
            case FinishedStatement finished: Finished(finished); break;
            case MadeStatement made: _made.Note(made); break;
            case StatementSyntax statement when PieceStatements.IsOne(statement): InPiece(statement); break;
        }
    }

    private void Open(PieceStatement statement, bool broken)
    {
        if (broken && _piece is not null) BrokenLines.Doubt(_piece);
        if (IsFull(statement.Span)) return;
        var piece = new PieceOpening(_context, _book).Open(statement, broken);
        _piece = piece;
        _items.Add(() => new PieceInSizes(piece.Name, piece.Finished, piece.Passages, piece.MirrorOf?.Name) { Copies = Math.Max(1, piece.Copies.Count) });
    }

    private void Finished(FinishedStatement statement)
    {
        if (_finished.Bind(statement) is { } measure) _measured.Add((statement, measure));
    }

    private bool IsFull(TextSpan span)
    {
        _full |= !_context.Rows.Take(_context.Sizes * RowBudget.RowsLikePiece, span);
        _book.InDoubt |= _full;
        if (_full) _piece = null;
        return _full;
    }

    private void Join(SeamStatement statement)
    {
        if (new SeamBinder(_context, _book).Bind(statement) is { } seam) _items.Add(() => seam);
        _piece = null;
    }

    private void Join(BlanketStatement statement)
    {
        if (new BlanketBinder(_context, _book).Bind(statement) is { } blanket) _items.Add(() => blanket);
        _piece = null;
    }

    // Prose in a piece stands before the rows that follow; before the first piece and after the last it stands by itself.
    private void Prose(ProseStatement prose)
    {
        if (_piece is { } piece) piece.Passages.Add(new ProsePassage(prose.Text));
        else _items.Add(() => new ProseItem(prose.Text));
    }

    private void InPiece(StatementSyntax statement)
    {
        if (_piece is null || LostItsOpening(_piece, statement) || IsAfterTheEnd(_piece, statement))
        {
            TellOutside(statement);
            if (IsFull(statement.Span)) return;
            _piece = new PieceOpening(_context, _book).OpenUnread(statement.Span);
        }

        PieceStatements.Bind(_context, _piece, statement);
        if (ClaimProposal.For(_context, _piece, statement) is { } missing) MissingClaims.Add(missing);
    }

    // The line that opens a piece is missing or could not be read: what follows is told once, and counted all the same.
    private void TellOutside(StatementSyntax statement)
    {
        if (_piece is null && !_book.InDoubt) _context.Findings.Add(OutsidePiece.At(statement.Span));
        else if (_piece is { Unread: false }) _context.Findings.Add(AfterFastenOff.At(statement.Span, _piece.Name));
    }

    // A second beginning below a line that could not be read: that line was the next piece's.
    private static bool LostItsOpening(PieceState piece, StatementSyntax statement) =>
        piece.Unread && statement is (BeginStatement or FoundationRowStatement or ChainStatement) && piece.Lead.RowCount > 0;

    private static bool IsAfterTheEnd(PieceState piece, StatementSyntax statement) =>
        piece.Lead.IsFastenedOff && statement is not (FastenOffStatement or EdgeNameStatement);

    private void Broken(LineSyntax line)
    {
        if (_piece is null)
        {
            // Between two pieces it may have opened the next one, whatever it looks like.
            if (_book.All.Count == 0 || BrokenLines.LeavesPieceAlone(line, _unread) || IsFull(line.Span)) return;
            _piece = new PieceOpening(_context, _book).OpenUnread(line.Span);
        }

        BrokenLines.Apply(_context, _piece, line, _unread);
        if (!_piece.Unread || !_piece.Lead.IsFastenedOff) return;
        // Nothing of a piece comes after its end: the line may have opened the next one.
        if (IsFull(line.Span)) return;
        _piece = new PieceOpening(_context, _book).OpenUnread(line.Span);
        BrokenLines.Apply(_context, _piece, line, _unread);
    }
}
