namespace Turnrow.Publishing.Tests.Reader;

/// <content>How a sentence says where stitches go, and the words one by one.</content>
internal sealed partial class RowSentence
{
    private PlaceWords In()
    {
        if (!Accept("around") && !Accept("over")) Expect("in");
        if (Accept("ring")) return new PlaceWords(Where.Ring, 1, [new PlaceName("ring")]);
        if (OfSpecial() is { } place) return place;
        if (Peek is not ("front" or "back")) return InBoth();
        var loop = Take();
        Expect("loop");
        Expect("only");
        Expect("of");
        return InBoth() with { Loop = loop };
    }

    private PlaceWords InBoth()
    {
        if (Accept("top")) return TopOf();
        // A post stitch goes round the chain and not in its top.
        if (Peek is "turning" or "beginning" || (Peek == "the" && _at + 1 < _words.Count && _words[_at + 1] == "round's")) return RoundChain();
        if (Accept("each")) return Each();
        if (Accept("the")) return Accept("marked") ? new PlaceWords(Where.Marked, 1, [Name()]) : AllLeft(new PlaceWords(Where.The, 1, [Name()]));
        if (Peek is "first" or "next" or "last" or "same") return OfThoseLeft(Ranged());
        return FromHook();
    }

    // `3rd dc of next SH`, `centre dc of next SH`, `ch-1 sp of next V-st`; with `each` before it, each of them to the end.
    private PlaceWords? OfSpecial()
    {
        var from = _at;
        var each = Accept("each");
        var nth = Accept("centre") || Accept("center") ? 0 : Number.TryOf(Peek) is { } number ? Next(number) : -1;
        if (nth < 0 && Peek is "of" or "first" or "next" or "last" or "same" or "the" or "top" or "back" or "front" or "ring") return Back(from);
        if (nth > 0 && Peek == "ch") return Back(from);
        if (!Peek.StartsWith("ch-", StringComparison.Ordinal) && _stitches.Find(Peek) is null) return Back(from);
        var name = Name();
        if (!Accept("of") || (!each && !Accept("next") && !Accept("first"))) return Back(from);
        if (Special() is not { } special) return Back(from);
        if (each && !Accept("across")) Expect("around");
        return new PlaceWords(each ? Where.Across : Where.Next, 1, [name]) { Of = special.Name, Nth = nth };
    }

    private PlaceWords? Back(int to)
    {
        _at = to;
        return null;
    }

    private PlaceWords Each()
    {
        if (Accept("of"))
        {
            if (!Accept("the")) return OfThoseLeft(Ranged());
            var count = Count();
            return AllLeft(new PlaceWords(Where.The, count, [Name()]));
        }

        var names = new List<PlaceName>();
        do names.Add(Name());
        while (Accept("and") || AcceptBetween(names));
        if (Accept("across") || Accept("around")) return new PlaceWords(Where.Across, 0, names);
        Expect("to");
        if (Accept("next")) return new PlaceWords(Where.ToNext, 1, [.. names, Name()]);
        if (Number.TryOf(Peek) is { } before)
        {
            _at++;
            if (Name().Word != "st") throw new Misread("before a marker are sts");
            Expect("before");
            return IsTurn() ? new PlaceWords(Where.ToTurn, before, names) : ToMarked(before, names);
        }

        if (IsTurn()) return new PlaceWords(Where.ToTurn, 0, names);
        if (Peek == "the") return ToMarked(0, names);
        Expect("last");
        var keep = Number.TryOf(Peek) is { } number ? Next(number) : 1;
        if (Name().Word is not ("st" or "ch")) throw new Misread("`to last` wants sts or ch");
        return new PlaceWords(Where.ToLast, keep, names);
    }

    // `each ch, st and sp`: three kinds have a comma between the first two.
    private bool AcceptBetween(List<PlaceName> names) =>
        names is [{ Word: "ch" }] && Peek == "," && _at + 1 < _words.Count && _words[_at + 1] == "st" && Accept(",");

    private bool IsTurn()
    {
        if (Peek != "the" || _at + 1 >= _words.Count || _words[_at + 1] != "turn") return false;
        foreach (var word in new[] { "the", "turn", "below" }) Expect(word);
        return true;
    }

    // `each of the 6 dc left before`: all of them, but for a ch that stands for the last.
    private PlaceWords AllLeft(PlaceWords words)
    {
        if (!Accept("left")) return words;
        Expect("before");
        return words with { Where = Where.LeftBefore, IsAll = true };
    }

