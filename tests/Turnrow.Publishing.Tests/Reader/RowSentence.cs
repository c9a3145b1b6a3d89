using System.Text.RegularExpressions;

namespace Turnrow.Publishing.Tests.Reader;

/// <summary>Reads the sentence of a row into steps. It knows the trade's words and refuses every other.</summary>
internal sealed partial class RowSentence
{
    private readonly StitchWords _stitches;
    private readonly List<string> _words;
    private int _at;

    private RowSentence(string text, StitchWords stitches)
    {
        _stitches = stitches;
        _words = [.. Words().Matches(text).Select(match => match.Value)];
        if (string.Concat(_words).Length != text.Count(c => !char.IsWhiteSpace(c))) throw new Misread("signs that mean nothing");
    }

    public static IReadOnlyList<Step> Read(string text, StitchWords stitches)
    {
        var sentence = new RowSentence(text, stitches);
        var steps = sentence.Steps();
        if (sentence._at < sentence._words.Count) throw new Misread($"`{sentence.Peek}` comes where nothing more is expected");
        return steps;
    }

    private string Peek => _at < _words.Count ? _words[_at] : "";

    private List<Step> Steps()
    {
        var steps = new List<Step>();
        while (Peek is not ("" or "]" or "."))
        {
            if (Accept(",") || Accept(";") || Accept("then")) continue;
            var step = One();
            var remarks = new List<string>();
            while (Accept("(")) remarks.Add(Remark());
            steps.Add(step with { Remarks = remarks });
            if (Peek is not ("," or ";" or "." or "]" or "")) throw new Misread($"after a step comes `{Peek}`");
        }

        Accept(".");
        return steps;
    }

    private Step One()
    {
        if (Beside() is { } beside) return beside;
        if (Accept("[")) return Repeat();
        if (Accept("(")) return Group();
        if (Accept("turn")) return new Turn();
        if (Accept("ch")) return Chains();
        if (Accept("join")) return Join();
        if (Accept("with")) return Peek is "RS" or "WS" ? OverPart() : new WithYarn(Yarn());
        if (Accept("change")) return Change();
        if (Accept("cut")) return new RestYarn(Without(Yarn(), " where it was left"), "cut");
        if (Accept("carry")) return Carried();
        if (Accept("do")) return NoJoin();
        if (Accept("pull")) return Said(new CloseRing(), "the yarn end to close the ring");
        if (Accept("close")) return Said(new CloseToRing(), "these sts to a ring with the next st");
        if (Accept("working")) return Said(new OtherSide(), "along the opposite side of the foundation chain");
        if (Accept("skip") || Accept("miss")) return Skip();
        if (Accept("leave")) return Leave();
        if (Accept("the")) return Over();
        if (Accept("end")) return Said(new EndRoundHere(), "the round here , the marker moves to the next st");
        if (Accept("place")) return PutMarker();
        if (Accept("move")) return ShiftMarker();
        if (Accept("take"))
        {
            Expect("the");
            var edge = Accept("marker") && Peek == "at";
            if (!edge) Accept("markers");
            foreach (var next in edge ? ["at", "the", "edge", "out"] : new[] { "out" }) Expect(next);
            return new DropMarkers(edge);
        }

        if (Accept("along")) return new GoAlong(Rest());
        var each = Number.TryOf(Peek) is { } number ? Next(number) : 1;
        if (Accept("sl"))
        {
            Expect("st");
            var places = In();
            if (!Accept("and")) return new WorkInto(each, "sl st", places);
            // `sl st in each of next 2 dc and in next ch-2 sp`.
            return new RepeatSteps([new WorkInto(each, "sl st", places), new WorkInto(each, "sl st", In())], 1) { IsSlipping = true };
        }

        if (Special() is { } special) return OfSpecial(each, special);
        if (Peek == "spike" || Peek.StartsWith("spike-", StringComparison.OrdinalIgnoreCase) || Peek == "Spike") _at++;
        var word = Take();
        if (_stitches.Find(word) is { } stitch) return (Step?)Spread(each, stitch) ?? new WorkInto(each, stitch, In());
        if (_stitches.FindTogether(word) is { } together) return Together(together.Stitch, together.Over);
        throw new Misread($"`{word}` is nothing to do");
    }

