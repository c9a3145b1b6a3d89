using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Motifs;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Pieces;
using Turnrow.Publishing.Instructions.Phrases;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions;

/// <summary>Writes how motifs become a blanket: how many there are, in which order they are worked, and the last round of each kind that is joined.</summary>
internal sealed class BlanketWriter(Pattern pattern, SizeNames names, Wording words)
{
    private readonly Paragraphs _paragraphs = new(names);

    /// <summary>The blanket as paragraphs of Markdown.</summary>
    public IReadOnlyList<string> Write(BlanketInSizes blanket)
    {
        _paragraphs.Add($"### {Names.Title(blanket.Name)}");
        var sizes = Enumerable.Range(0, blanket.InSizes.Count).Where(i => blanket.InSizes[i] is not null).ToList();
        var made = sizes.Select(i => blanket.InSizes[i]!).ToList();
        var all = Sized.Over([.. made.Select(static b => (int)b.Layout.Motifs)]);
        _paragraphs.Add(sizes, $"**{all.Written()} motifs, {Across(made)} and {Over(made, static b => b.Layout.Down)} down, {words.Side(true)} up.** Work them row by row from the bottom up, each row from left to right, and {words.Noting(Note.JoinedAsWorked, "join each in its last round")} to those that lie beside it. {SetOff(made)}{Turns(blanket, made)}{Turned(made)}");
        _paragraphs.Add($"**First motif:** As {Names.Title(blanket.Motifs[0])}.");
        foreach (var (kind, to) in made.SelectMany(static b => b.Joined).Select(static j => (j.Kind, string.Join(' ', j.To))).Distinct().ToList()) Joined(blanket, kind, to);
        var spaces = made.Exists(static b => SpacesOf(b) > 0);
        _paragraphs.Add(sizes, $"All round there are {Over(made, static b => b.Rim.Count - SpacesOf(b))} {words.Sts}{(spaces ? $" and {Over(made, SpacesOf)} {words.Sp}s" : string.Empty)}: of each motif at the rim all that lies {(made[0].Layout.IsSetOff ? "along its outer sides, corners included" : "between its two corners, and the corners themselves")}, so that two of them lie side by side wherever two motifs meet.");
        return _paragraphs.InOrder();
    }

    private void Joined(BlanketInSizes blanket, int kind, string to)
    {
        var motif = Names.Title(blanket.Motifs[kind]);
        var sizes = new List<int>();
        var joined = new List<JoinedMotif>();
        for (var i = 0; i < blanket.InSizes.Count; i++)
        {
            if (blanket.InSizes[i]?.Joined.FirstOrDefault(j => j.Kind == kind && string.Join(' ', j.To) == to) is not { } one) continue;
            sizes.Add(i);
            joined.Add(one);
        }

        var before = Over(joined, static j => j.Piece.Rows.Count - 1);
        var start = joined.TrueForAll(static j => j.Piece.Rows.Count == 1) ? "Begin as" : "Work as";
        var upTo = joined.TrueForAll(static j => j.Piece.Rows.Count == 1) ? string.Empty : $" to the end of Round {before}";
        _paragraphs.Add(sizes, $"**{(blanket.Motifs.Count > 1 ? motif : "Motifs")} joined along {(joined[0].To.Count switch { 1 => "one side", 2 => "two sides", _ => "three sides" })} (make {Sized.Over([.. joined.Select(static j => (int)j.Count)]).Written()}):** {Which(joined[0].To, MotifSides.Count(joined[0].Piece) == 6)}{(blanket.Motifs.Count > 1 ? $", wherever it is the turn of {motif}" : string.Empty)}. {start} {motif}{upTo}, then:");
        var pieces = blanket.InSizes.Select((b, i) => sizes.IndexOf(i) is >= 0 and var at ? joined[at].Piece : Nothing(blanket.Motifs[kind])).ToList();
        var line = joined[0].Piece.Rows[^1].Origin.Value!;
        var rows = new RowsWriter(pattern, names, words, _paragraphs);
        rows.Write(new PieceLines(new PieceInSizes(blanket.Motifs[kind], pieces, [], null), words).Of(new RowsPassage(line, null)));
        _paragraphs.Add($"{names.Only(sizes)}Fasten off.");
    }

