using Turnrow.Fabric.Patterns;

namespace Turnrow.Fabric.Bodies;

/// <summary>The published tables of body measurements, by name.</summary>
public static class BodyTables
{
    /// <summary>Their names.</summary>
    public static IReadOnlyList<string> Names { get; } = ["women", "men", "children", "youth", "babies"];

    /// <summary>Whose bodies a table is of.</summary>
    public static Wearer WearerOf(string name) => name.ToUpperInvariant() switch
    {
        "WOMEN" or "MEN" => Wearer.Adult,
        "CHILDREN" or "YOUTH" => Wearer.Child,
        "BABIES" => Wearer.Baby,
        _ => Wearer.Unsaid,
    };

    /// <summary>A table in a unit; null if there is none of that name.</summary>
    public static BodyTable? Find(string name, bool inInches)
    {
        var text = name.ToUpperInvariant() switch
        {
            "WOMEN" => WomenTable.Text,
            "MEN" => MenTable.Text,
            "CHILDREN" or "YOUTH" => ChildrenTable.Text,
            "BABIES" => BabiesTable.Text,
            _ => null,
        };
        return text is null ? null : BodyTableReader.Read([.. text.Split('\n').Select(line => line.TrimEnd('\r').Split(','))], inInches).Table;
    }
}