    // `sl st in next sp of the third side of Tile`.
    private Step? Beside()
    {
        if (BesideWords().Match(string.Join(' ', _words.Skip(_at))) is not { Success: true } said) return null;
        _at += said.Value.Split(' ').Length;
        var skipped = said.Groups["skip"].Success ? Number.Of(said.Groups["skip"].Value) : 0;
        var times = said.Groups["times"].Success ? Number.Of(said.Groups["times"].Value) : 0;
        var join = new JoinBeside(skipped, said.Groups["place"].Value.Replace("sts and", "st and", StringComparison.Ordinal), times > 0 || said.Groups["next"].Success, said.Groups["edge"].Value.Replace("( ", "(", StringComparison.Ordinal).Replace(" )", ")", StringComparison.Ordinal));
        return times > 0 ? new RepeatSteps([join], times) : join;
    }

    // The longest name that fits: `4-dc BO` is one, `BO` another.
    private SpecialStitch? Special()
    {
        for (var length = 3; length > 0; length--)
        {
            if (_at + length > _words.Count) continue;
            var name = string.Join(' ', _words[_at..(_at + length)]);
            if (_stitches.FindBasic(name) is not null || _stitches.FindTogether(name) is not null || _stitches.Special(name) is not { } special) continue;
            if (name.StartsWith("spike", StringComparison.OrdinalIgnoreCase)) return null;
            _at += length;
            return special;
        }

        return null;
    }

    private Step OfSpecial(int each, SpecialStitch special)
    {
        if (special.IsNothing) return new WorkNothing();
        if (special.IsOnItsOwnChain) return Peek is "in" ? new WorkInto(each, special.Base(_stitches), In()) : new WorkOnOwnChain(each, special.Base(_stitches));
        if (special.Takes == 1) return new WorkInto(each, special.Name, In()) { Special = special };
        Expect("over");
        return new WorkOver(special, Ranged());
    }

    private SpreadOver? Spread(int count, string stitch)
    {
        if (Accept("evenly"))
        {
            Expect("over");
            var part = Accept("next") ? "next" : Accept("first") ? "first" : null;
            if (part is null) Expect("these");
            var (places, name) = (Count(), Name());
            var spaces = _at + 1 < _words.Count && Peek == "and" && _words[_at + 1] == "sps" && Accept("and") ? Name() : null;
            return new SpreadOver(count, stitch, places, name, part) { Spaces = spaces };
        }

        if (Peek != "in" || _at + 1 >= _words.Count || _words[_at + 1] != "this") return null;
        _at += 2;
        return new SpreadOver(count, stitch, 1, Name(), null);
    }

    private Step Chains()
    {
        var count = Count();
        if (Accept("for")) return new BridgeOver(count, Rest());
        if (!Accept("over")) return new MakeChains(count);
        foreach (var word in new[] { "the", "gap" }) Expect(word);
        return new BridgeOver(count, null);
    }

    private JoinRound Join()
    {
        foreach (var word in new[] { "with", "sl", "st", "in" }) Expect(word);
        return new JoinRound(Rest());
    }

    private Step NoJoin()
    {
        Expect("not");
        if (Accept("turn")) return new StayOnSide();
        if (Accept("cut")) return new RestYarn(Yarn(), "left");
        Expect("join");
        return Accept("this") ? Said(new GoOnInSpiral(), "round or the next ones , keep a marker in the first st of each") : new JoinRound((string?)null);
    }

    private string Yarn()
    {
        var from = _at;
        while (Peek is not ("" or "," or "." or ";" or "]")) _at++;
        return string.Join(' ', _words[from.._at]);
    }

    private ChangeAtEnd Change()
    {
        Expect("to");
        var text = Yarn();
        foreach (var (end, atJoin) in new[] { (" in the last yarn over hook", false), (" in the last yarn over", false), (" in the sl st that joins", true) })
        {
            if (text.EndsWith(end, StringComparison.Ordinal)) return new ChangeAtEnd(Without(text[..^end.Length], " ( joined anew )"), atJoin);
        }

        throw new Misread("where the yarn is changed is not said");
    }

    private static string Without(string text, string end) => text.EndsWith(end, StringComparison.Ordinal) ? text[..^end.Length] : text;

    private RestYarn Carried()
    {
        var text = Yarn();
        foreach (var end in new[] { " up the side", " up inside" })
        {
            if (text.EndsWith(end, StringComparison.Ordinal)) return new RestYarn(text[..^end.Length], "carried" + end);
        }

        throw new Misread("where the yarn is carried is not said");
    }

    private T Said<T>(T step, string words)
    {
        foreach (var word in words.Split(' ')) Expect(word);
        return step;
    }

    private RepeatSteps Repeat()
    {
        var steps = Steps();
        Expect("]");
        var times = Count();
        if (!Accept("times")) Expect("time");
        return new RepeatSteps(steps, times);
    }

