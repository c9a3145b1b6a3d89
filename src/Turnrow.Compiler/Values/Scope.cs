using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Values;

/// <summary>A name that the designer defined, with its values.</summary>
/// <param name="Name">The name.</param>
/// <param name="Values">Its value a size; null where it could not be found out.</param>
/// <param name="Span">Where it is defined.</param>
internal sealed record Definition(string Name, Value?[] Values, TextSpan Span)
{
    /// <summary>True if a table of bodies gives it: the designer may say another number for it.</summary>
    public bool OfBody => Source is not null;

    /// <summary>Where a table of bodies has it from; null for what the file defines itself.</summary>
    public string? Source { get; init; }

    /// <summary>True once a line has asked for it.</summary>
    public bool Used { get; set; }
}

/// <summary>The names defined so far, and those still to come.</summary>
internal sealed class Scope
{
    // A longer circle is told as what it also is: names defined further down.
    private const int LongestCircle = 100;

    private readonly Dictionary<string, Definition> _definitions = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, TextSpan> _later = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, IReadOnlyList<string>> _uses = new(StringComparer.OrdinalIgnoreCase);

    private readonly Dictionary<string, string> _cameFrom = new(StringComparer.OrdinalIgnoreCase);
    private readonly Queue<string> _open = new();

    /// <summary>True if a line that may have defined a name could not be read: an unknown name then says nothing new.</summary>
    public bool InDoubt { get; set; }

    /// <summary>All names, for "did you mean".</summary>
    public IEnumerable<string> Names => _definitions.Keys;

    public Definition? Find(string name) => _definitions.GetValueOrDefault(name);

    /// <summary>The definition that a line uses.</summary>
    public Definition? Use(string name)
    {
        if (!_definitions.TryGetValue(name, out var found)) return null;
        found.Used = true;
        return found;
    }

    public TextSpan? FindLater(string name) => _later.TryGetValue(name, out var span) ? span : null;

    public void Announce(string name, TextSpan span, IReadOnlyList<string> uses)
    {
        _later.TryAdd(name, span);
        _uses.TryAdd(name, uses);
    }

    /// <summary>Lends a name a value for a while; what it meant before is given back to <see cref="TakeBack"/>.</summary>
    public Definition? Lend(Definition definition)
    {
        var before = Find(definition.Name);
        Define(definition);
        return before;
    }

    /// <summary>Ends what <see cref="Lend"/> began.</summary>
    public void TakeBack(string name, Definition? before)
    {
        if (before is null) _definitions.Remove(name);
        else _definitions[name] = before;
    }

    public void Define(Definition definition) => _definitions[definition.Name] = definition;

    /// <summary>The names on the way from a definition back to itself; null if it does not come back, or not soon.</summary>
    public IReadOnlyList<string>? Circle(string from)
    {
        // Breadth first, with the way kept: no recursion, however long the chain of names is.
        _cameFrom.Clear();
        _open.Clear();
        _open.Enqueue(from);
        while (_cameFrom.Count < LongestCircle && _open.TryDequeue(out var name))
        {
            foreach (var used in _uses.GetValueOrDefault(name) ?? [])
            {
                if (string.Equals(used, from, StringComparison.OrdinalIgnoreCase)) return Way(from, name);
                if (_cameFrom.TryAdd(used, name)) _open.Enqueue(used);
            }
        }

        return null;
    }

    private List<string> Way(string from, string name)
    {
        var way = new List<string> { from };
        while (!string.Equals(name, from, StringComparison.OrdinalIgnoreCase))
        {
            way.Insert(1, name);
            name = _cameFrom[name];
        }

        return way;
    }
}
