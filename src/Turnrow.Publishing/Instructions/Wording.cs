using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions;

/// <summary>
/// Words of the terms written in. It keeps in mind which abbreviations have been used, so that only those are explained, and which turning
/// chains have been explained.
/// </summary>
internal sealed class Wording(Terms terms, TurningChains turningChains)
{
    private readonly SortedDictionary<string, string> _abbreviations = new(StringComparer.OrdinalIgnoreCase);
    private readonly SortedDictionary<string, string> _specials = new(StringComparer.OrdinalIgnoreCase);
    private readonly HashSet<(Stitch, int, bool)> _explained = [];
    private readonly HashSet<Note> _asked = [];
    private readonly HashSet<(string Piece, string For)> _kept = [];

    /// <summary>The words other than stitches.</summary>
    public TradeTerms Terms { get; } = TradeTerms.Of(terms);

    /// <summary>True if several yarns are worked with: each row says which.</summary>
    public bool NamesYarns { get; init; }

    /// <summary>The most stitches that a yarn may be carried over.</summary>
    public int MostFloat { get; init; }

    /// <summary>True while a paragraph is written that only some sizes read: what is explained there is not explained to the others.</summary>
    public bool IsForSome { get; set; }

    /// <summary>The piece that is being written; null between them.</summary>
    public string? InPiece { get; set; }

    /// <summary>Keeps in mind that a piece's loop was put on a marker, until a later piece goes on with its yarn.</summary>
    public void KeepLoop(string piece, string later) => _kept.Add((piece, later));

    /// <summary>That a piece's loop is taken off its marker; empty where none was put on for the piece that is being written.</summary>
    public string LoopOf(string piece) => InPiece is { } later && _kept.Contains((piece, later)) ? $"take the loop of {Names.Title(piece)} off the marker; " : string.Empty;

    /// <summary>Abbreviations used so far, with their meaning.</summary>
    public IReadOnlyDictionary<string, string> Abbreviations => _abbreviations;

    /// <summary>Special stitches used so far, with how they are worked.</summary>
    public IReadOnlyDictionary<string, string> Specials => _specials;

    /// <summary>True if what was written needs a note.</summary>
    public bool NeedsNote(Note note) => _asked.Contains(note);

    /// <summary>Keeps in mind that what is being written needs a note.</summary>
    /// <param name="note">The note.</param>
    /// <param name="text">What needs it, handed back.</param>
    public string Noting(Note note, string text)
    {
        _asked.Add(note);
        return text;
    }

    public string Ch => Stitch(StitchBook.Chain);

    public string SlipStitch => Stitch(StitchBook.Slip);

    public string St => Used("st", "st(s)", "stitch(es)");

    public string Sts => Used("sts", "st(s)", "stitch(es)");

    public string Sp => Used("sp", "sp(s)", "space(s): the gap under a chain");

    /// <summary>A stitch's abbreviation.</summary>
    public string Stitch(Stitch stitch)
    {
        var name = stitch.In(terms);
        return stitch.Making == StitchMaking.Basic ? Used(name.Abbreviation, name.Name) : Explained(stitch, name.Abbreviation);
    }

    /// <summary>Several of a stitch: an abbreviation has no plural, a name that is written out has.</summary>
    public string Stitches(Stitch stitch) => IsWrittenOut(stitch) ? Names.Plural(Stitch(stitch)) : Stitch(stitch);

    // The name of a special stitch often ends in the stitch that it is made of.
    private bool IsWrittenOut(Stitch stitch)
    {
        if (stitch.Making == StitchMaking.Basic) return false;
        var (name, full) = stitch.Family is { } family ? (family.Abbreviation, family.Name) : (stitch.In(terms).Abbreviation, stitch.In(terms).Name);
        return name == full && StitchBook.Find(name[(name.LastIndexOfAny([' ', '-']) + 1)..], terms) is null;
    }

    /// <summary>A stitch's abbreviation by where the hook goes: a post stitch has its own.</summary>
    public string Stitch(Stitch stitch, HookInto hook)
    {
        if (hook.RowsDown() is > 0 and var down) return Spike(stitch, down);
        if (hook is not (HookInto.FrontPost or HookInto.BackPost)) return Stitch(stitch);
        var (letters, side) = hook == HookInto.FrontPost ? ("FP", "front") : ("BP", "back");
        var plain = Stitch(stitch);
        return Special(letters + plain, $"{side} post {stitch.In(terms).Name}: work {plain} with the hook round the post of the stitch, from the {side}.");
    }

    private string Spike(Stitch stitch, int down)
    {
        var plain = Stitch(stitch);
        var rows = down == 1 ? "1 row" : $"{Numbers.Plain(down)} rows";
        return Special(
            down == 1 ? $"spike {plain}" : $"spike-{Numbers.Plain(down)} {plain}",
            $"{plain} over the {St} named: insert the hook {rows} further down, straight below it, draw up a loop to the height of the row, and finish as {plain}. The {St} named is covered.");
    }

