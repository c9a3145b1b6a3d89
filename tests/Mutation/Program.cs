using System.Globalization;
using Turnrow.Mutation;

switch (args)
{
    case ["survey", var mutants]:
        Worker.Survey(int.Parse(mutants, CultureInfo.InvariantCulture));
        return 0;
    case ["try"]:
        Worker.Try();
        return 0;
    case ["try", var change]:
        Worker.TryFromStart(int.Parse(change, CultureInfo.InvariantCulture));
        return 0;
    case [var folder, .. var options] when options.All(static option => option is "--again" or "--own"):
        return MutationRun.In(folder, options.Contains("--again"), options.Contains("--own"));
    default:
        Console.Error.WriteLine("usage: dotnet run --project tests/Mutation -c Release -- FOLDER [--again] [--own]");
        return 64;
}
