namespace Turnrow.Publishing.Charts;

/// <summary>How a piece's name is said and filed.</summary>
internal static class PieceNames
{
    /// <summary>As a title: <c>right-front</c> becomes <c>Right front</c>.</summary>
    public static string Title(string name)
    {
        var spoken = Spoken(name);
        return spoken.Length == 0 ? spoken : char.ToUpperInvariant(spoken[0]) + spoken[1..];
    }

    /// <summary>Within a sentence: <c>right front</c>.</summary>
    public static string Spoken(string name) => name.Replace('-', ' ');

    /// <summary>As a part of a file's name or an identifier: letters, digits and hyphens.</summary>
    public static string Filed(string name)
    {
        var filed = new char[name.Length];
        for (var i = 0; i < filed.Length; i++) filed[i] = char.IsLetterOrDigit(name[i]) ? char.ToLowerInvariant(name[i]) : '-';
        return filed.Length == 0 ? "piece" : new string(filed);
    }
}
