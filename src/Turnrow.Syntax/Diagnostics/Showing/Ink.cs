using System.Text;

namespace Turnrow.Syntax.Diagnostics.Showing;

/// <summary>Writes text with colours, or without.</summary>
internal sealed class Ink(bool colour)
{
    public const string Bold = "\u001b[1m";
    public const string Red = "\u001b[1;31m";
    public const string Yellow = "\u001b[1;33m";
    public const string Blue = "\u001b[34m";
    public const string Cyan = "\u001b[36m";
    private const string Off = "\u001b[0m";

    private readonly StringBuilder _text = new();

    public Ink Write(string text)
    {
        _text.Append(text);
        return this;
    }

    public Ink Write(string text, string ink)
    {
        if (colour && text.Length > 0) _text.Append(ink).Append(text).Append(Off);
        else _text.Append(text);
        return this;
    }

    public Ink EndLine()
    {
        _text.Append('\n');
        return this;
    }

    public override string ToString() => _text.ToString();
}
