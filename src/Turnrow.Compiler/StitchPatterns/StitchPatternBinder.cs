using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Pieces;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.StitchPatterns;

/// <summary>
/// Makes a stitch pattern of its lines. They are bound as the rows of a small piece that is two repeats wide, in one size: so whatever is wrong
/// in a row is found and told as it is in any piece. That the rows go on from each other for ever is proved afterwards.
/// </summary>
internal sealed class StitchPatternBinder
{
    /// <summary>Repeats that a small piece has on which the rows are tried first.</summary>
    public const int FewRepeats = 2;

    private const int LargestMultiple = 10_000;
    private const int MostRows = 400;

    private readonly Context _context;

    /// <param name="file">What the file of the stitch pattern says: whose words it uses, and stitches of its own.</param>
    /// <param name="rules">Turning-chain rules, as far as they are said.</param>
    public StitchPatternBinder(Context file, IReadOnlyDictionary<Stitch, TurnRule> rules)
    {
        var findings = new Findings([string.Empty]);
        var scope = new Scope { InDoubt = file.Scope.InDoubt };
        _context = new Context(findings, scope, new Evaluator(findings, scope, false), file.Terms, file.TermsInDoubt) { Stitches = file.Stitches, Yarns = file.Yarns.Telling(findings) };
        foreach (var (stitch, rule) in rules) _context.Rules[stitch] = rule;
    }

    /// <summary>What was found.</summary>
    public IReadOnlyList<Diagnostic> Found => _context.Findings.All;

    /// <summary>The stitch pattern; null where it can't be used.</summary>
    public StitchPattern? Bind(StitchPatternBlock block)
    {
        if (block.Statement is not { } statement || Multiple(statement) is not { } over) return null;
        var picture = block.Lines.Any(static line => line.Statement is PictureRowStatement or KeyStatement);
        if (statement.FromPicture || picture) return block.InDoubt ? null : Picture(statement, block, over);
        var before = _context.Findings.All.Count;
        var piece = Piece(statement, over, FewRepeats);
        PatternRepeatStatement? again = null;
        var doubt = false;
        foreach (var line in block.Lines)
        {
            // It may have been any number of rows.
            if (line.Broken) (doubt, again) = (true, null);
            if (line.Broken) piece.Doubt(true);
            else if (line.Statement is RowStatement row) Row(piece, row, again);
            else if (line.Statement is PatternRepeatStatement repeat && !doubt) again = Repeat(again, repeat);
            else if (line.Statement is RepeatStatement) _context.Findings.Add(PatternLine.Repeat(line.Span));
        }

        // What a line that can't be read did to the rows is not known, so neither is whether they come out.
        if (block.InDoubt || _context.Findings.All.Count > before) return null;
        // Nor of what a line elsewhere may have given another meaning.
        if (_context.Stitches.InDoubt && piece.Lead.Rows.Any(static row => row.Work is null)) return null;
        if (RowsOf(piece, statement) is not { } rows) return null;
        if (FirstAgain(again, piece, rows.Count) is not { } from) return null;
        var pattern = new StitchPattern(statement.Name.Text, over.Multiple, over.Plus, rows, from);
        return new StitchPatternProof(_context, statement, block).Of(pattern);
    }

    private StitchPattern? Picture(StitchPatternStatement statement, StitchPatternBlock block, (int Multiple, int Plus) over, RoundWay? way = null)
    {
        var pattern = new PictureBinder(_context, statement, block, way).Bind(over.Multiple, over.Plus);
        return pattern is null ? null : new StitchPatternProof(_context, statement, block).Of(pattern);
    }

    /// <summary>
    /// The same picture worked in rounds that follow each other in some way; with what stands against it where it can't be. Null of a pattern that is
    /// no picture: its rows are written for one way of working.
    /// </summary>
    public static Func<RoundWay, PictureInRounds>? InRounds(Context file, IReadOnlyDictionary<Stitch, TurnRule> rules, StitchPatternBlock block)
    {
        if (block.Statement is not { FromPicture: true } statement) return null;
        return way =>
        {
            var binder = new StitchPatternBinder(file, rules);
            var pattern = binder.Multiple(statement) is { } over ? binder.Picture(statement, block, over, way) : null;
            return new PictureInRounds(pattern, binder.Found.FirstOrDefault(static found => found.Kind.Severity == Severity.Error));
        };
    }

