using Turnrow.Syntax.Text;

namespace Turnrow.Tests;

/// <summary>A change of a text.</summary>
/// <param name="Span">What is replaced.</param>
/// <param name="NewText">By what.</param>
/// <param name="Text">The text with the change made.</param>
internal sealed record Edit(TextSpan Span, string NewText, string Text)
{
    public int Shift => NewText.Length - Span.Length;

    public static Edit Of(string text, TextSpan span, string newText) =>
        new(span, newText, string.Concat(text.AsSpan(0, span.Start), newText, text.AsSpan(span.End)));

    /// <summary>True if the change lies in a stretch or at its very beginning or end.</summary>
    public bool Touches(TextSpan stretch) => Span.Start <= stretch.End && Span.End >= stretch.Start;
}
