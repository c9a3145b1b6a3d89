using Turnrow.Fabric.Stitches;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Tests.Breaking;

/// <summary>
/// Which counts can still be known when lines are broken: the definition of "does not depend on the broken line". A count is known after
/// a line if it is known before and all that the line names is known, or if the line claims it. That is all: gauges matter where a length
/// becomes a count, the number of rows never does, and what a part begins with is said by its own line. A line that can be read but says
/// something else is not believed less for it: all counts below it in its piece come from it, whatever is claimed. Where the corners
/// are is told by no claim: what a row that speaks of them makes is known by all the rows before it. Nor does a claim in the midst of short
/// rows tell what waits beside them, nor that of a round which ends before its marker what comes next.
/// </summary>
/// <param name="words">The pattern, whole.</param>
/// <param name="changed">Indexes of the lines that are broken.</param>
/// <param name="now">What has become of them.</param>
/// <param name="another">True if a word got in that begins a statement.</param>
/// <param name="insertedBehind">The line behind which a line got in where none was; it may have been one of that line's piece. -1 for none.</param>
internal sealed class KnownCounts(PatternWords words, IReadOnlySet<int> changed, IReadOnlyList<LineSyntax> now, bool another, int insertedBehind)
{
    // What begins like this leaves every count as it was, whatever else is wrong with it.
    private static readonly string[] Plain = ["straight", "both", "right", "left", "from", "mark", "expect", "seam", "weave", "fasten", "divide", ">"];

    private readonly SyntaxTree _tree = words.Tree;
    private readonly Dictionary<TextSpan, bool> _names = [];
    private readonly Dictionary<int, bool> _pieces = [];
    private readonly bool _readable = now.Count == 0 || now.Any(line => !line.Broken);
    // What is worked in a stitch pattern makes other stitches from row to row.
    private static readonly string[] PlainInPatterns = [.. Plain.Except(["straight"])];

    private readonly bool _keepsCounts = !another && changed.Count == 1 && now.Count > 0 && now.All(line => line.Broken && line.Keyword is { } word && (HasPatterns(words.Tree) ? PlainInPatterns : Plain).Contains(word));
    private readonly bool _mayOpenPiece = now.Any(line => line.Keyword == "piece");

    /// <summary>True if a wrong claim of a line can still be told from a right one.</summary>
    public bool CanCheck(int line) => !IsChanged(other => other.Statement is ClaimsStatement) && !changed.Contains(line)
        && Before(line) && KindsKnown(line) && ClaimKnown(line) && NamesKnown(line) && (!NeedsRows(line) || RowsKnown(line));

    private bool Before(int line) => _tree.Lines[line].Statement is PieceStatement || After(line - 1);

    private bool After(int line)
    {
        if (changed.Contains(line)) return StillClaims(line) || (_keepsCounts && Before(line));
        if (TellsCount(line) && !_readable) return true;
        if (_tree.Lines[line].Statement is ForSizesStatement && !NamesKnown(line)) return false;
        return Done(line) switch
        {
            PieceStatement or BeginStatement or FoundationRowStatement => NamesKnown(line),
            ChainStatement => NamesKnown(line) && !IsChanged(line => line.Statement is TurnStatement),
            RepeatStatement => RowsKnown(line),
            SolidStatement => RowsKnown(line) && LengthKnown(line),
            RowStatement or StraightStatement or ShapeStatement when NeedsRows(line) => RowsKnown(line),
            RowStatement or LeaveStatement or AddStatement or ShapeStatement => Before(line) && KindsKnown(line) && NamesKnown(line),
            _ => Before(line),
        };
    }

    // What a line does, in whatever sizes.
    private StatementSyntax? Done(int line) => _tree.Lines[line].Statement is ForSizesStatement some ? some.Done : _tree.Lines[line].Statement;

    private bool NeedsRows(int line) => Done(line) switch
    {
        RepeatStatement or SolidStatement => true,
        RowStatement row => SpeaksOfCorners(row.Items) || SpeaksOfTurn(row.Items),
        StraightStatement or ShapeStatement => IsInPattern(line),
        _ => false,
    };

