using System.Globalization;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;

namespace Turnrow.Publishing.Charts.Layout;

/// <summary>How many of each kind are not drawn one by one, as the gap in the chart says it.</summary>
internal sealed class Tally
{
    private readonly List<(Stitch? Stitch, HookInto Hook, long Count)> _kinds = [];

    /// <summary>True if there is nothing.</summary>
    public bool IsEmpty => _kinds.Count == 0;

    /// <summary>Adds a cell so many times.</summary>
    public void Add(Cell cell, long times) => Add(cell.Stitch, Math.Max(1, cell.Tops) * times, cell.Hook);

    /// <summary>Adds so many of a stitch, or of spaces if there is none.</summary>
    public void Add(Stitch? stitch, long count, HookInto hook = HookInto.BothLoops)
    {
        var at = _kinds.FindIndex(kind => kind.Stitch == stitch && kind.Hook == hook);
        if (at < 0) _kinds.Add((stitch, hook, count));
        else _kinds[at] = _kinds[at] with { Count = _kinds[at].Count + count };
    }

    /// <summary>In words: <c>53 dc</c>, <c>12 dc, 12 sp</c>.</summary>
    public string In(Terms terms) => string.Join(", ", _kinds.Select(kind =>
        kind.Count.ToString(CultureInfo.InvariantCulture) + " " + NameOf(kind.Stitch, kind.Hook, terms)));

    /// <summary>A stitch as the trade shortens it together with where the hook goes: <c>FPdc</c>, <c>dc BLO</c>.</summary>
    public static string NameOf(Stitch? stitch, HookInto hook, Terms terms)
    {
        if (stitch is null) return "sp";
        var name = stitch.In(terms).Abbreviation;
        return hook switch
        {
            HookInto.BackLoop => name + " BLO",
            HookInto.FrontLoop => name + " FLO",
            HookInto.FrontPost => "FP" + name,
            HookInto.BackPost => "BP" + name,
            HookInto.OneDown => "spike " + name,
            HookInto.TwoDown => "spike-2 " + name,
            HookInto.ThreeDown => "spike-3 " + name,
            _ => name,
        };
    }
}
