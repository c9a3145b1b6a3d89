using System.Globalization;
using System.Text;

namespace Turnrow.Compiler.Tests.Naive;

/// <summary>Writes a pattern as notation text. The only file that knows how the notation is spelled.</summary>
public static class NotationWriter
{
    private static readonly string[] s_sides = ["first", "second", "third", "fourth", "fifth", "sixth"];
    private static readonly string[] s_gauged = ["sc", "hdc", "dc", "tr"];

    public static string Write(NaivePattern pattern)
    {
        var text = new StringBuilder();
        text.Append("notation 1\npattern \"Sample\"\nterms US\n");
        Line(text, $"sizes {string.Join(", ", pattern.Sizes)}");
        foreach (var yarn in pattern.Yarns)
            Line(text, $"yarn {yarn}");
        foreach (var stitch in s_gauged)
            Line(text, $"gauge {stitch}: 19 stitches and 10 rows to 10 cm");
        foreach (var rule in pattern.Turns)
            Line(text, Turn(rule));
        foreach (var stitch in pattern.Stitches)
            Line(text, $"stitch {stitch.Name} is {stitch.Text}");
        foreach (var stitchPattern in pattern.StitchPatterns)
            WriteStitchPattern(text, stitchPattern);
        foreach (var piece in pattern.Pieces)
        {
            text.Append('\n');
            WritePiece(text, piece, pattern.Sizes);
        }
        text.Append(pattern.Seams.Count > 0 ? "\n" : "");
        foreach (var seam in pattern.Seams)
            Line(text, Text(seam));
        return text.ToString();
    }

    public static string Text(NaiveSeam seam) => seam.FoldedAt is { } at
        ? $"seam {Walk(seam.First)} with itself{(at == 1 ? "" : $", from stitch {N(at)}")}"
        : $"seam {Walk(seam.First)} with {Walk(seam.Second)}{(seam.Eased ? ", easing" : "")}";

    private static string Walk(NaiveWalk walk) => $"{walk.Piece} {(walk.Side is { } side ? $"{s_sides[side]} side" : Rim(walk.Edge))}";

    private static void WriteStitchPattern(StringBuilder text, StitchPattern pattern)
    {
        if (pattern is Picture picture)
        {
            Line(text, $"stitch pattern {picture.Name} from picture in {picture.Stitch}, over multiple of {N(picture.Multiple)}");
            foreach (var (letter, yarn) in picture.Keys)
                Line(text, $"  key \"{letter}\" is {yarn}");
            foreach (var line in picture.Lines)
                Line(text, $"  | {string.Join(' ', line.ToCharArray())} |");
            return;
        }
        var plus = pattern.Plus > 0 ? $" + {N(pattern.Plus)}" : "";
        Line(text, $"stitch pattern {pattern.Name} over multiple of {N(pattern.Multiple)}{plus}");
        for (var row = 0; row < pattern.Rows.Count; row++)
            Line(text, $"  row {N(row + 1)}: {Words(pattern.Rows[row])}");
        var again = pattern.Rows.Count - pattern.AgainFrom;
        if (pattern.AgainFrom > 0 && pattern.AgainFrom % 2 == 0)
            Line(text, again == 1 ? "  repeat last row" : $"  repeat last {N(again)} rows");
        else if (again == 1 && pattern.AgainFrom > 0)
            Line(text, $"  repeat row {N(pattern.Rows.Count)}");
        else if (pattern.AgainFrom > 0)
            Line(text, $"  repeat rows {N(pattern.AgainFrom + 1)} to {N(pattern.Rows.Count)}");
    }

    private static void WritePiece(StringBuilder text, NaivePiece piece, IReadOnlyList<string> sizes)
    {
        Line(text, $"piece {piece.Name}{(piece.Copies > 1 ? $", make {N(piece.Copies)}" : "")}{Opening(piece.Start)}");
        switch (piece.Start)
        {
            case BeginWith begin: Line(text, $"  begin with {begin.Stitches} stitches"); break;
            case RingOf { Chains: 0 }: Line(text, "  begin with ring"); break;
            case RingOf ring: Line(text, $"  begin with ring of {N(ring.Chains)} chains"); break;
            case BothSidesOf both: Line(text, $"  begin with both sides of {both.Stitches} stitches"); break;
            case FoundationRow row: Line(text, $"  begin with {row.Stitches} foundation {row.Stitch}"); break;
            case ChainStart chain: Line(text, $"  chain {chain.Chains}"); break;
        }
        foreach (var statement in piece.Statements)
            Line(text, $"  {ForSizes(sizes, statement)}{Text(statement)}{Claim(statement.Claim)}");
    }

