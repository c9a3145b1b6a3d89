using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Phrases;

/// <summary>
/// One thing that a maker does, as data. It is told of one size first; phrases that are alike are then joined over the sizes, and only
/// their numbers become <c>5 (6, 7)</c>.
/// </summary>
internal abstract record Phrase
{
    /// <summary>What it does to an edge's shape; null for nothing.</summary>
    public EdgeShaping? Shaping { get; init; }

    /// <summary>The special stitch that it ends, which the row's chain began; null for none.</summary>
    public Stitch? Completes { get; init; }

    /// <summary>Both as one phrase over the sizes of both; null if they are not alike.</summary>
    public Phrase? And(Phrase other)
    {
        if (Shaping is null != other.Shaping is null || Completes != other.Completes) return null;
        if (Shaping is null) return Join(other);
        return Shaping.And(other.Shaping!) is { } shaping && Join(other) is { } joined ? joined with { Shaping = shaping } : null;
    }

    /// <summary>The phrase in words.</summary>
    public string Written(Wording words)
    {
        var text = Completes is null ? Text(words) : $"{Text(words)} (completes 1 {words.Stitch(Completes)})";
        return Shaping is null ? text : $"{text} ({Shaping.Written()})";
    }

    /// <summary>Joins the numbers of a phrase of the same kind; null if the other is of another kind.</summary>
    protected abstract Phrase? Join(Phrase other);

    /// <summary>The words, without the shaping.</summary>
    protected abstract string Text(Wording words);
}

/// <summary>Stitches added or taken at an edge, said so that a maker sees which.</summary>
/// <param name="Change">Increases (above 0) or decreases (below).</param>
/// <param name="Edge">The edge's name; null if it has none.</param>
internal sealed record EdgeShaping(Sized<int> Change, string? Edge)
{
    public EdgeShaping? And(EdgeShaping other) =>
        Edge == other.Edge && Change.First > 0 == other.Change.First > 0 ? this with { Change = Change.And(other.Change) } : null;

    public string Written()
    {
        var number = Change.Select(Math.Abs);
        var kind = Change.First > 0 ? "increase" : "decrease";
        var what = number.All(static n => n == 1) ? kind : $"{number.Written()} {kind}s";
        return Edge is null ? what : $"{what} at {Names.Edge(Edge)}";
    }
}
