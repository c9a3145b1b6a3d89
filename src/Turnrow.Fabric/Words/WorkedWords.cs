namespace Turnrow.Fabric.Words;

/// <summary>What can be asked of words once their row is worked, when each knows how often it was.</summary>
public static class WorkedWords
{
    /// <summary>True of a word that was worked no times: `until 8 remain` over 8 places does nothing, as a skip of none does.</summary>
    public static bool IsIdle(Word word) => word is Work { Amount.Times: 0 } or Group { Times: 0 } or Repeat { Amount.Times: 0 } or Skip { Count: 0 };

    /// <summary>True of a word that does nothing whatever its row is: only a number that was given is known before.</summary>
    public static bool IsIdleUnworked(Word word) =>
        word is Work { Amount: { Reach: Reach.Fixed, Times: 0 } } or Repeat { Amount: { Reach: Reach.Fixed, Times: 0 } } or Skip { Count: 0 };
}