    /// <summary>Two or more sizes side by side are written from one to another, the others one by one.</summary>
    private static string ForSizes(IReadOnlyList<string> sizes, Statement statement)
    {
        if (statement.Only is not { } only)
            return "";
        var ranges = new List<string>();
        for (var first = 0; first < sizes.Count; first++)
        {
            if (!only[first])
                continue;
            var last = first;
            while (last + 1 < sizes.Count && only[last + 1])
                last++;
            ranges.Add(first == last ? sizes[first] : $"{sizes[first]} to {sizes[last]}");
            first = last;
        }
        return $"for {string.Join(", ", ranges)}: ";
    }

    private static string Opening(Start start) => start switch
    {
        PartOf part => $" from {part.Piece}: {part.Stitches} stitches at {Word(part.Edge)} edge",
        MirrorOf mirror => $" is {mirror.Piece} mirrored",
        PickedUp up => $" picked up along {Along(up)}{Window(up.Window)}: {Rate(up)}{Claim(up.Claim)}",
        PickedUpInside inside => $" picked up {(inside.Around ? "around" : "along")} {string.Join(" and ", inside.Names.Select(name => $"{inside.Piece} {name}"))}: 1 {inside.Stitch} in each st",
        PickedUpLoops loops => $" picked up {(loops.Around ? "around" : "along")} {loops.Piece} row {N(loops.Row)}: 1 {loops.Stitch} in each st",
        PickedUpRim up => $" picked up {(up.Around ? "around" : "along")} {string.Join(" and ", up.Edges.Select(edge => $"{up.Piece} {Rim(edge)}"))}: {Rates(up)}{Claim(up.Claim)}",
        AcrossOf across => $" across {string.Join(", ", across.Pieces)}",
        _ => "",
    };

    private static string Along(PickedUp up) => (up.Hand, up.Name) switch
    {
        ({ } hand, null) => $"{up.Piece} {Word(hand)} edge",
        ({ } hand, { } name) => $"{up.Piece} {Word(hand)} {name}",
        (_, var name) => $"{up.Piece} {name}",
    };

    private static string Window(RowWindow window) => window.Kind switch
    {
        WindowKind.First => $", first {window.Rows} rows",
        WindowKind.Last => $", last {window.Rows} rows",
        WindowKind.AllButFirst => $", all but first {window.Rows} rows",
        WindowKind.AllButLast => $", all but last {window.Rows} rows",
        _ => "",
    };

    private static string Rate(PickedUp up) => up.Evenly is { } all ? $"{all} {up.Stitch} evenly" : Rate(up.Stitches, up.Stitch, up.PerRows);

    private static string Rate(int stitches, string stitch, int perRows) => perRows == 1
        ? $"{N(stitches)} {stitch} in each row"
        : $"{N(stitches)} {stitch} per {N(perRows)} rows";

    private static string Rates(PickedUpRim up) =>
        $"{(up.ToCorner is { } side ? $"{N(side)} {up.Stitch} evenly to each corner" : $"{Rate(up.Stitches, up.Stitch, up.PerRows)}, 1 {up.Stitch} in each st{InSpaces(up)}")}{(up.InCorner is { } corner ? $", {N(corner)} {up.Stitch} in each corner" : "")}";

    private static string InSpaces(PickedUpRim up) => up.InSpace switch
    {
        null => "",
        0 => ", skip each sp",
        { } spaces => $", {N(spaces)} {up.Stitch} in each sp",
    };

    private static string Rim(RimEdge edge) => edge switch
    {
        RimEdge.Right => "right edge",
        RimEdge.Left => "left edge",
        RimEdge.LastRow => "last row",
        _ => "foundation",
    };

    private static string Turn(TurnRule rule)
    {
        var counts = rule.Counts ? "counts" : "does not count";
        var foundation = rule.NotInFoundation ? ", not in the foundation" : "";
        var first = rule.FirstStitchIn is { } chain ? $", first stitch in {Ordinal(chain)} chain" : "";
        return $"turn {rule.Stitch}: ch {N(rule.Chains)} {counts}{foundation}{first}";
    }

