using Turnrow.Cli;

using var terminal = Terminal.OfProcess();
return CommandLine.Run(args, terminal);
