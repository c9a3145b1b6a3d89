using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;

namespace Turnrow.Publishing.Charts.Layout;

/// <summary>
/// A part of a row laid out in columns, in working order. Repeats stay repeats, so that a row as wide as a field is laid out
/// in what its words cost; only what is drawn is ever taken apart.
/// </summary>
/// <param name="tops">Places made.</param>
/// <param name="columns">Columns taken up.</param>
internal abstract class StripNode(int tops, int columns)
{
    /// <summary>Places made.</summary>
    public int Tops { get; } = tops;

    /// <summary>Columns taken up.</summary>
    public int Columns { get; } = columns;

    /// <summary>The first place worked into, counted from the node's own start; null for a space.</summary>
    public abstract int? FirstFoot { get; }

    /// <summary>The last place worked into, counted from the node's own start; null for a space.</summary>
    public abstract int? LastFoot { get; }
}

/// <summary>What is worked at once: a stitch, an increase, a decrease, or the chains of a space.</summary>
/// <param name="stitch">The stitch; null for a space.</param>
/// <param name="hook">Where the hook goes.</param>
/// <param name="foot">The first place worked into, counted from the node's start; below 0 for a place used before.</param>
/// <param name="feet">Places worked into.</param>
/// <param name="legs">Legs drawn: as many as there are feet or tops, or more for a cluster in one place.</param>
/// <param name="tops">Places made.</param>
/// <param name="chains">Of a space, its chains.</param>
/// <param name="columns">Columns taken up.</param>
internal sealed class Cell(Stitch? stitch, HookInto hook, int foot, int feet, int legs, int tops, int chains, int columns)
    : StripNode(tops, columns)
{
    public Stitch? Stitch { get; } = stitch;

    public HookInto Hook { get; } = hook;

    public int Foot { get; } = foot;

    public int Feet { get; } = feet;

    public int Legs { get; } = legs;

    public int Chains { get; } = chains;

    /// <summary>The special stitch that it is part of; null for none.</summary>
    public Stitch? Special { get; init; }

    /// <summary>True of a stitch that goes into another piece beside this one.</summary>
    public bool Joins { get; init; }

    /// <summary>True for one stitch in one place.</summary>
    public bool IsPlain => Stitch is not null && Feet == 1 && Tops == 1 && Legs == 1;

    /// <inheritdoc/>
    public override int? FirstFoot => Stitch is null ? null : Foot;

    /// <inheritdoc/>
    public override int? LastFoot => Stitch is null ? null : Foot + Feet - 1;

    /// <summary>Chains over the work.</summary>
    public static Cell Space(int chains) => new(null, HookInto.BothLoops, 0, 0, 0, 1, chains, Math.Max(1, (chains + 1) / 2));
}

/// <summary>Where a child stands in one time of its loop.</summary>
internal readonly record struct ChildStart(int Place, int Top, int Column);

/// <summary>Nodes that come so many times, one after the other.</summary>
/// <param name="children">The nodes of one time.</param>
/// <param name="starts">Where each of them starts.</param>
/// <param name="unit">What one time takes and makes: places, tops, columns.</param>
/// <param name="times">How often.</param>
internal sealed class Loop(IReadOnlyList<StripNode> children, IReadOnlyList<ChildStart> starts, ChildStart unit, int times)
    : StripNode(unit.Top * times, unit.Column * times)
{
    public IReadOnlyList<StripNode> Children { get; } = children;

    public IReadOnlyList<ChildStart> Starts { get; } = starts;

    public ChildStart Unit { get; } = unit;

    public int Times { get; } = times;

    /// <summary>True if it is one plain stitch, over and over, in one place after the other.</summary>
    public bool IsPlain => Unit.Place == 1 && Children is [Cell { IsPlain: true }];

    /// <inheritdoc/>
    public override int? FirstFoot { get; } = FootOf(children, starts, first: true);

    /// <inheritdoc/>
    public override int? LastFoot { get; } = FootOf(children, starts, first: false) + (unit.Place * (times - 1));

    private static int? FootOf(IReadOnlyList<StripNode> children, IReadOnlyList<ChildStart> starts, bool first)
    {
        for (var i = 0; i < children.Count; i++)
        {
            var at = first ? i : children.Count - 1 - i;
            if ((first ? children[at].FirstFoot : children[at].LastFoot) is { } foot) return foot + starts[at].Place;
        }

        return null;
    }
}
