namespace Turnrow.Publishing.Trade;

/// <summary>A designer's names as print shows them.</summary>
internal static class Names
{
    /// <summary><c>right-front</c> as <c>Right front</c>.</summary>
    public static string Title(string name)
    {
        var words = Words(name);
        return words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];
    }

    /// <summary><c>armhole-depth</c> as <c>armhole depth</c>.</summary>
    public static string Words(string name) => name.Replace('-', ' ');

    /// <summary>What a row is called: <c>row</c>, or <c>round</c>.</summary>
    public static string Row(Fabric.Rows.Row row) => row.IsRound ? "round" : "row";

    /// <summary><c>neck</c> as <c>neck edge</c>.</summary>
    public static string Edge(string name) =>
        name.EndsWith("edge", StringComparison.OrdinalIgnoreCase) ? Words(name) : $"{Words(name)} edge";

    /// <summary>Several of a thing: <c>blocks</c>, <c>crosses</c>, <c>daisies</c>.</summary>
    public static string Plural(string word) => word switch
    {
        // `wing of 3` is numbered behind its name.
        _ when word.IndexOf(" of ", StringComparison.Ordinal) is > 0 and var of => Plural(word[..of]) + word[of..],
        [.., 's' or 'x' or 'z'] or [.., 'c' or 's', 'h'] => word + "es",
        [.., 'l', 'f'] => word[..^1] + "ves",
        [.., not ('a' or 'e' or 'o' or 'u'), 'y'] => word[..^1] + "ies",
        _ => word + "s",
    };

    /// <summary>As a part of a file's name or an identifier: letters, digits and hyphens.</summary>
    public static string Filed(string name)
    {
        var filed = new char[name.Length];
        for (var i = 0; i < filed.Length; i++) filed[i] = char.IsLetterOrDigit(name[i]) ? char.ToLowerInvariant(name[i]) : '-';
        return filed.Length == 0 ? "piece" : new string(filed);
    }
}
