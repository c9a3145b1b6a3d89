using Turnrow.Compiler.Claims;
using Turnrow.Fabric;
using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Pieces;

/// <summary>What a line that could not be read leaves in doubt: no more than it must, so that the errors below are still found.</summary>
internal static class BrokenLines
{
    private static readonly string[] Harmless =
    [
        "claims", "notation", "pattern", "version", "terms", "sizes", "skill", "notion", "wearer", "yarn", "hook", "gauge", "turn", "measure",
        "count", "body", "ease", "swatch", "finished", "made", "accept", "use", "stitch", "key", "expect", "seam", "weave", "fasten", "stripes", "floats", ">",
    ];

    private static readonly string[] Naming = ["both", "right", "left", "from", "mark", "divide"];

    /// <summary>True if a broken line changes nothing in the piece that it stands in, whatever it was to say.</summary>
    public static bool LeavesPieceAlone(LineSyntax line, UnreadLines unread) => IsHarmless(line) && unread.Inside(line).All(IsPlain);

    /// <summary>Puts what a broken line may have said in doubt.</summary>
    public static void Apply(Context context, PieceState piece, LineSyntax line, UnreadLines unread)
    {
        var plain = unread.Inside(line).All(IsPlain);
        if (plain && IsHarmless(line)) return;
        piece.Unread = piece.NamesInDoubt = true;
        if (plain && line.Keyword is { } naming && Naming.Contains(naming)) return;
        if (plain && line.Keyword == "straight" && !context.StitchPatterns.AreThere) PlainRows(context, piece, line);
        else Unknown(piece, line);
        if (unread.MayLeaveForLater(line)) DoubtTurns(piece, line);
        Believe(context, piece, line, unread);
    }

    /// <summary>Puts all in doubt: a line that could not be read may have been any.</summary>
    public static void Doubt(PieceState piece)
    {
        piece.Unread = piece.NamesInDoubt = true;
        piece.Doubt(true);
    }

    private static bool IsHarmless(LineSyntax line) => line.Keyword is { } keyword && Harmless.Contains(keyword);

    private static bool IsPlain(string word) => Harmless.Contains(word) || Naming.Contains(word);

    private static void Unknown(PieceState piece, LineSyntax line)
    {
        piece.Doubt(true);
        if (line.Keyword != "row") return;
        // What the line says of rows or rounds is lost with it.
        foreach (var builder in piece.Builders) builder.WorkRow(new WordsPlan([]), new Origin(line), 0);
        piece.AddRowsPassage(line);
    }

    // A statement has made no row yet: one of the next two turns.
    private static void DoubtTurns(PieceState piece, LineSyntax line)
    {
        foreach (var builder in piece.Builders) builder.DoubtTurns(line.Keyword == "leave" ? 4 : 2);
    }

    // However many rows they were, the count stays the same: one stands for all of them.
    private static void PlainRows(Context context, PieceState piece, LineSyntax line)
    {
        var plan = ShapedPlan.Plain(PlainCheck.Guess(context, piece));
        foreach (var builder in piece.Builders)
        {
            if (!builder.HasBegun) builder.BeginUnknown();
            builder.DoubtRows();
            builder.WorkRow(plan, new Origin(line), 0);
        }

        piece.AddRowsPassage(line);
    }

    // Nothing more is said about the line itself; what it claims is believed if it is a number.
    private static void Believe(Context context, PieceState piece, LineSyntax line, UnreadLines unread)
    {
        if (line.Statement is not UnfinishedStatement { Claim: { } claim } || unread.MayBeForSomeSizes(line, context.Findings.SizeNames) || unread.MayMoveMarker(line) || unread.MayBridge(line)) return;
        context.Findings.Quietly(() => ClaimBinder.Trust(piece, new ClaimBinder(context).Bind(claim)));
    }
}
