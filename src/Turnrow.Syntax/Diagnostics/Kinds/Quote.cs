namespace Turnrow.Syntax.Diagnostics.Kinds;

/// <summary>Puts the designer's own words into a message.</summary>
internal static class Quote
{
    private const int Longest = 40;

    /// <summary>The words, cut if they are long.</summary>
    public static string Short(string text) => text.Length <= Longest ? text : text[..Longest] + "…";

    /// <summary>"a, b or c".</summary>
    public static string OneOf(IReadOnlyList<string> phrases) => phrases.Count switch
    {
        0 => "nothing",
        1 => phrases[0],
        _ => string.Join(", ", phrases.Take(phrases.Count - 1)) + " or " + phrases[^1],
    };
}
