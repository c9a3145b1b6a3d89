namespace Turnrow.Publishing.Tests.Reader;

/// <summary>
/// What lies before the maker when she begins a row: its places in the order in which she meets them, and where her hook is.
/// </summary>
internal sealed class Ground(IEnumerable<Place> places)
{
    private readonly bool _comesBack;

    public List<Place> Places { get; } = [.. places];

    /// <summary>Chains at its beginning that hang from the hook: a foundation, or chains made at the end of the last row.</summary>
    public int HangingChains { get; init; }

    /// <summary>True if the row is begun by turning.</summary>
    public bool IsTurned { get; init; }

    /// <summary>True if the row comes back over the one before from its end, be it turned or not.</summary>
    public bool ComesBack
    {
        get => _comesBack || IsTurned;
        init => _comesBack = value;
    }

    /// <summary>True if the row goes on from where the round before was joined: then it need not use that place.</summary>
    public bool GoesOn { get; init; }

    /// <summary>The place where the yarn is joined; -1 for none.</summary>
    public int JoinedAt { get; init; } = -1;

    /// <summary>The first of the places, the last ones, that short rows left for later; the number of places if there are none.</summary>
    public int Turn { get; init; } = int.MaxValue;

    /// <summary>Of a part: how many places of the row that it stands on come before it, those of new chains taken off.</summary>
    public int BaseAt { get; init; }

    /// <summary>The stitch that the row's count speaks of, for a row that works none.</summary>
    public string? Hint { get; init; }

    /// <summary>Finds the edge that a row goes on along; null where rows do not go along edges.</summary>
    public Func<string, IReadOnlyList<Place>>? Along { get; init; }

    /// <summary>The same with what the row's count speaks of.</summary>
    public Ground With(string? hint) => new(Places)
    {
        HangingChains = HangingChains,
        IsTurned = IsTurned,
        ComesBack = ComesBack,
        GoesOn = GoesOn,
        JoinedAt = JoinedAt,
        BaseAt = BaseAt,
        Along = Along,
        Turn = Turn,
        Hint = hint,
    };
}
