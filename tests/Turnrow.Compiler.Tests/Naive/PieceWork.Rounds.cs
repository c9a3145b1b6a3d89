namespace Turnrow.Compiler.Tests.Naive;

/// <content>
/// Rounds: joined where they began, so that the next one goes on from there on the same side. What comes after rounds goes on too, unless a
/// row is said to go back; what comes before does not matter to a first round, which is worked from the outside of the tube.
/// </content>
public sealed partial class PieceWork
{
    /// <summary>A row or round that says by its name what it is.</summary>
    private void SetOut(bool round, Side? said)
    {
        if (round && !_afterRound && _goesOn)
            _side = Side.RS;
        if (!round && _afterRound && said is { } side)
            _side = side;
        _inRounds = round;
    }

    /// <summary>What has no name of its own goes on as the last row went, and says so.</summary>
    private void GoOnAs(Statement statement)
    {
        if (statement.IsRound != _afterRound)
            throw new UnworkableException("rows are said where the last was a round, or the other way round");
    }

    private void CheckNoStepAtRound()
    {
        if (_addLater is not null || _asked.Sum() + _waiting.Sum(pile => pile.Count) > 0
            || result.Edge(Hand.Right).Concat(result.Edge(Hand.Left)).Any(stretch => stretch.Row == NextRow))
            throw new UnworkableException("a round has no edge to leave or add anything at");
    }
}