    private static bool HasPatterns(SyntaxTree tree) => tree.Lines.Any(line => line.Statement is UseStatement or StitchPatternStatement);

    // It names a stitch pattern, or goes on in the one of the line before.
    private bool IsInPattern(int line)
    {
        for (; line >= 0; line--)
        {
            if (Done(line) is StraightStatement { Pattern: not null } or ShapeStatement { Rows.Pattern: not null }) return true;
            if (Done(line) is RowStatement or PieceStatement or RepeatStatement) return false;
        }

        return false;
    }

    // A file that is used, a stitch pattern's heading and all that stands below it.
    private bool PatternsChanged => IsChanged(line => line.Statement is UseStatement or StitchPatternStatement)
        || changed.Any(line => IsOfPattern(line) || IsOfPattern(line - 1));

    // The line below the last may have been one of it.
    private bool IsOfPattern(int line) => line >= 0 && (_tree.Lines[line].Statement is KeyStatement or PictureRowStatement or PatternRepeatStatement
        || (words.LinesOfPiece(line)[0] == 0 && _tree.Lines[line].Statement is RowStatement));

    /// <summary>True if words of a row reach up to or into a corner.</summary>
    public static bool SpeaksOfCorners(IEnumerable<RowItemSyntax> items) => items.Any(item => item switch
    {
        StitchItem stitch => stitch.Amount is CornerAmount || IsCorner(stitch.Place),
        GroupItem group => group.Times is CornerAmount || IsCorner(group.Place) || SpeaksOfCorners(group.Items),
        _ => false,
    });

    // Where the row below turned, all the rows before it tell.
    private static bool SpeaksOfTurn(IEnumerable<RowItemSyntax> items) => items.Any(item => item switch
    {
        StitchItem stitch => stitch.Amount is TurnAmount,
        GroupItem group => group.Times is TurnAmount || SpeaksOfTurn(group.Items),
        _ => false,
    });

    private static bool IsCorner(PlaceSyntax? place) => place is { Word: PlaceWord.Corner } or { Kind: [{ Text: "corner" }] };

    // What goes to a kind of stitch has to know the row below by more than its claim.
    private bool KindsKnown(int line)
    {
        if (Done(line) is not RowStatement row || !SpeaksOfKinds(row.Items)) return true;
        var below = line - 1;
        while (Done(below) is not (RowStatement or RepeatStatement or StraightStatement or ShapeStatement or PieceStatement)) below--;
        return !changed.Contains(below) && NamesKnown(below) && (NeedsRows(below) ? RowsKnown(below) : Before(below) && KindsKnown(below));
    }

    private static bool SpeaksOfKinds(IEnumerable<RowItemSyntax> items) => items.Any(item => item switch
    {
        StitchItem { Place: { } place } => IsKind(place),
        GroupItem group => (group.Place is { } place && IsKind(place)) || SpeaksOfKinds(group.Items),
        _ => false,
    });

    private static bool IsKind(PlaceSyntax place) => place.Kind.Count > 0 && place.Kind[^1].Text is not ("st" or "sp");

    // What is repeated is known by the numbers of its rows.
    private bool RowsKnown(int line) =>
        words.LinesOfPiece(line).All(other => other > line || (!changed.Contains(other) && NamesKnown(other, _tree.Lines[other].Span) && (!IsInPattern(line) || LengthKnown(other))))
        && (!IsInPattern(line) || !PatternsChanged)
        && BasesKnown(line);

    // The corners that a piece goes on round are those of the pieces that it begins on.
    private bool BasesKnown(int line)
    {
        if (Done(line) is not RowStatement row || !(SpeaksOfCorners(row.Items) || SpeaksOfTurn(row.Items))) return true;
        var first = words.LinesOfPiece(line)[0];
        return words.In(_tree.Lines[first].Span).All(word => words.PieceOf(word) is not { } other || other == first || PieceKnown(other));
    }

    private bool ClaimKnown(int line) => Claims.Of(_tree.Lines[line].Statement) is { } claim && NamesKnown(line, claim.Span);