    // What explains a stitch may use its name again.
    private string Explained(Stitch stitch, string abbreviation)
    {
        if (_specials.TryAdd(abbreviation, string.Empty)) _specials[abbreviation] = SpecialText.Of(stitch, terms, this);
        return abbreviation;
    }

    /// <summary>The name of stitches worked together, or over several places.</summary>
    public string Together(Stitch stitch, HookInto hook, int takes)
    {
        if (stitch.Form is not null) return Stitch(stitch, hook);
        var plain = Stitch(stitch, hook);
        var name = stitch.In(terms).Name;
        return Special(
            $"{plain}{Numbers.Plain(takes)}tog",
            $"{Numbers.Plain(takes)} {name} together: begin {plain} in each of the places named, each up to but without its last {Terms.YarnOver}; then {Terms.YarnOver} and draw through all loops on the hook. It counts as 1 {St}.");
    }

    /// <summary><c>RS</c> or <c>WS</c>.</summary>
    public string Side(bool rightSide) => rightSide ? Used("RS", "right side") : Used("WS", "wrong side");

    /// <summary>What a counted turning chain stands for, where it has to be said.</summary>
    public string TurningChainCounts(Stitch stitch, int chains) =>
        Explain(stitch, chains, true, $"counts as 1 {Stitch(stitch)}");

    /// <summary>That a turning chain stands for nothing, where it has to be said.</summary>
    public string TurningChainDoesNotCount(Stitch stitch, int chains) =>
        Explain(stitch, chains, false, $"does not count as a {St}");

    /// <summary>The chain at a row's beginning: made there, or skipped of the foundation.</summary>
    public string ChainAtStart(bool isOfFoundation) => isOfFoundation ? Noting(Note.BeginningChain, $"beginning {Ch}") : $"turning {Ch}";

    /// <summary>Left, but for a later row to work over.</summary>
    public string Unworked => Noting(Note.WaitingStitches, "unworked for now");

    /// <summary><c>right</c> or <c>left</c>.</summary>
    public static string Hand(Hand hand) => hand == Fabric.Rows.Hand.Right ? "right" : "left";

    /// <summary><c>right edge</c> or <c>left edge</c>.</summary>
    public string Edge(Hand hand) => Noting(Note.RightAndLeft, $"{Hand(hand)} edge");

    /// <summary>An edge by its name, or as right or left.</summary>
    public string Edge(string? name, Hand hand) => name is null ? Edge(hand) : Names.Edge(name);

    /// <summary>An edge by its hand, and by its name where it has one: <c>right edge (neck)</c>.</summary>
    public string Edge(Hand hand, string? name) => name is null ? Edge(hand) : $"{Edge(hand)} ({Names.Words(name)})";

    /// <summary>The side of a piece in rounds, from corner to corner, by its name.</summary>
    public string MotifSide(string? name) => Noting(Note.Sides, name ?? string.Empty);

    /// <summary>The word before a place.</summary>
    public static string Into(HookInto hook) => hook switch
    {
        HookInto.BackLoop => "in back loop only of",
        HookInto.FrontLoop => "in front loop only of",
        HookInto.FrontPost or HookInto.BackPost => "around",
        _ when hook.RowsDown() > 0 => "over",
        _ => "in",
    };

    /// <summary>Which loop, of a stitch that names no place.</summary>
    public static string LoopAlone(HookInto hook) => hook switch
    {
        HookInto.BackLoop => " in back loop only",
        HookInto.FrontLoop => " in front loop only",
        _ => string.Empty,
    };

    /// <summary>The word before several places that are drawn together.</summary>
    public static string Over(HookInto hook) => hook switch
    {
        HookInto.BackLoop => "over back loops only of",
        HookInto.FrontLoop => "over front loops only of",
        HookInto.FrontPost or HookInto.BackPost => "around",
        _ => "over",
    };

    /// <summary><c>a, b and c</c>.</summary>
    public static string List(IReadOnlyList<string> parts) => parts.Count < 2
        ? string.Concat(parts)
        : $"{string.Join(", ", parts.Take(parts.Count - 1))} and {parts[^1]}";

    /// <summary>A sentence begins with a capital letter.</summary>
    public static string Sentence(string text)
    {
        // A sentence may begin with what is repeated: its first word stands behind the bracket.
        var at = text.AsSpan().IndexOfAnyExcept("[(");
        return at < 0 ? text : $"{text.AsSpan(0, at)}{char.ToUpperInvariant(text[at])}{text.AsSpan(at + 1)}";
    }

    private string Explain(Stitch stitch, int chains, bool counts, string meaning)
    {
        if (!turningChains.IsTheSameThroughout(stitch) || (IsForSome && !_explained.Contains((stitch, chains, counts)))) return $" ({meaning})";
        return _explained.Add((stitch, chains, counts)) ? $" ({meaning} here and throughout)" : string.Empty;
    }

    private string Used(string abbreviation, string meaning) => Used(abbreviation, abbreviation, meaning);

    private string Used(string written, string listed, string meaning)
    {
        _abbreviations[listed] = meaning;
        return written;
    }

    private string Special(string abbreviation, string how)
    {
        _specials[abbreviation] = how;
        return abbreviation;
    }
}
