using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Turnrow.Publishing.Instructions.Phrases;
using Turnrow.Publishing.Instructions.Telling;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions;

/// <summary>How a stitch is worked that a maker may not know, in the words of the terms written in.</summary>
internal static class SpecialText
{
    /// <summary>The explanation that stands behind its abbreviation.</summary>
    public static string Of(Stitch stitch, Terms terms, Wording words)
    {
        var of = stitch.Base is { } basis ? words.Stitch(basis) : string.Empty;
        var how = stitch.Making switch
        {
            StitchMaking.Extended => Extended(stitch, words),
            StitchMaking.Linked => $"{of} that begins with the {words.St} beside it: in place of each {words.Terms.YarnOver}, insert the hook down behind a strand across the post of that {words.St} (at a row’s start, of the turning {words.Ch}) and draw up a loop; then insert it in the place named and finish as {of}.",
            StitchMaking.Foundation => $"{of} that makes the {words.Ch} at its own foot, so that foundation and first row are worked at once: begin as {of}, up to the first loop drawn up; {words.Terms.YarnOver} and draw through 1 loop, which is the {words.Ch}; then finish as {of}. The next one goes into that {words.Ch}, under 2 of its strands.",
            StitchMaking.Reversed => $"{of} worked back without a turn, from left to right: insert the hook in the next {words.St} to the right and draw up a loop, {words.Terms.YarnOver} and draw through both loops.",
            StitchMaking.Puff => $"[{words.Terms.YarnOver}, insert hook in the place named, draw up a long loop] {Count(stitch)} times, all in the same place; {words.Terms.YarnOver} and draw through all loops on the hook. 1 {words.St} is made.",
            StitchMaking.Popcorn => $"{Count(stitch)} {of} in the place named; take the hook out of the loop, insert it from the front in the top of the first of them and in the loop again, and draw the loop through. 1 {words.St} is made.",
            StitchMaking.Picot => $"{words.Ch} {Count(stitch)}, {words.SlipStitch} in {Numbers.Nth(stitch.Form!.Parts.Sum(static p => p.Count))} {words.Ch} from hook. It does not count as a {words.St}, and the next row passes behind it.",
            StitchMaking.Spur => Spur(stitch.Form!, words),
            StitchMaking.Together => Together(stitch, words),
            _ => Laid(stitch, words),
        };
        var name = stitch.In(terms).Name;
        return name == stitch.In(terms).Abbreviation ? how : $"{name}: {how}";
    }

    private static string Count(Stitch stitch) => Numbers.Plain(stitch.Form!.Parts.Sum(static p => p.Count));

    private static string Extended(Stitch stitch, Wording words)
    {
        var plain = words.Stitch(StitchBook.Find(stitch.Id[1..], Terms.US)!);
        return $"begin as {plain}, up to the first loop drawn up; {words.Terms.YarnOver} and draw through 1 loop; then finish as {plain}.";
    }

    private static string Together(Stitch stitch, Wording words)
    {
        var finish = $"then {words.Terms.YarnOver} and draw through all loops on the hook. 1 {words.St} is made.";
        if (stitch.Form is { Takes: 1, Parts: [{ Stitch: { } only } part] })
            return $"begin {words.Stitch(only, part.Hook)} {Numbers.Plain(part.Count)} times, {AllIn(stitch.Form)}, each up to but without its last {words.Terms.YarnOver}; {finish}";
        var place = stitch.Form!.Takes == 1 ? $", {AllIn(stitch.Form)}" : string.Empty;
        return $"begin {Parts(stitch.Form!, words, together: true)}{place}, each up to but without its last {words.Terms.YarnOver}; {finish}";
    }

    private static string Spur(StitchForm form, Wording words)
    {
        var parts = form.Parts.Skip(1).ToList();
        var height = parts[0].Stitch!.Height;
        var texts = new List<string> { $"{words.Ch} {Numbers.Plain(form.Parts[0].Count)}" };
        var next = 0;
        for (var i = 0; i < parts.Count;)
        {
            var part = parts[i];
            var each = 1;
            while (i + each < parts.Count && parts[i + each] == part with { Place = part.Place + each }) each++;
            if (part.Place > next) texts.Add($"{words.Terms.Skip} next {(part.Place - next == 1 ? words.Ch : $"{Numbers.Plain(part.Place - next)} {words.Ch}")}");
            // The first of them has a chain of its own, counted from the hook.
            var from = i == 0 ? 1 : 0;
            if (i == 0) texts.Add($"{Many(part, words)} in {Numbers.Nth(height + 1 + part.Place)} {words.Ch} from hook");
            if (part.Place < next) texts.Add($"{Many(part, words)} in same {words.Ch}");
            else if (each > from) texts.Add($"{Many(part, words)} in {(each - from == 1 ? $"next {words.Ch}" : $"each of next {Numbers.Plain(each - from)} {words.Ch}")}");
            next = Math.Max(next, part.Place + each);
            i += each;
        }

        return $"{string.Join(", ", texts)}. It does not count as a {words.St}, and the next row passes behind it.";
    }