    // A claim by kind tells how many there are, not in what order they stand.
    private bool TellsCount(int line) =>
        _tree.Lines[line].Statement is not ForSizesStatement && !LeavesForLater(line) && !MovesMarker(line) && !MakesBridge(line) && !FollowsLostTurns(line) && ClaimKnown(line) && Claims.Of(_tree.Lines[line].Statement) is { Scope: ClaimScope.Usual, Parts: [{ Kind: null }] };

    // Where a line is lost that leaves stitches for later, or while some wait, rows have to go to both edges before a claim tells anything: four lines
    // of rows are sure to, since what was still asked for at an edge is left in the first or second of them and worked over two later. What is left
    // meanwhile is lost as well.
    private bool FollowsLostTurns(int line)
    {
        foreach (var before in RowLinesBefore(line, countsItself: true))
        {
            if (changed.Contains(before) ? LeavesForLater(before) || RowLinesBefore(before, countsItself: false).Any(LeavesForLater) : LeavesForLater(before) && (FollowsLostTurns(before) || !Before(before))) return true;
        }

        return changed.Contains(line) && RowLinesBefore(line, countsItself: false).Any(LeavesForLater);
    }

    // As many lines up as hold four lines of rows, down to the head of the piece.
    private IEnumerable<int> RowLinesBefore(int line, bool countsItself)
    {
        var rows = countsItself && IsRows(line) ? 1 : 0;
        for (var before = line - 1; before >= 0 && rows < 4 && _tree.Lines[before].Statement is not PieceStatement; before--)
        {
            yield return before;
            if (IsRows(before)) rows++;
        }
    }

    private bool IsRows(int line) => !changed.Contains(line) && Done(line) is RowStatement or StraightStatement or ShapeStatement or RepeatStatement;

    // What such a round makes is not what the next one is worked over.
    private bool MovesMarker(int line) => Done(line) is RowStatement { Items: [.., MoveMarkerItem] };

    // The chains of a bridge are in no count of stitches.
    private bool MakesBridge(int line) => Done(line) is RowStatement row && row.Items.Any(item => item is BridgeItem);

    private bool LeavesForLater(int line) => line >= 0 && _tree.Lines[line].Statement switch
    {
        LeaveStatement leave => leave.ForLater,
        RowStatement row => row.Items.Any(item => item is LeaveItem { ForLater: true }),
        ShapeStatement shape => shape.Shapings.Any(shaping => shaping.Stages.Any(stage => stage.Kind == StageKind.LeaveForLater)),
        _ => false,
    };

    private bool StillClaims(int line) =>
        changed.Count == 1 && now is [{ Broken: true, Statement: UnfinishedStatement { Claim: { } claim } }]
        && TreeText.Of(claim) == TreeText.Of(Claims.Of(_tree.Lines[line].Statement)) && TellsCount(line) && !MayBeForSomeSizes(line);

    // `row 4:` without its first word may have been `for 4:`, where a size is called so.
    private bool MayBeForSomeSizes(int line)
    {
        if (now is [{ Keyword: "for" }]) return true;
        if (now is not [{ Keyword: null }] || _tree.Lines[line].Statement is not RowStatement { First: { } number }) return false;
        var last = _tree.Source.ToString(number.Span).Split(' ')[^1];
        return _tree.Lines.Select(other => other.Statement).OfType<SizesStatement>().Any(sizes => sizes.Names.Any(size => size.Text == last));
    }

    // A straight stretch makes the count that it finds, however long it is.
    private bool NamesKnown(int line) => _tree.Lines[line].Statement is StraightStatement || NamesKnown(line, _tree.Lines[line].Span);

    // All that stands there under a name of the designer's, through however many definitions.
    private bool NamesKnown(int line, TextSpan span) =>
        _names.TryGetValue(span, out var known) ? known : _names[span] = FindNames(line, span);

