System.Console.WriteLine("Hello, world");