    private static string Text(Statement statement) => statement switch
    {
        RowLine row => $"{(row.IsRound ? "round" : "row")}{Number(row)}: {Words(row.Words)}",
        RowsLine rows => $"{Rows(rows)} {rows.Span.From} to {rows.Span.Last}: {Words(rows.Words)}",
        Straight straight => $"straight {straight.Rows} {Rows(straight)}",
        StraightIn straight => $"straight {straight.Rows} {Rows(straight)}{(straight.IsNamed ? $", in {straight.Pattern.Name}" : "")}",
        EdgedIn edged => $"{(edged.Schedules.Count > 0 ? "shape" : "straight")} {edged.Rows} rows{(edged.IsNamed ? $", in {edged.Pattern.Name}, edges in {edged.Stitch}" : "")}{(edged.Schedules.Count > 0 ? ": " : "")}{string.Join("; ", edged.Schedules.Select(Text))}",
        LeaveAtEdge leave => $"leave {leave.Stitches} at {Edge(leave.Edge)}",
        LeaveForLater later => $"leave {later.Stitches} for later at {Edge(later.Edge)}",
        AddAtEdge add => $"add {add.Stitches} at {Edge(add.Edge)}{(add.OneRowApart ? ", one row apart" : "")}",
        Shape shape => $"shape {Span(shape)}: {string.Join("; ", shape.Schedules.Select(Text))}",
        SpreadSchedule spread => $"shape {spread.Rows} {Rows(spread)}: {(spread.Increase ? "inc" : "dec")} {spread.Many} evenly every {Every(spread)}{(spread.Staggered ? ", staggered" : "")}",
        SlopeAround slope => $"shape {slope.Rows} {Rows(slope)} evenly to {slope.To}, around",
        NameEdge name => $"{(name.FromHere ? "from here " : "")}{Edge(name.Edge)} {(name.Edge == EdgeRef.Both ? "are" : "is")} {name.Name}",
        ShapeManner manner => $"shape {Text(manner.Manner)}",
        FastenOff => "fasten off",
        TakeYarn take => $"with {take.Yarn}",
        StripesAre stripes => $"stripes are {string.Join(", ", stripes.Order.Select(stripe => $"{stripe.Yarn} {stripe.Rows} rows"))}",
        RoundsAre are => $"rounds are {Text(are.Way)}",
        _ => throw new InvalidOperationException(statement.ToString()),
    };

    private static string Text(RoundsWay way) => way switch
    {
        RoundsWay.Turned => "joined and turned",
        RoundsWay.Spiral => "spiral",
        _ => "joined",
    };

    private static string Number(RowLine row) =>
        (row.Number is { } number ? $" {N(number)}" : "") + (row.Side is { } side ? $" {side}" : "");

    private static string Every(SpreadSchedule spread) => spread.Every == 1 ? "row" : FormattableString.Invariant($"{spread.Every} {Rows(spread)}");

    private static string Rows(Statement statement) => statement.IsRound ? "rounds" : "rows";

    private static string Span(Shape shape) =>
        shape.Span.From is null ? $"{shape.Span.Last} {Rows(shape)}" : $"{Rows(shape)} {shape.Span.From} to {shape.Span.Last}";

    private static string Text(Schedule schedule)
    {
        var after = schedule.After > 0 ? $"after {N(schedule.After)} rows, " : "";
        var change = $"{(schedule.Increase ? "inc" : "dec")} {N(schedule.Stitches)} at {Edge(schedule.Edge)}";
        var own = schedule.Own == new Manner(null, null) ? "" : $", {Text(schedule.Own)}";
        if (schedule.ForLater)
            change = $"leave {N(schedule.Stitches)} for later at {Edge(schedule.Edge)}";
        if (schedule.LeaveFirst > 0)
            change = $"leave {N(schedule.LeaveFirst)} at {Edge(schedule.Edge)}, then {(schedule.Increase ? "inc" : "dec")} {N(schedule.Stitches)}";
        return $"{after}{change} {string.Join(", then ", schedule.Legs.Select(Text))}{own}";
    }

    private static string Text(Manner manner)
    {
        var inside = manner.Inside is { } n ? $"{N(n)} stitches in" : null;
        var way = manner.Way switch
        {
            Way.Skipping => "by skipping",
            Way.SlippingOver => "by slipping over",
            Way.Together => "by working together",
            _ => null,
        };
        return string.Join(", ", new[] { inside, way }.Where(text => text is not null));
    }

    private static string Text(Leg leg) =>
        (leg.Every == 1 ? "every row" : $"every {N(leg.Every)} rows") + (leg.Times is { } times ? $" {N(times)} times" : "");

    private static string Edge(EdgeRef edge) =>
        edge == EdgeRef.Both ? "both edges" : edge.Name ?? $"{Word(edge.Hand!.Value)} edge";

    private static string Words(IEnumerable<Word> words) => string.Join(", ", words.Select(Text));