    private bool FindNames(int line, TextSpan span)
    {
        // Which sizes have a line for some, only the line of all sizes tells.
        if (_tree.Lines[line].Statement is ForSizesStatement && IsChanged(other => other.Statement is SizesStatement)) return false;
        // Which of several sizes a number is for, is told by the lists themselves unless the line says something else now.
        if (_readable && IsChanged(other => other.Statement is SizesStatement)) return false;
        // A table of bodies has no column for a size whose name is not known.
        if (IsChanged(other => other.Statement is SizesStatement) && _tree.Lines.Any(other => other.Statement is BodyStatement)) return false;
        if (_readable && IsChanged(other => other.Statement is TermsStatement)) return false;
        // A line that may have defined a stitch may have given a name of the standard list another meaning.
        if (now.Any(other => other.Broken && !(other.Statement is UnfinishedStatement { Names: [.., var last] } && last.Span.End < other.Span.End && changed.Count <= now.Count)) && IsChanged(other => other.Statement is StitchStatement or StitchPatternStatement || _tree.Source.ToString(other.Span).Contains(" is ", StringComparison.Ordinal)) && words.In(span).Any(word => SpecialStitches.Find(word) is not null))
            return false;
        return words.In(span).All(word => NameKnown(line, word));
    }

    private bool NameKnown(int line, string word)
    {
        if (words.DefinitionOf(word) is { } definition && definition != line)
        {
            // A table's columns are found by the sizes' names, and by nothing else that the file says.
            if (_tree.Lines[definition].Statement is BodyStatement) return !IsChanged(other => other.Statement is BodyStatement or SizesStatement);
            if (changed.Contains(definition) || !NamesKnown(definition)) return false;
            if (_tree.Lines[definition].Statement is CountStatement fitted && fitted.Fixes.Any(fix => fix.Multiple is NameExpression) && PatternsChanged) return false;
            if (_tree.Lines[definition].Statement is CountStatement { Of: not CountOf.Number } count && IsChanged(l => IsGaugeFor(count, l))) return false;
        }

        if (BlanketOf(word) is >= 0 and var blanket && blanket != line)
            return !changed.Contains(blanket) && NamesKnown(blanket) && words.In(_tree.Lines[blanket].Span).All(other => words.PieceOf(other) is not { } motif || PieceKnown(motif));
        if (_tree.Lines[line].Statement is PieceStatement { Origin: PickUpOriginSyntax or NamedPartOriginSyntax or MirrorOriginSyntax or AcrossOriginSyntax } && words.PieceOf(word) is { } piece && piece != line)
            return PieceKnown(piece);
        return !words.IsEdgeOf(line, word) || !words.LinesOfPiece(line).Any(other => changed.Contains(other) && (_mayOpenPiece || _tree.Lines[other].Statement is EdgeNameStatement));
    }

    private int BlanketOf(string word) => _tree.Lines.ToList().FindIndex(line => line.Statement is BlanketStatement blanket && blanket.Name.Text == word);

    // An edge is what all lines of its piece make of it, and of what that piece goes on from; the line below the last may have been one.
    private bool PieceKnown(int piece) => _pieces.TryGetValue(piece, out var known) ? known : _pieces[piece] = FindPiece(piece);

    private bool FindPiece(int piece) =>
        !changed.Contains(words.LinesOfPiece(piece)[^1] + 1)
        && !words.LinesOfPiece(piece).Contains(insertedBehind)
        && words.LinesOfPiece(piece).All(line => !changed.Contains(line) && NamesKnown(line, _tree.Lines[line].Span) && LengthKnown(line))
        && words.In(_tree.Lines[piece].Span).All(word => words.PieceOf(word) is not { } other || other == piece || PieceKnown(other));

    private bool LengthKnown(int line) =>
        Done(line) is not (StraightStatement { Extent: not StraightExtent.Rows } or SolidStatement) || !IsChanged(other => other.Statement is GaugeStatement);

    private bool IsChanged(Func<LineSyntax, bool> is_) => changed.Any(line => is_(_tree.Lines[line]));

    private static bool IsGaugeFor(CountStatement count, LineSyntax line) =>
        line.Statement is GaugeStatement gauge && (count.Stitch is null || count.Stitch.Text == gauge.Stitch.Text);
}
