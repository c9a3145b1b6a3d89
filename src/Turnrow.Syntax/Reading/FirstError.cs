using Antlr4.Runtime;
using Antlr4.Runtime.Misc;

namespace Turnrow.Syntax.Reading;

/// <summary>
/// Stops the parser at the first token that does not fit. Nothing is put in or left out to go on: what stands behind
/// the first wrong word of a line is guesswork, and the next line is read on its own anyway.
/// </summary>
internal sealed class FirstError : IAntlrErrorStrategy
{
    private int _lastState = -1;
    private ParserRuleContext? _lastContext;
    private bool _found;

    /// <summary>What could have stood where the wrong token stands.</summary>
    public IntervalSet Expected { get; private set; } = new();

    public void Reset(Parser recognizer)
    {
        _lastState = -1;
        _lastContext = null;
        _found = false;
    }

    // Called for each token that fits, before it is taken: from here the next expected ones follow.
    public void ReportMatch(Parser recognizer)
    {
        _lastState = recognizer.State;
        _lastContext = recognizer.Context;
    }

    public IToken RecoverInline(Parser recognizer)
    {
        Note(recognizer);
        throw new ParseCanceledException();
    }

    public void Recover(Parser recognizer, RecognitionException e)
    {
        Note(recognizer);
        throw new ParseCanceledException();
    }

    public void Sync(Parser recognizer)
    {
    }

    public bool InErrorRecoveryMode(Parser recognizer) => _found;

    public void ReportError(Parser recognizer, RecognitionException e) => Note(recognizer);

    private void Note(Parser recognizer)
    {
        if (_found) return;
        _found = true;
        Expected = _lastContext is null
            ? recognizer.GetExpectedTokens()
            : recognizer.Atn.GetExpectedTokens(recognizer.Atn.states[_lastState].Transition(0).target.stateNumber, _lastContext);
    }
}
