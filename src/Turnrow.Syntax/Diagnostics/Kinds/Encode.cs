using System.Text;

namespace Turnrow.Syntax.Diagnostics.Kinds;

/// <summary>Makes files of examples that can't be printed.</summary>
internal static class Encode
{
    public static byte[] Utf8(string text) => Encoding.UTF8.GetBytes(text);
}
