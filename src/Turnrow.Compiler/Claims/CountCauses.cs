namespace Turnrow.Compiler.Claims;

/// <summary>
/// The differences between claims and calculated counts that were already told. A later count that is off by the same in every size has
/// the same cause: it is counted, not told again.
/// </summary>
internal sealed class CountCauses(CountCauses? from = null)
{
    private readonly List<(int?[] Difference, Followers Followers)> _told = [];
    private readonly CountCauses? _from = from;

    /// <summary>True if a difference was told before; it is then counted with that one.</summary>
    public bool Explains(int?[] difference, bool claim)
    {
        for (var causes = this; causes is not null; causes = causes._from)
        {
            foreach (var (told, followers) in causes._told)
            {
                if (!Same(told, difference)) continue;
                if (claim) followers.Claims++;
                return true;
            }
        }

        return false;
    }

    /// <summary>True if in one size a row is off by what a claim above was already off.</summary>
    public bool Explains(int size, int difference)
    {
        for (var causes = this; causes is not null; causes = causes._from)
        {
            if (causes._told.Exists(t => t.Difference[size] is { } told && Math.Abs(told) == Math.Abs(difference))) return true;
        }

        return false;
    }

    /// <summary>Remembers a difference that is told now.</summary>
    public Followers Tell(int?[] difference)
    {
        var followers = new Followers();
        _told.Add((difference, followers));
        return followers;
    }

    /// <summary>The causes for a piece that begins from this one: the same, and its own.</summary>
    public CountCauses Further() => new(_told.Count == 0 ? _from : this);

    private static bool Same(int?[] a, int?[] b)
    {
        var compared = false;
        for (var i = 0; i < a.Length; i++)
        {
            if (a[i] is not { } x || b[i] is not { } y) continue;
            if (x != y) return false;
            compared = true;
        }

        return compared;
    }

    /// <summary>Claims kept quiet because of one that was told.</summary>
    public sealed class Followers
    {
        public int Claims { get; set; }
    }
}
