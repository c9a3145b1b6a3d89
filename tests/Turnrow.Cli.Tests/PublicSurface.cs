using System.Reflection;

namespace Turnrow.Cli.Tests;

/// <summary>What an assembly shows to the projects that use it.</summary>
internal static class PublicSurface
{
    private const BindingFlags Declared =
        BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    /// <summary>The public and protected members of an assembly's public types that mention a type of a namespace.</summary>
    public static IEnumerable<string> Mentions(string assembly, string space) =>
        from type in Assembly.Load(assembly).GetExportedTypes()
        from shown in Shown(type)
        where Parts(shown.Type).Any(part => IsIn(part, space))
        select $"{type.FullName}: {shown.Where} is {shown.Type}";

    private static bool IsIn(Type type, string space) =>
        type.Namespace == space || type.Namespace?.StartsWith(space + ".", StringComparison.Ordinal) == true;

    private static IEnumerable<(string Where, Type Type)> Shown(Type type)
    {
        if (type.BaseType is { } parent)
            yield return ("base", parent);
        foreach (var contract in type.GetInterfaces())
            yield return ("interface", contract);
        foreach (var argument in type.GetGenericArguments().SelectMany(argument => argument.GetGenericParameterConstraints()))
            yield return ("constraint", argument);
        foreach (var field in type.GetFields(Declared).Where(field => field.IsPublic || field.IsFamily || field.IsFamilyOrAssembly))
            yield return (field.Name, field.FieldType);
        var methods = type.GetMethods(Declared).Cast<MethodBase>().Concat(type.GetConstructors(Declared));
        foreach (var method in methods.Where(method => method.IsPublic || method.IsFamily || method.IsFamilyOrAssembly))
        {
            if (method is MethodInfo { ReturnType: var result })
                yield return (method.Name, result);
            foreach (var parameter in method.GetParameters())
                yield return (method.Name, parameter.ParameterType);
        }
    }

    /// <summary>The type itself, what it is an array of or a reference to, and its type arguments, all the way down.</summary>
    private static IEnumerable<Type> Parts(Type type)
    {
        var open = new Stack<Type>([type]);
        while (open.TryPop(out var next))
        {
            yield return next;
            if (next.GetElementType() is { } element)
                open.Push(element);
            if (next.IsGenericType)
                foreach (var argument in next.GetGenericArguments())
                    open.Push(argument);
        }
    }
}