    private static string Across(List<Blanket> made) => made.TrueForAll(static b => b.Layout.Across == b.Layout.Between)
        ? $"{Over(made, static b => b.Layout.Across)} across"
        : $"{Over(made, static b => b.Layout.Across)} and {Over(made, static b => b.Layout.Between)} by turns across";

    // How a row lies on the one below it, where it is set off; that may differ from size to size.
    private static string SetOff(List<Blanket> made)
    {
        var layouts = made.Select(static b => b.Layout).Where(static l => l is { IsSetOff: true, Down: > 1 }).ToList();
        if (layouts.Count == 0) return string.Empty;
        const string Further = "every second row begins and ends half a motif further right", In = "the shorter rows begin and end half a motif further in";
        var alike = layouts.Count(static l => l.Across == l.Between);
        var how = alike == layouts.Count ? Further : alike == 0 ? In : $"where they have as many motifs as each other, {Further}; where they have not, {In}";
        return $"The rows are set off: {how}. ";
    }

    // Which kind lies where, and how many there are of each.
    private static string Turns(BlanketInSizes blanket, List<Blanket> made)
    {
        if (blanket.Motifs.Count == 1) return string.Empty;
        var kinds = blanket.Motifs.Select(Names.Title).ToList();
        var all = string.Join(", ", kinds.Select((kind, at) => $"{Over(made, b => (int)b.Layout.Of(at))} {kind}"));
        return $"{string.Join(", ", kinds.Take(kinds.Count - 1))} and {kinds[^1]} take turns along each row, and each row begins with the next of them: Row 1, the lowest, with {kinds[0]}, Row 2 with {kinds[1]}, and so on. There are {all}. ";
    }

    private static string Turned(List<Blanket> made) => made.TrueForAll(static b => b.IsUpright)
        ? $"Each stands upright: the beginning edge of {Middles(made[0])} lies at its bottom."
        : made.TrueForAll(static b => b.Joined.All(static j => j.To.Count > 1 || j.To[0] == Neighbour.Beside))
        ? "All sides of a motif are alike: turn it as it comes."
        : "The first side of a motif, behind the first corner of its last round, lies at its left.";

    private static string Middles(Blanket made) => Wording.List([.. made.Motifs.Select(static m => Names.Title(MotifStand.Around(m)!.Name)).Distinct()]);

    private static string Which(IReadOnlyList<Neighbour> to, bool isSetOff) => to switch
    {
        [Neighbour.Beside] when isSetOff => "those that lie beside one motif when their turn comes",
        [Neighbour.Beside, Neighbour.NextBeside] => "those that lie beside two motifs when their turn comes",
        [_, _, _] => "all others, each to the one before it and to the two below it",
        _ when isSetOff => $"those that lie beside {string.Join(" and ", to.Select(EdgeName.Named))} alone when their turn comes",
        [Neighbour.Beside] => "the other motifs of the first row, each to the one before it, and the first motif of each further row, to the one below it",
        [Neighbour.Before] => "the other motifs of the first row, each to the one before it",
        [Neighbour.Below] => "the first motif of each further row, to the one below it",
        _ => "all others, each to the one before it and to the one below it",
    };

    private static int SpacesOf(Blanket blanket) => blanket.Rim.CountWhere(static p => p.Kind == Fabric.Places.PlaceKind.Space);

    private static string Over<T>(IReadOnlyList<T> items, Func<T, int> number) => Sized.Over([.. items.Select(number)]).Written();

    private static Piece Nothing(string name) => new(name, null, [], new EdgeWalk(Fabric.Rows.Hand.Right, []), new EdgeWalk(Fabric.Rows.Hand.Left, []), false);
}
