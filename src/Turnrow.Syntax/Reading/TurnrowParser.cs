using Antlr4.Runtime.Atn;

namespace Turnrow.Syntax.Generated;

/// <summary>The parser gets its tables where they are asked for first, which is at the first broken line.</summary>
internal partial class TurnrowParser
{
    /// <inheritdoc/>
    public override ATN Atn => _ATN;
}
