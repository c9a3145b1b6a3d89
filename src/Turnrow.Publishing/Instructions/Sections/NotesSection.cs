using Turnrow.Fabric.Colours;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Rows;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Sections;

/// <summary>What holds for the whole pattern: how sizes and counts are written, what turning chains stand for, which edge is which.</summary>
internal static class NotesSection
{
    public static IReadOnlyList<string> Write(Pattern pattern, SizeNames names, Wording words)
    {
        var notes = new List<string>();
        if (names.AreSeveral)
            notes.Add($"Numbers are for the first size, with those for the other sizes in parentheses after it: {names.All}. Where there is only one number, it is for all sizes. Where a paragraph is for some sizes only, its numbers are for those sizes in their order.");
        var rounds = pattern.Pieces.Any(static p => p.InSizes.Any(static s => s.Rows.Any(static r => r.IsRound)));
        notes.Add($"The count of a row{(rounds ? " or round" : string.Empty)} stands in square brackets at its end." + pattern.Counting switch
        {
            Counting.WithoutTurningChain => $" The {words.Ch} that stands for a row's first {words.St} is not in the count.",
            Counting.WithChains => $" Each {words.Ch} of a {words.Ch} sp is in the count.",
            _ => string.Empty,
        });
        var chains = TurningChains.Of(pattern);
        foreach (var way in chains.Ways)
        {
            if (chains.IsOfRows(way)) notes.Add(TurningNote(way, chains, words));
            if (chains.IsOfRounds(way)) notes.Add(RoundNote(way, chains, words));
        }

        if (rounds) notes.Add(TurnsRounds(pattern) ? $"Where rounds are joined and turned, the side that faces is named; all others are worked with {words.Side(true)} facing." : $"Rounds are worked with {words.Side(true)} facing, without turning.");
        if (words.NeedsNote(Note.HeldStitches))
            notes.Add(Wording.Sentence($"{words.Sts} that are held stay as they are: put a marker in the first and the last of them, or a thread through them all."));
        if (words.NeedsNote(Note.BeginningChain))
            notes.Add($"Turning {words.Ch}: the {words.Ch} made at the beginning of the row before. Beginning {words.Ch}: the {words.Ch} {words.Terms.Skipped} at the beginning of a row that is worked into a chain.");
        if (words.NeedsNote(Note.DecreaseAtStart))
            notes.Add($"Where a {words.Ch} and the {words.St} behind it count as one decrease, what is worked there later goes in the top of that {words.St}, and nothing goes in the {words.Ch}.");
        if (words.NeedsNote(Note.WaitingStitches))
            notes.Add($"Sts left unworked for now wait beside the turn of a short row, and a later row works over them: from the last {words.St} of the short row, go straight on into the first of them.{(chains.Ways.Any(static way => way.Counts) ? $" The top of a turning {words.Ch} among them counts as a {words.St} of the row it was made in." : string.Empty)}");
        if (words.NamesYarns && pattern.Pieces.Any(static p => YarnsWorked.AreSeveral(p.InSizes)))
        {
            notes.Add($"Where a row changes to another yarn (with …), work the {words.St} before up to its last {words.Terms.YarnOver}, and make that one with the new yarn.");
            if (pattern.Pieces.Any(static p => p.InSizes.Any(static s => s.Rows.Any(static r => YarnsWorked.In(r).Count > 1))))
                notes.Add("A yarn that rests within a row is carried along on the wrong side, which faces you in a wrong-side row, or laid along the top of the row below and worked over.");
        }

        if (words.NeedsNote(Note.Markers))
            notes.Add(MarkerNote(MarkersUsed.In(pattern), words));
        if (words.NeedsNote(Note.JoinedAsWorked))
            notes.Add($"Where a piece is joined to another as it is worked, go along that edge place by place; the stitches that join are not in the count, and nothing is worked in them later. A {words.Ch} on both sides of one is one {words.Sp}.");
        if (words.NeedsNote(Note.Sides))
            notes.Add("The sides of a piece in rounds go from corner to corner, and the corners at its ends are part of each: the first begins at the first corner of the last round, and the others follow it in working order.");
        if (words.NeedsNote(Note.RightAndLeft))
            notes.Add($"Right edge and left edge are those of the piece held with its {words.Side(true)} facing you and its first row at the bottom.");
        return notes.Count == 0 ? [] : ["## Notes", string.Join('\n', notes.Select(static n => $"- {n}"))];
    }

    private static string MarkerNote(MarkersUsed markers, Wording words)
    {
        var row = (markers.InRows, markers.InRounds) switch { (true, true) => "row or round", (false, true) => "round", _ => "row" };
        var place = (markers.InStitches, markers.InSpaces) switch { (true, true) => $"{words.St} or {words.Sp}", (false, true) => words.Sp, _ => words.St };
        return $"A marker stays with its corner. Where a {row} works over a marked {place} and says nothing of the marker, move it up to the {words.St} made there.";
    }

    private static bool TurnsRounds(Pattern pattern) =>
        pattern.Pieces.Any(static p => p.InSizes.Any(static s => s.Rows.Any(static r => r is { IsRound: true, Way: RoundWay.Turned })));

    private static string TurningNote(Opening way, TurningChains chains, Wording words)
    {
        var stitch = words.Stitch(way.Stitch!);
        var where = chains.IsTheSameThroughout(way.Stitch!) ? $"At the beginning of a row of {stitch}" : $"Where a row of {stitch} says so";
        var chain = $"{words.Ch} {Numbers.Plain(way.Chains)}";
        return way.Counts
            ? $"{where}, {chain} counts as 1 {stitch}: the first {words.St} is {words.Terms.Skipped} unless it is named, and the next row's last {words.St} goes in top of this {words.Ch}."
            : $"{where}, {chain} does not count as a {words.St}: the first {stitch} goes in the first {words.St}, and nothing goes in this {words.Ch}.";
    }

    private static string RoundNote(Opening way, TurningChains chains, Wording words)
    {
        var stitch = words.Stitch(way.Stitch!);
        var where = chains.IsTheSameThroughout(way.Stitch!) ? $"At the beginning of a {(chains.HasSpirals ? "joined " : string.Empty)}round of {stitch}" : $"Where a round of {stitch} says so";
        var chain = $"{words.Ch} {Numbers.Plain(way.Chains)}";
        return way.Counts
            ? $"{where}, {chain} counts as 1 {stitch}: it stands where the round begins, and the round is joined in top of it."
            : $"{where}, {chain} does not count as a {words.St}: the first {stitch} goes in the place where the round begins, and the round is joined in the first {stitch}.";
    }
}
