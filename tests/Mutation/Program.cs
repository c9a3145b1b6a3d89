using System.Globalization;
using Turnrow.Mutation;

switch (args)
{
    case ["survey", var mutants]:
        Worker.Survey(int.Parse(mutants, CultureInfo.InvariantCulture));
        return 0;
    case ["try", var how]:
        Worker.Try(fresh: how == "fresh");
        return 0;
    case [var folder]:
        return MutationRun.In(folder, again: false);
    case [var folder, "--again"]:
        return MutationRun.In(folder, again: true);
    default:
        Console.Error.WriteLine("usage: dotnet run --project tests/Mutation -c Release -- FOLDER [--again]");
        return 64;
}
