namespace Turnrow.Publishing.Page;

/// <summary>Which addresses a link on the page may lead to: http, https, mailto and files beside it, nothing else.</summary>
internal static class LinkSchemes
{
    private static readonly string[] Allowed = ["http", "https", "mailto"];

    /// <summary>True if a link may lead there.</summary>
    public static bool Allow(string address)
    {
        // Browsers pass over spaces and control characters in and before a scheme; so does this.
        var seen = new string([.. address.Where(static c => c > ' ' && c != '\u007F')]);
        var end = seen.IndexOfAny([':', '/', '?', '#', '\\']);
        if (end < 0 || seen[end] is '?' or '#') return true;
        if (seen[end] == ':') return Allowed.Contains(seen[..end], StringComparer.OrdinalIgnoreCase);
        // Two slashes at the beginning name another machine, under whatever scheme the page has.
        return !(end == 0 && seen.Length > 1 && seen[1] is '/' or '\\') && seen[end] == '/';
    }
}