    private (int Multiple, int Plus)? Multiple(StitchPatternStatement statement)
    {
        var multiple = Whole(statement.Multiple, 1);
        var plus = statement.Plus is { } more ? Whole(more, 0) : 0;
        return multiple is { } a && plus is { } b ? (a, b) : null;
    }

    private int? Whole(NumberSyntax number, int least)
    {
        if (number.Denominator == 1 && number.Numerator >= least && number.Numerator <= LargestMultiple) return (int)number.Numerator;
        _context.Findings.Add(PatternLine.Multiple(number.Span, least, LargestMultiple));
        return null;
    }

    private PieceState Piece(StitchPatternStatement statement, (int Multiple, int Plus) over, int repeats)
    {
        var builder = new PieceBuilder(statement.Name.Text, _context.Rules, _context.Worked) { Yarn = _context.Yarns.First };
        builder.BeginWithStitches((over.Multiple * repeats) + over.Plus);
        return new PieceState(statement.Name.Text, statement.Name.Span, [builder]);
    }

    private void Row(PieceState piece, RowStatement row, PatternRepeatStatement? again)
    {
        if (again is not null) _context.Findings.Add(PatternLine.BehindRepeat(row.Span));
        if (row.Claim is { } claim) _context.Findings.Add(PatternLine.Claim(claim.Span));
        if (piece.Lead.RowCount >= MostRows) _context.Findings.Add(PatternLine.TooMany(row.Span, MostRows));
        else RowBinding.Bind(_context, piece, row with { Claim = null });
    }

    private PatternRepeatStatement Repeat(PatternRepeatStatement? before, PatternRepeatStatement repeat)
    {
        if (before is not null) _context.Findings.Add(PatternLine.RepeatTwice(repeat.Span, before.Span));
        return before ?? repeat;
    }

    private List<StitchPatternRow>? RowsOf(PieceState piece, StitchPatternStatement statement)
    {
        var rows = new List<StitchPatternRow>();
        foreach (var row in piece.Lead.Rows)
        {
            if (row.Plan is not WordsPlan plan) return null;
            rows.Add(new StitchPatternRow(plan.Words, SaidSide(row), row.IsRound));
        }

        if (rows.Count == 0) _context.Findings.Add(PatternLine.NoRows(statement.Name.Span, statement.Name.Text));
        else if (rows.Count > MostRows) _context.Findings.Add(PatternLine.TooMany(statement.Name.Span, MostRows));
        else if (rows.Exists(row => row.IsRound != rows[0].IsRound)) _context.Findings.Add(PatternLine.BothWays(statement.Name.Span, statement.Name.Text));
        else return rows;
        return null;
    }

    private static bool? SaidSide(Row row) => row.Origin.Value is RowStatement { Side: { } side, Last: null } ? side.RightSide : null;

    // Index of the first row that comes again; null, and reported, if the line is not about the pattern's last rows.
    private int? FirstAgain(PatternRepeatStatement? repeat, PieceState piece, int rows)
    {
        if (repeat is null) return 0;
        var first = _context.Evaluate.Counts(repeat.Rows.First, 1)[0];
        var last = repeat.Rows.Last is null ? first : _context.Evaluate.Counts(repeat.Rows.Last, 1)[0];
        if (first is not { } from || last is not { } to) return null;
        if (repeat.Rows.AreLast) (from, to) = (rows - from + 1, rows);
        if (from is > 0 && from <= to && to == rows) return from - 1;
        _context.Findings.Add(PatternLine.RepeatRows(repeat.Rows.Span, piece.Name, rows, from, to));
        return null;
    }
}

/// <summary>A picture worked in rounds.</summary>
/// <param name="Pattern">The stitch pattern; null if it can't be.</param>
/// <param name="Against">What was found then.</param>
internal sealed record PictureInRounds(StitchPattern? Pattern, Diagnostic? Against);
