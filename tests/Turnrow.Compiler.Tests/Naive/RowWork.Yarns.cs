namespace Turnrow.Compiler.Tests.Naive;

public sealed partial class RowWork
{
    private readonly List<(string Yarn, int From)> _yarns = [];

    /// <summary>The yarn of each place made, where the row begins with one.</summary>
    public List<string> YarnsFrom(string begun)
    {
        var all = new List<string>();
        for (var place = 0; place < _made.Count; place++)
            all.Add(_yarns.Where(taken => taken.From <= place).Select(taken => taken.Yarn).LastOrDefault() ?? begun);
        return all;
    }

    /// <summary>The yarn in the hand when the row is done.</summary>
    public string YarnAfter(string begun) => _yarns.Count > 0 ? _yarns[^1].Yarn : begun;
}
