using Turnrow.Syntax.Diagnostics.Kinds;

namespace Turnrow.Syntax.Diagnostics;

/// <summary>All diagnostics of reading.</summary>
public static class SyntaxDiagnostics
{
    /// <summary>In the order of their codes.</summary>
    public static IReadOnlyList<DiagnosticKind> All { get; } =
    [
        UnknownStatement.Kind,
        UnexpectedWord.Kind,
        LineUnfinished.Kind,
        BracketPair.Kind,
        BracketDepth.Kind,
        QuoteOpen.Kind,
        NumberComma.Kind,
        OperatorSpace.Kind,
        FractionSlip.Kind,
        WordAsName.Kind,
        StitchNumber.Kind,
        RepeatTimes.Kind,
        NumberLarge.Kind,
        StrangeCharacter.Kind,
        LineLong.Kind,
        FileLarge.Kind,
        WrongBytes.Kind,
        SizeWord.Kind,
        PictureOpen.Kind,
    ];
}
