namespace Turnrow.Publishing.Trade;

/// <summary>Names of the published yarn weights, 0 to 7.</summary>
internal static class YarnWeights
{
    private static readonly string[] Weights = ["lace", "super fine", "fine", "light", "medium", "bulky", "super bulky", "jumbo"];

    /// <summary>The weight's name; null if there is no such weight.</summary>
    public static string? NameOf(int weight) => weight >= 0 && weight < Weights.Length ? Weights[weight] : null;
}
