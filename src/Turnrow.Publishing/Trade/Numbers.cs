using System.Globalization;

namespace Turnrow.Publishing.Trade;

/// <summary>Whole numbers as print writes them.</summary>
internal static class Numbers
{
    /// <summary><c>12</c>.</summary>
    public static string Plain(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary><c>1st</c>, <c>2nd</c>, <c>11th</c>.</summary>
    public static string Nth(int number) => Plain(number) + (number % 100 is >= 11 and <= 13 ? "th" : (number % 10) switch
    {
        1 => "st",
        2 => "nd",
        3 => "rd",
        _ => "th",
    });

    /// <summary><c>3-20</c>, or <c>3</c> where both are the same.</summary>
    public static string Range(int first, int last) => first == last ? Plain(first) : $"{Plain(first)}-{Plain(last)}";

    /// <summary><c>once</c>, <c>6 times</c>, <c>6 (7, 8) times</c>.</summary>
    public static string Times(Sized<int> times) => times.All(static n => n == 1) ? "once" : $"{times.Written()} times";

    /// <summary><c>once more</c>, <c>6 (7, 8) more times</c>.</summary>
    public static string MoreTimes(Sized<int> times) => times.All(static n => n == 1) ? "once more" : $"{times.Written()} more times";
}
