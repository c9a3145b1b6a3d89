using System.Globalization;
using Turnrow.Compiler.Colours;
using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Grading;
using Turnrow.Compiler.Stitches;
using Turnrow.Compiler.StitchPatterns;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler;

/// <summary>What the whole file says and every line may need.</summary>
internal sealed class Context(Findings findings, Scope scope, Evaluator evaluator, Terms terms, bool termsInDoubt)
{
    private readonly Dictionary<string, string> _spellings = new(StringComparer.OrdinalIgnoreCase);

    public Findings Findings { get; } = findings;

    public Scope Scope { get; } = scope;

    public Evaluator Evaluate { get; } = evaluator;

    public Terms Terms { get; } = terms;

    /// <summary>The stitches there are: the standard list and the file's own.</summary>
    public StitchList Stitches { get; init; } = new(terms, scope);

    /// <summary>The stitch patterns that the file defines or takes from others.</summary>
    public StitchPatternBook StitchPatterns { get; } = new(findings);

    /// <summary>The yarns, and what is said of them.</summary>
    public YarnBook Yarns { get; init; } = new(findings);

    /// <summary>The gauges; set once the header is read.</summary>
    public GaugeBook Gauges { get; set; } = new([]);

    /// <summary>True if a gauge line could not be read: a missing gauge then says nothing new.</summary>
    public bool GaugesInDoubt { get; set; }

    /// <summary>True if a line on turning chains could not be read: that one is not said then says nothing new.</summary>
    public bool TurnsInDoubt { get; set; }

    /// <summary>The pattern's turning-chain rules, in order.</summary>
    public Dictionary<Stitch, TurnRule> Rules { get; } = [];

    /// <summary>How rounds follow each other, where a piece does not say.</summary>
    public RoundWay RoundsAre { get; set; }

    /// <summary>Finds the edges that a row of a piece is joined to.</summary>
    public Func<Pieces.PieceState, JoinItem, Fabric.Joins.JoinedEdge?[]?>? EdgesJoined { get; set; }

    /// <summary>The rows worked so far, for all pieces and sizes.</summary>
    public RowBook Worked { get; } = new();

    public int Sizes => Findings.Sizes;

    /// <summary>The sizes that the line being read is for.</summary>
    public SizesHere Here => Evaluate.Here;

    /// <summary>True if the line of sizes could not be read: a size that is not known then says nothing new.</summary>
    public bool SizesInDoubt { get; init; }

    /// <summary>The rows that the pattern may still have.</summary>
    public RowBudget Rows { get; } = new(findings);

    /// <summary>True if the line that says the terms could not be read.</summary>
    public bool TermsInDoubt => termsInDoubt;

    /// <summary>
    /// The stitch that goes into one place and makes one, which a word names in this file's terms; null, and reported, if it names none.
    /// </summary>
    public Stitch? StitchOf(NameSyntax word)
    {
        if (AnyStitchOf(word) is not { } meaning) return null;
        if (meaning.Stitch is { IsOne: true, Takes: 1 }) return meaning.Stitch;
        Findings.Add(StitchHere.At(word.Span, word.Text, Word(meaning.Stitch.Rule)));
        return null;
    }

    /// <summary>What a word names as a stitch of any kind; null, and reported, if it names none.</summary>
    public StitchMeaning? AnyStitchOf(NameSyntax word)
    {
        if (Stitches.Find(word.Text) is { } meaning) return meaning;
        ReportUnknown(word);
        return null;
    }

    /// <summary>The basic stitch, or the one of the file's own, that a word names, without a report: no other name can be the same.</summary>
    public Stitch? TryStitch(string word) => StitchBook.Find(word, Terms) ?? (Stitches.IsOwn(word) ? Stitches.Find(word)?.Stitch : null);

    /// <summary>The stitch pattern that a line names; null, and reported, if there is none.</summary>
    public StitchPattern? StitchPatternOf(NameSyntax name) => StitchPatterns.Use(name, TryStitch(name.Text) is not null);

    /// <summary>The fabric that a word names, a stitch pattern or plain rows of a stitch; null, and reported, if it names none.</summary>
    public Stitch? FabricOf(NameSyntax word) =>
        StitchPatterns.SpanOf(word.Text) is not null || StitchPatterns.IsLater(word.Text) ? StitchPatternOf(word)?.Fabric
        : StitchPatterns.InDoubt ? TryStitch(word.Text)
        : StitchOf(word);

    /// <summary>What the file's claims count where they do not say.</summary>
    public Counting Counting { get; set; }

    /// <summary>True if the line that says what claims count could not be read: then none of them can be checked.</summary>
    public bool CountingInDoubt { get; set; }

    /// <summary>The name of an edge or of a part as it was spelt first: capitals make no other name.</summary>
    public string AsFirstSpelt(NameSyntax name) => _spellings.TryGetValue(name.Text, out var first) ? first : _spellings[name.Text] = name.Text;

    /// <summary>The ease wanted, by measure.</summary>
    public Dictionary<string, Ease> Eases { get; } = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>The text of a file beside the pattern; null if there is none.</summary>
    public Func<string, string?> Beside { get; init; } = static _ => null;

    /// <summary>True if the designer thinks in inches.</summary>
    public bool InInches { get; set; }

    /// <summary>A length in the designer's unit, to a hundredth.</summary>
    public string Length(Rational centimetres)
    {
        var value = centimetres.ToDouble() / (InInches ? 2.54 : 1);
        return value.ToString("0.##", CultureInfo.InvariantCulture) + (InInches ? " in" : " cm");
    }

    /// <summary>A stitch's abbreviation in this file's terms.</summary>
    public string Word(Stitch stitch) => stitch.In(Terms).Abbreviation;

    /// <summary>Reports a word that is no stitch, unless that is in doubt.</summary>
    public void ReportUnknown(NameSyntax word)
    {
        if (termsInDoubt || Stitches.InDoubt || Stitches.IsOwn(word.Text)) return;
        if (Yarns.Has(word.Text))
        {
            Yarns.Misname();
            Findings.Add(YarnUnsaid.At(word.Span, word.Text));
            return;
        }

        var other = Terms == Terms.US ? Terms.UK : Terms.US;
        if (StitchBook.Find(word.Text, other) is { } foreign) Findings.Add(OtherTerms.At(word.Span, word.Text, foreign, Terms));
        else Findings.Add(UnknownStitch.At(word.Span, word.Text, [.. StitchBook.All.Select(s => s.In(Terms))], Stitches.Own));
    }
}