    private PlaceWords OfThoseLeft(PlaceWords words)
    {
        if (words.Where != Where.Next || !Accept("of")) return words;
        Expect("those");
        ThoseLeft();
        return words with { Where = Where.LeftBefore };
    }

    private PlaceWords ToMarked(int before, List<PlaceName> names)
    {
        Expect("the");
        Expect("marked");
        return new PlaceWords(Where.ToMarked, before, [.. names, Name()]);
    }

    private Step PutMarker()
    {
        Expect("a");
        Expect("marker");
        Expect("in");
        Expect("the");
        if (Accept("middle"))
        {
            foreach (var word in new[] { "one", "of", "these" }) Expect(word);
            var count = Count();
            _ = Name();
            return new PutMarkerInMiddle(count);
        }

        var first = Accept("first");
        var name = Name();
        foreach (var word in first ? ["of", "this"] : new[] { "just", "made" }) Expect(word);
        if (first && !Accept("round")) Expect("row");
        return new PutMarker(name, first);
    }

    private ShiftMarker ShiftMarker()
    {
        Expect("the");
        Expect("marker");
        Expect("to");
        if (Accept("this")) return new ShiftMarker(1, Name());
        Expect("the");
        if (Accept("top"))
        {
            Expect("of");
            Expect("this");
            Expect("ch");
            return new ShiftMarker(1, null);
        }

        var nth = Number.TryOf(Peek) is { } number ? Next(number) : 0;
        foreach (var word in nth > 0 ? ["of", "these"] : new[] { "middle", "one", "of", "these" }) Expect(word);
        var count = Count();
        return new ShiftMarker(count, Name()) { Nth = nth };
    }

    // `with RS of Yoke facing, beginning with the 33rd st of its last row, counted from its right edge`; a bridge is a remark.
    private GoOverPart OverPart()
    {
        var rightSide = Take() == "RS";
        Expect("of");
        var from = _at;
        while (Peek is not ("" or "facing")) _at++;
        var title = string.Join(' ', _words[from.._at]);
        foreach (var word in new[] { "facing", ",", "beginning", "with", "the" }) Expect(word);
        var nth = Accept("first") ? 1 : Count();
        foreach (var word in new[] { "st", "of", "its", "last" }) Expect(word);
        if (!Accept("round"))
        {
            foreach (var word in new[] { "row", ",", "counted", "from", "its" }) Expect(word);
            var right = Take() == "right";
            Expect("edge");
            return new GoOverPart(new StitchOfLast(rightSide, title, nth, right, false, false));
        }

        var back = _at + 1 < _words.Count && _words[_at + 1] == "counted";
        if (back) foreach (var word in new[] { ",", "counted", "back", "from", "where", "that", "was", "joined" }) Expect(word);
        return new GoOverPart(new StitchOfLast(rightSide, title, nth, !back, true, false));
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
        if (which == Where.Next && Accept("marked")) return new PlaceWords(Where.NextMarked, 1, [Name()]);
        var count = Number.TryOf(Peek) is { } number ? Next(number) : 1;
        var name = Name();
        // `next 6 sts and sps`: one after the other, whichever comes.
        return new PlaceWords(which, count, count > 1 && Peek == "and" && _at + 1 < _words.Count && _words[_at + 1] == "sps" && Accept("and") ? [name, Name()] : [name]);
    }

    private PlaceWords TopOf()
    {
        Expect("of");
        return RoundChain();
    }

    private PlaceWords RoundChain()
    {
        if (OfRound() is { } round) return new PlaceWords(Where.TopOf, 1, [round]);
        var word = Take();
        if (word is not ("turning" or "beginning")) throw new Misread($"`top of {word}` is no place");
        Expect("ch");
        return new PlaceWords(Where.TopOf, 1, [new PlaceName(word)]);
    }

    // `the round's ch-3`: the one that the round below began with.
    private PlaceName? OfRound()
    {
        if (Peek != "the") return null;
        foreach (var word in new[] { "the", "round's" }) Expect(word);
        return new PlaceName("round", LengthOf(Take()));
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
        if (OfRound() is { } round) return new PlaceWords(Where.ChainOf, count, [round]);
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
            // A stitch turned over for a mirror image has two words: `in next mirrored lean`.
            "mirrored" => new PlaceName(_stitches.Find($"mirrored {Take()}") ?? throw new Misread("`mirrored` is no place")),
            _ => new PlaceName(_stitches.Find(word) ?? throw new Misread($"`{word}` is no place")),
        };
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
}
