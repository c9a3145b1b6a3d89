namespace Turnrow.Publishing.Charts.Layout;

/// <summary>Gathers the nodes of one time of a loop.</summary>
/// <param name="firstPlace">The place at which its first time starts.</param>
internal sealed class LoopBuilder(int firstPlace)
{
    private readonly List<(StripNode Node, int Place)> _nodes = [];
    private int _place;
    private int _worked = -1;

    /// <summary>The place ahead, in the first time.</summary>
    public int Place => firstPlace + _place;

    /// <summary>The place last worked into, counted from the place ahead.</summary>
    public int PlaceBefore => _worked - _place;

    public void Add(StripNode node, int places, bool worked = true)
    {
        _nodes.Add((node, _place));
        Pass(places, worked && places > 0);
    }

    /// <summary>Adds chains over the work; how wide they are, what they lead over decides.</summary>
    public void AddSpace(int chains) => _nodes.Add((Cell.Space(chains, 0), _place));

    /// <summary>True if chains that come next go on with a space: chains are there, and behind them only what joins to another piece.</summary>
    public bool EndsInJoinedSpace => SpaceBeforeJoins >= 0;

    /// <summary>Adds chains to that space.</summary>
    public void WidenSpace(int chains)
    {
        var (space, place) = _nodes[SpaceBeforeJoins];
        _nodes[SpaceBeforeJoins] = (Cell.Space(((Cell)space).Chains + chains, 0), place);
    }

    private int SpaceBeforeJoins
    {
        get
        {
            var at = _nodes.Count - 1;
            while (at >= 0 && _nodes[at].Node is Cell { Joins: true }) at--;
            return at < _nodes.Count - 1 && at >= 0 && _nodes[at].Node is Cell { Stitch: null } ? at : -1;
        }
    }

    /// <summary>Goes on by so many places.</summary>
    public void Pass(int places, bool worked = false)
    {
        _place += places;
        if (worked) _worked = _place - 1;
    }

    /// <summary>The loop, so many times.</summary>
    /// <param name="times">How often.</param>
    /// <param name="scale">The columns below.</param>
    /// <param name="lastPlace">The number of places below, for a row; null for a loop in it.</param>
    public Loop Close(int times, BelowScale scale, int? lastPlace)
    {
        var children = new StripNode[_nodes.Count];
        var starts = new ChildStart[_nodes.Count];
        var (top, column) = (0, 0);
        for (var i = 0; i < children.Length; i++)
        {
            var (node, place) = _nodes[i];
            if (node is Cell { Stitch: null } space) node = Cell.Space(space.Chains, WidthOf(i, space.Chains, scale, lastPlace));
            children[i] = node;
            starts[i] = new ChildStart(place, top, column);
            top += node.Tops;
            column += node.Columns;
        }

        return new Loop(children, starts, new ChildStart(_place, top, column), times);
    }

    // A space is as wide as what it leads over, and never so narrow that its chains can't be told apart.
    private int WidthOf(int at, int chains, BelowScale scale, int? lastPlace)
    {
        var before = FootFrom(at, -1);
        var after = FootFrom(at, 1);
        // In a repeat, the time before and the time after are the neighbours of its ends.
        before ??= lastPlace is null ? FootFrom(_nodes.Count, -1) - _place : -1;
        after ??= lastPlace is null ? FootFrom(-1, 1) + _place : lastPlace - firstPlace;
        var least = Math.Max(1, (chains + 1) / 2);
        if (before is null || after is null) return least;
        var from = Math.Clamp(firstPlace + before.Value + 1, 0, scale.Count);
        var to = Math.Clamp(firstPlace + after.Value, from, scale.Count);
        return Math.Max(least, (int)Math.Round(scale.Edge(to) - scale.Edge(from)));
    }

    private int? FootFrom(int at, int step)
    {
        for (var i = at + step; i >= 0 && i < _nodes.Count; i += step)
        {
            var (node, place) = _nodes[i];
            if ((step < 0 ? node.LastFoot : node.FirstFoot) is { } foot) return place + foot;
        }

        return null;
    }
}
