namespace Turnrow.Fabric.Words;

/// <summary>Rows that go to the turn of the row below have to know more than what is below: how much of it waits.</summary>
internal static class Turns
{
    /// <summary>True if a row's words speak of the turn below.</summary>
    public static bool AreSaid(IReadOnlyList<Word> words)
    {
        for (var i = 0; i < words.Count; i++)
        {
            var said = words[i] switch
            {
                Work work => work.Amount.Reach == Reach.ToTurn,
                Spread spread => spread.Over.Reach == Reach.ToTurn,
                Repeat repeat => repeat.Amount.Reach == Reach.ToTurn || AreSaid(repeat.Words),
                _ => false,
            };
            if (said) return true;
        }

        return false;
    }
}
