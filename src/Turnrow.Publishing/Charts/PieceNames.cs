namespace Turnrow.Publishing.Charts;

/// <summary>How a piece's name is filed.</summary>
internal static class PieceNames
{
    /// <summary>As a part of a file's name or an identifier: letters, digits and hyphens.</summary>
    public static string Filed(string name)
    {
        var filed = new char[name.Length];
        for (var i = 0; i < filed.Length; i++) filed[i] = char.IsLetterOrDigit(name[i]) ? char.ToLowerInvariant(name[i]) : '-';
        return filed.Length == 0 ? "piece" : new string(filed);
    }
}
