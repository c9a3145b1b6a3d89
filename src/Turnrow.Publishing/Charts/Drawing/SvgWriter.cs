using System.Text;

namespace Turnrow.Publishing.Charts.Drawing;

/// <summary>All that becomes SVG goes through here, and is escaped here; nothing else puts markup together.</summary>
internal sealed class SvgWriter
{
    private readonly StringBuilder _text = new();
    private readonly Stack<string> _open = [];
    private bool _inTag;

    /// <summary>A comment. Two hyphens side by side would end it, so they are set apart.</summary>
    public SvgWriter Comment(string text)
    {
        EndTag();
        _text.Append("<!-- ");
        var last = ' ';
        foreach (var c in text)
        {
            if (c == '-' && last == '-') _text.Append(' ');
            Append(c);
            last = c;
        }

        _text.Append(" -->\n");
        return this;
    }

    /// <summary>Opens an element; attributes may follow.</summary>
    public SvgWriter Open(string name)
    {
        EndTag();
        _text.Append('<').Append(name);
        _open.Push(name);
        _inTag = true;
        return this;
    }

    /// <summary>An attribute of the element just opened.</summary>
    public SvgWriter With(string name, string value)
    {
        _text.Append(' ').Append(name).Append("=\"");
        AppendAll(value);
        _text.Append('"');
        return this;
    }

    /// <summary>An attribute that is a number.</summary>
    public SvgWriter With(string name, double value) => With(name, Decimals.Of(value));

    /// <summary>Text inside the element that is open.</summary>
    public SvgWriter Text(string text)
    {
        if (_inTag) _text.Append('>');
        _inTag = false;
        AppendAll(text);
        return this;
    }

    /// <summary>Closes the element that is open.</summary>
    public SvgWriter Close()
    {
        var name = _open.Pop();
        if (_inTag) _text.Append("/>\n");
        else _text.Append("</").Append(name).Append(">\n");
        _inTag = false;
        return this;
    }

    /// <summary>An element that holds text and nothing else.</summary>

    /// <summary>What another writer wrote, inside the element that is open.</summary>
    public SvgWriter Insert(SvgWriter written)
    {
        EndTag();
        _text.Append(written._text);
        return this;
    }

    /// <inheritdoc/>
    public override string ToString() => _text.ToString();

    private void EndTag()
    {
        if (_inTag) _text.Append(">\n");
        _inTag = false;
    }

    private void AppendAll(string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (char.IsHighSurrogate(text[i]) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]))
            {
                _text.Append(text, i, 2);
                i++;
            }
            else
            {
                Append(text[i]);
            }
        }
    }

    private void Append(char c)
    {
        switch (c)
        {
            case '&': _text.Append("&amp;"); break;
            case '<': _text.Append("&lt;"); break;
            case '>': _text.Append("&gt;"); break;
            case '"': _text.Append("&quot;"); break;
            case '\'': _text.Append("&#39;"); break;
            // What XML has no way to write would make the whole file unreadable.
            case < ' ' when c is not ('\n' or '\t'): break;
            case '\uFFFE' or '\uFFFF' or (>= '\uD800' and <= '\uDFFF'): _text.Append('\uFFFD'); break;
            default: _text.Append(c); break;
        }
    }
}
