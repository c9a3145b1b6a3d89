namespace Turnrow.Compiler.Claims;

/// <summary>
/// The differences between claims and calculated counts that were already told. A later count that is off by the same in every size has
/// the same cause: it is counted, not told again.
/// </summary>
internal sealed class CountCauses
{
    private readonly List<(int?[] Difference, Followers Followers)> _told = [];

    /// <summary>True if a difference was told before; it is then counted with that one.</summary>
    public bool Explains(int?[] difference, bool claim)
    {
        foreach (var (told, followers) in _told)
        {
            if (!Same(told, difference)) continue;
            if (claim) followers.Claims++;
            return true;
        }

        return false;
    }

    /// <summary>True if in one size a row is off by what a claim above was already off.</summary>
    public bool Explains(int size, int difference) =>
        _told.Exists(t => t.Difference[size] is { } told && Math.Abs(told) == Math.Abs(difference));

    /// <summary>Remembers a difference that is told now.</summary>
    public Followers Tell(int?[] difference)
    {
        var followers = new Followers();
        _told.Add((difference, followers));
        return followers;
    }

    /// <summary>The same causes for a piece that begins from this one.</summary>
    public CountCauses Copy()
    {
        var copy = new CountCauses();
        copy._told.AddRange(_told);
        return copy;
    }

    private static bool Same(int?[] a, int?[] b)
    {
        for (var i = 0; i < a.Length; i++)
        {
            if (a[i] is { } x && b[i] is { } y && x != y) return false;
        }

        return true;
    }

    /// <summary>Claims kept quiet because of one that was told.</summary>
    public sealed class Followers
    {
        public int Claims { get; set; }
    }
}
