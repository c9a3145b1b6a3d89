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

    /// <summary>Adds chains over the work. In columns they are as wide as they can be told apart; where they lie, they arch over what they lead over.</summary>
    public void AddSpace(int chains) => _nodes.Add((Cell.Space(chains), _place));

    /// <summary>True if chains that come next go on with a space: chains are there, and behind them only what joins to another piece.</summary>
    public bool EndsInJoinedSpace => SpaceBeforeJoins >= 0;

    /// <summary>Adds chains to that space.</summary>
    public void WidenSpace(int chains)
    {
        var (space, place) = _nodes[SpaceBeforeJoins];
        _nodes[SpaceBeforeJoins] = (Cell.Space(((Cell)space).Chains + chains), place);
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
    public Loop Close(int times)
    {
        var children = new StripNode[_nodes.Count];
        var starts = new ChildStart[_nodes.Count];
        var (top, column) = (0, 0);
        for (var i = 0; i < children.Length; i++)
        {
            var (node, place) = _nodes[i];
            children[i] = node;
            starts[i] = new ChildStart(place, top, column);
            top += node.Tops;
            column += node.Columns;
        }

        return new Loop(children, starts, new ChildStart(_place, top, column), times);
    }
}