    private Step Skip()
    {
        if (Accept("the"))
        {
            var chains = Count();
            Expect("ch");
            return new SkipBeginning(chains);
        }

        if (Accept("top")) return new SkipPlaces(TopOf());
        if (Peek is "first" or "next" or "last") return new SkipPlaces(Ranged());
        if (Peek is not ("turning" or "beginning")) return new SkipPlaces(FromHook());
        var word = Take();
        Expect("ch");
        return new SkipPlaces(new PlaceWords(Where.TopOf, 1, [new PlaceName(word)]));
    }

    private Step Leave()
    {
        int? count = null;
        var which = Peek is "the" ? "" : "these";
        var slipped = false;
        if (!Accept("these") && !Accept("this"))
        {
            Expect("the");
            if (Accept("sl"))
                slipped = true;
            else
            {
                which = Accept("other") ? "other" : Accept("last") ? "last" : "before";
                count = Number.TryOf(Peek) is { } number ? Next(number) : 1;
            }

            if (!Accept("sts")) Expect("st");
            if (which == "before") ThoseLeft();
        }

        Expect("unworked");
        if (Accept("for")) return ForNow(count, which);
        if (which == "before") throw new Misread("sts left before are left for now again, or worked over");
        return new LeaveUnworked(count, slipped);
    }

    private LeaveForNow ForNow(int? count, string which)
    {
        Expect("now");
        if (Peek != "," || _at + 1 >= _words.Count || _words[_at + 1] != "with") return new LeaveForNow(count, which, false);
        Expect(",");
        Expect("with");
        Expect("those");
        ThoseLeft();
        return new LeaveForNow(count, which, true);
    }

    private void ThoseLeft()
    {
        Expect("left");
        Expect("before");
    }

    private OverThoseLeft Over()
    {
        Expect("last");
        var count = Number.TryOf(Peek) is { } number ? Next(number) : 1;
        var one = Accept("st");
        if (!one) Expect("sts");
        foreach (var word in one ? new[] { "worked", "over", "is", "the", "one" } : ["worked", "over", "are", "those"]) Expect(word);
        ThoseLeft();
        return new OverThoseLeft(count);
    }

    private WorkTogether Together(string stitch, int over)
    {
        if (!Accept("around")) Expect("over");
        if (Accept("back") || Accept("front")) _ = Said(0, "loops only of");
        var places = new List<PlaceWords>();
        if (Number.TryOf(Peek) is not null)
        {
            var count = Count();
            places.Add(new PlaceWords(Where.Next, count, [Name()]));
            Expect(",");
            Expect("beginning");
            Expect("in");
            var from = FromHook();
            return new WorkTogether(stitch, over, places, from.Count);
        }

        do places.Add(Accept("top") ? TopOf() : Ranged());
        while (Accept("and"));
        return new WorkTogether(stitch, over, places, 0);
    }

    private static int LengthOf(string word) => Number.Of(word[(word.IndexOf('-', StringComparison.Ordinal) + 1)..]);

    private string Stitch()
    {
        var word = Take();
        return _stitches.Find(word) ?? throw new Misread($"`{word}` is no stitch");
    }

    private string Remark()
    {
        var from = _at;
        while (Peek is not ")")
        {
            if (Take() == "(") throw new Misread("parentheses within a remark");
        }

        Expect(")");
        return string.Join(' ', _words[from..(_at - 1)]).Replace(" ,", ",", StringComparison.Ordinal);
    }

    private string Rest()
    {
        var from = _at;
        while (Peek is not ("" or "," or "." or ";")) _at++;
        return string.Join(' ', _words[from.._at]);
    }

    [GeneratedRegex(@"^(?:(?:skip|miss) next (?<skip>\d+) [a-z -]+? and )?(?:sl st|[a-z]+) in (?:each of next (?<times>\d+) )?(?<next>next )?(?<place>corner|row-end or st|row-end|sts? and sp|st|ch-\d+ sp|sp|ch|[a-z]+)s? of (?<edge>the (?:motif (?:below left|below right|below|before|beside)|next motif beside)|the (?:(?:right|left) edge(?: \( [^)]*\))?|[a-z]+ side|last (?:row|round)|beginning edge) of [A-Z][A-Za-z0-9' -]*?)(?= [,;.\])]|$)", RegexOptions.IgnoreCase)]
    private static partial Regex BesideWords();

    [GeneratedRegex(@"[A-Za-z0-9][A-Za-z0-9'/-]*|[\[\]().,;:]")]
    private static partial Regex Words();
}
