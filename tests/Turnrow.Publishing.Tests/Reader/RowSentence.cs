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
        if (Accept("[")) return Repeat();
        if (Accept("(")) return Group();
        if (Accept("turn")) return new Turn();
        if (Accept("ch")) return new MakeChains(Count());
        if (Accept("skip") || Accept("miss")) return Skip();
        if (Accept("leave")) return Leave();
        if (Accept("along")) return new GoAlong(Rest());
        var each = Number.TryOf(Peek) is { } number ? Next(number) : 1;
        if (Accept("sl"))
        {
            Expect("st");
            return new WorkInto(each, "sl st", In());
        }

        var word = Take();
        if (_stitches.Find(word) is { } stitch) return new WorkInto(each, stitch, In());
        if (_stitches.FindTogether(word) is { } together) return Together(together.Stitch, together.Over);
        throw new Misread($"`{word}` is nothing to do");
    }

    private RepeatSteps Repeat()
    {
        var steps = Steps();
        Expect("]");
        var times = Count();
        if (!Accept("times")) Expect("time");
        return new RepeatSteps(steps, times);
    }

    private WorkGroup Group()
    {
        var parts = new List<(int, string?)>();
        do
        {
            if (Accept("ch"))
            {
                parts.Add((Count(), null));
                continue;
            }

            var count = Number.TryOf(Peek) is { } number ? Next(number) : 1;
            parts.Add((count, Stitch()));
        }
        while (Accept(","));
        Expect(")");
        return new WorkGroup(parts, In());
    }

    private Step Skip()
    {
        if (Accept("the"))
        {
            var chains = Count();
            Expect("ch");
            return new SkipBeginning(chains);
        }

        return new SkipPlaces(Ranged());
    }

    private LeaveUnworked Leave()
    {
        int? count = null;
        var slipped = false;
        if (!Accept("these") && !Accept("this"))
        {
            Expect("the");
            if (Accept("sl"))
                slipped = true;
            else
            {
                if (!Accept("other")) Expect("last");
                count = Number.TryOf(Peek) is { } number ? Next(number) : 1;
            }

            if (!Accept("sts")) Expect("st");
        }

        Expect("unworked");
        return new LeaveUnworked(count, slipped);
    }

    private WorkTogether Together(string stitch, int over)
    {
        Expect("over");
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

    private PlaceWords In()
    {
        Expect("in");
        if (Accept("front") || Accept("back"))
        {
            Expect("loop");
            Expect("only");
            Expect("of");
        }

        if (Accept("top")) return TopOf();
        if (Accept("each")) return Each();
        if (Accept("the")) return new PlaceWords(Where.The, 1, [Name()]);
        if (Peek is "first" or "next" or "last" or "same") return Ranged();
        return FromHook();
    }

    private PlaceWords Each()
    {
        if (Accept("of"))
        {
            if (!Accept("the")) return Ranged();
            var count = Count();
            return new PlaceWords(Where.The, count, [Name()]);
        }

        var names = new List<PlaceName>();
        do names.Add(Name());
        while (Accept("and"));
        if (Accept("across")) return new PlaceWords(Where.Across, 0, names);
        Expect("to");
        if (Accept("next")) return new PlaceWords(Where.ToNext, 1, [.. names, Name()]);
        Expect("last");
        var keep = Number.TryOf(Peek) is { } number ? Next(number) : 1;
        if (Name().Word is not ("st" or "ch")) throw new Misread("`to last` wants sts or ch");
        return new PlaceWords(Where.ToLast, keep, names);
    }

    private PlaceWords Ranged()
    {
        var which = Take() switch
        {
            "first" => Where.First,
            "next" => Where.Next,
            "last" => Where.Last,
            "same" => Where.Same,
            var other => throw new Misread($"`{other}` says no place"),
        };
        var count = Number.TryOf(Peek) is { } number ? Next(number) : 1;
        return new PlaceWords(which, count, [Name()]);
    }

    private PlaceWords TopOf()
    {
        Expect("of");
        var word = Take();
        if (word is not ("turning" or "beginning")) throw new Misread($"`top of {word}` is no place");
        Expect("ch");
        return new PlaceWords(Where.TopOf, 1, [new PlaceName(word)]);
    }

    private PlaceWords FromHook()
    {
        var count = Count();
        Expect("ch");
        if (Accept("from"))
        {
            Expect("hook");
            return new PlaceWords(Where.FromHook, count, []);
        }

        Expect("of");
        var word = Take();
        if (word is not ("turning" or "beginning")) throw new Misread($"`{word} ch` is no chain that there can be");
        return new PlaceWords(Where.ChainOf, count, [new PlaceName(word, LengthOf(Take()))]);
    }

    private PlaceName Name()
    {
        var word = Take();
        if (word.StartsWith("ch-", StringComparison.Ordinal))
        {
            if (!Accept("sps")) Expect("sp");
            return new PlaceName("sp", LengthOf(word));
        }

        if (word == "added")
        {
            Expect("ch");
            return new PlaceName("ch");
        }

        return word switch
        {
            "st" or "sts" => new PlaceName("st"),
            "sp" or "sps" => new PlaceName("sp"),
            "row-end" or "row-ends" => new PlaceName("row-end"),
            "ch" => new PlaceName("ch"),
            _ => new PlaceName(_stitches.Find(word) ?? throw new Misread($"`{word}` is no place")),
        };
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

    private int Count() => Number.Of(Take());

    private int Next(int number)
    {
        _at++;
        return number;
    }

    private string Take() => _at < _words.Count ? _words[_at++] : throw new Misread("the sentence breaks off");

    private bool Accept(string word)
    {
        if (!string.Equals(Peek, word, StringComparison.OrdinalIgnoreCase)) return false;
        _at++;
        return true;
    }

    private void Expect(string word)
    {
        if (!Accept(word)) throw new Misread($"`{word}` is expected, not `{Peek}`");
    }

    [GeneratedRegex(@"[A-Za-z0-9][A-Za-z0-9'/-]*|[\[\]().,;:]")]
    private static partial Regex Words();
}
