namespace Turnrow.Fabric.Words;

/// <summary>Rows that go to the turn of the row below have to know more than what is below: how much of it waits.</summary>
internal static class Turns
{
    /// <summary>True if a row's words speak of the turn below.</summary>
    public static bool AreSaid(IReadOnlyList<Word> words) => WordLists.Any(words, static word => word.Reach == Reach.ToTurn);
}