    private static string Text(Word word) => word switch
    {
        Each each => Counted(each.Stitch, each.Count),
        Across across => $"{(across.Loop is { } loop ? $"{loop}-loop " : "")}{across.Stitch} across",
        Until until => $"{until.Stitch} until {until.Remain} remain",
        Into into => $"{(into.Count == 1 ? "" : N(into.Count) + " ")}{into.Stitch} in {Text(into.Target)}",
        Group group => $"({string.Join(", ", group.Words.Select(InGroup))}) in {Text(group.Target)}",
        Inc inc => (inc.Named ? inc.Stitch + " " : "") + Counted("inc", inc.Count),
        Dec dec => (dec.Named ? dec.Stitch + " " : "") + Counted("dec", dec.Count),
        Together together => $"{together.Stitch}{N(together.Over)}tog",
        ToTurn to => to.Remain.IsSame && to.Remain[0] == 0 ? $"{to.Stitch} to turn" : $"{to.Stitch} until {to.Remain} remain before turn",
        ToCorner to => to.Remain.IsSame && to.Remain[0] == 0 ? $"{to.Stitch} to corner" : $"{to.Stitch} until {to.Remain} remain before corner",
        Hold hold => $"hold {hold.Count} for {hold.Name}",
        Bridge bridge => $"bridge {bridge.Count}{(bridge.Name is null ? "" : $" for {bridge.Name}")}",
        Special special => Counted(special.Stitch.Name, special.Count),
        JoinNext join => $"join {(join.Skipping > 0 ? $"skipping {N(join.Skipping)} " : "")}to {join.Piece} {(join.Side is { } side ? $"{s_sides[side]} side" : Rim(join.Edge))}",
        MarkCorner => "mark corner",
        WithYarn with => $"with {with.Yarn}",
        RemoveCorners => "remove corners",
        MoveMarker => "move marker",
        IntoRing { Times: 1, Words: [Into into] } => $"{InGroup(into)} in ring",
        IntoRing ring => $"({string.Join(", ", ring.Words.Select(InGroup))}) {N(ring.Times)} times in ring",
        Skip skip => $"skip {skip.Count}",
        Space space => $"ch {N(space.Chains)}",
        SlipOver slip => $"slip over {slip.Count}",
        LeaveUnworked leave => (leave.Count is null ? "leave the rest" : $"leave {leave.Count}") + (leave.ForLater ? " for later" : ""),
        InEach inEach => $"{inEach.Stitch} in each {Text(inEach.Of)}",
        InEachToCorner inEach => $"{inEach.Stitch} in each {Text(inEach.Of)} {(inEach.Remain == 0 ? "to corner" : $"until {N(inEach.Remain)} remain before corner")}",
        Evenly evenly => $"{evenly.Stitch} {(evenly.Increase ? "inc" : "dec")} {evenly.Count} evenly",
        SpreadOver spread => $"{spread.Stitch} across with ({Words(spread.Words)}) {spread.Times} times evenly{(spread.AtEachEnd is { } ends ? $", {ends} at each end" : "")}",
        EachByKind each => $"{each.Stitch} in each st and {N(each.InSpace)} {each.Stitch} in each sp",
        Repeat repeat => $"({Words(repeat.Words)}) {End(repeat)}",
        _ => throw new InvalidOperationException(word.ToString()),
    };

    private static string Counted(string word, Sized count) => count.IsSame && count[0] == 1 ? word : $"{word} {count}";

    private static string InGroup(Word word) => word is Into into
        ? into.Count == 1 ? into.Stitch : $"{N(into.Count)} {into.Stitch}"
        : word is Repeat repeat ? $"({string.Join(", ", repeat.Words.Select(InGroup))}) {End(repeat)}"
        : Text(word);

    private static string Text(Target target) => target.Place switch
    {
        PlaceWord.First => "first",
        PlaceWord.Last => "last",
        PlaceWord.Corner => "corner",
        PlaceWord.NextCorner => "next corner",
        PlaceWord.NextSpace => "next sp",
        PlaceWord.NextStitch or PlaceWord.NextCentre => $"next {target.Kind}",
        _ => "next",
    };

    private static string Text(EachOf of) => of switch
    {
        EachOf.Stitch => "st",
        EachOf.Space => "sp",
        _ => "st and sp",
    };

    private static string End(Repeat repeat) => repeat.End switch
    {
        RepeatEnd.Times => $"{repeat.Count} times",
        RepeatEnd.Until => $"until {repeat.Count} remain",
        _ => "across",
    };

    private static string Claim(Sized? claim) => claim is null ? "" : $" = {claim}";

    private static string Word(Hand hand) => hand == Hand.Right ? "right" : "left";

    private static string Ordinal(int n) => N(n) + n switch { 1 => "st", 2 => "nd", 3 => "rd", _ => "th" };

    private static string N(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static void Line(StringBuilder text, string line) => text.Append(line).Append('\n');
}