    private static string Many(StitchPart part, Wording words) => part.Count == 1 ? words.Stitch(part.Stitch!, part.Hook) : $"{Numbers.Plain(part.Count)} {words.Stitch(part.Stitch!, part.Hook)}";

    private static string Laid(Stitch stitch, Wording words)
    {
        var form = stitch.Form!;
        var made = Numbers.Plain(stitch.Stitches);
        var counts = $"{made} {(stitch.Stitches == 1 ? words.St : words.Sts)}";
        return form.Takes == 1
            ? $"{InPlace(form).Written(words)}, {AllIn(form)}. {counts}."
            : $"{Parts(form, words, together: false)}. Over {Numbers.Plain(form.Takes)} {words.Sts}; {counts}.";
    }

    // Where all parts go into the place in one manner, it is said of the place; else each says its own.
    private static string AllIn(StitchForm form) => $"all {Wording.Into(SharedHook.Of(form.Parts))} the place named";

    private static PhraseList InPlace(StitchForm form)
    {
        var inside = WordTeller.Inside(form.Words());
        return SharedHook.Of(form.Parts) == HookInto.BothLoops ? inside : SharedHook.WithoutLoops(inside);
    }

    // Place by place: what is next, what is passed over, what is gone back to.
    private static string Parts(StitchForm form, Wording words, bool together)
    {
        var texts = new List<string>();
        var next = 0;
        var skipped = new SortedSet<int>();
        var shared = SharedHook.Of(form.Parts);
        for (var i = 0; i < form.Parts.Count;)
        {
            var part = form.Parts[i];
            if (part.Stitch is not { } stitch)
            {
                texts.Add($"{words.Ch} {Numbers.Plain(part.Count)}");
                i++;
                continue;
            }

            if (part.IsKnot)
            {
                texts.Add(Many(part, words));
                i++;
                continue;
            }

            if (part.Place > next)
            {
                var over = part.Place - next;
                texts.Add($"{words.Terms.Skip} next {(over == 1 ? words.St : $"{Numbers.Plain(over)} {words.Sts}")}");
                for (; next < part.Place; next++) skipped.Add(next);
            }

            var each = Alike(form, i);
            var inOne = form.Takes == 1 && together;
            var own = inOne && shared == HookInto.BothLoops ? Wording.LoopAlone(part.Hook) : string.Empty;
            var passing = skipped.Contains(part.Place) ? Passing(form.Crossing, next - part.Place - each, words) : string.Empty;
            texts.Add(One(part, stitch, each, Where(part, each, next, skipped, inOne, words), words) + own + passing);
            for (var j = 0; j < each; j++) skipped.Remove(part.Place + j);
            next = Math.Max(next, part.Place + each);
            i += each;
        }

        if (next < form.Takes) texts.Add($"{words.Terms.Skip} next {(form.Takes - next == 1 ? words.St : $"{Numbers.Plain(form.Takes - next)} {words.Sts}")}");
        return string.Join(", ", texts);
    }

    private static string Passing(Crossing crossing, int passed, Wording words)
    {
        var sts = passed == 1 ? words.St : words.Sts;
        return crossing switch
        {
            Crossing.InFront => $", working in front of the {sts} just made",
            Crossing.Behind => $", working behind the {sts} just made",
            _ => string.Empty,
        };
    }

    // How many parts on end are the same, each in the place behind the one before.
    private static int Alike(StitchForm form, int at)
    {
        var count = 1;
        while (at + count < form.Parts.Count && form.Parts[at + count] == form.Parts[at] with { Place = form.Parts[at].Place + count }) count++;
        return count;
    }

    private static string One(StitchPart part, Stitch stitch, int each, string where, Wording words)
    {
        var name = words.Stitch(stitch, part.Hook);
        var number = part.Count == 1 ? name : $"{Numbers.Plain(part.Count)} {name}";
        if (where.Length == 0) return number;
        return $"{number} {Wording.Into(part.Hook)} {(each > 1 ? "each of " : string.Empty)}{where}";
    }

    private static string Where(StitchPart part, int each, int next, SortedSet<int> skipped, bool inOne, Wording words)
    {
        if (inOne) return string.Empty;
        var places = each == 1 ? words.St : $"{Numbers.Plain(each)} {words.Sts}";
        if (skipped.Contains(part.Place)) return each == 1 ? $"the {words.Terms.Skipped} {words.St}" : $"the {Numbers.Plain(each)} {words.Terms.Skipped} {words.Sts}";
        return part.Place < next ? $"same {words.St}" : $"next {places}";
    }
}
