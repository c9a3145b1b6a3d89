using Turnrow.Fabric.Patterns;

namespace Turnrow.Cli.Verbs;

/// <summary>Finds the size and the piece that were asked for by name.</summary>
internal static class Choice
{
    /// <summary>Index of a size; null if none was asked for.</summary>
    /// <param name="pattern">The pattern.</param>
    /// <param name="name">What was typed; null for nothing.</param>
    /// <param name="size">The index.</param>
    /// <param name="fault">If false is returned: what is wrong, to stand after the file's name.</param>
    public static bool TrySize(Pattern pattern, string? name, out int? size, out string fault)
    {
        (size, fault) = (null, string.Empty);
        if (name is null) return true;
        size = IndexOf(pattern.Sizes, name);
        if (size is not null) return true;
        fault = pattern.Sizes.Any(known => known.Length > 0)
            ? $"has no size `{name}`{DidYouMean.Choice(name, pattern.Sizes)}"
            : $"has no size `{name}`, since it has no sizes";
        return false;
    }

    /// <summary>The piece asked for, or all of them.</summary>
    /// <param name="pattern">The pattern.</param>
    /// <param name="name">What was typed; null for nothing.</param>
    /// <param name="pieces">The pieces.</param>
    /// <param name="fault">If false is returned: what is wrong, to stand after the file's name.</param>
    public static bool TryPieces(Pattern pattern, string? name, out IReadOnlyList<PieceInSizes> pieces, out string fault)
    {
        (pieces, fault) = ([.. pattern.Pieces], string.Empty);
        if (name is null) return true;
        List<string> names = [.. pieces.Select(piece => piece.Name)];
        if (IndexOf(names, name) is { } index)
        {
            pieces = [pieces[index]];
            return true;
        }

        fault = names.Count > 0 ? $"has no piece `{name}`{DidYouMean.Choice(name, names)}" : $"has no piece `{name}`, since it has no pieces";
        return false;
    }

    // To the letter first: a pattern may have sizes s and S.
    private static int? IndexOf(IReadOnlyList<string> names, string name)
    {
        foreach (var comparison in new[] { StringComparison.Ordinal, StringComparison.OrdinalIgnoreCase })
        {
            for (var i = 0; i < names.Count; i++)
            {
                if (name.Length > 0 && string.Equals(names[i], name, comparison)) return i;
            }
        }

        return null;
    }
}
