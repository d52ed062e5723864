Console.WriteLine("gauge: name a set, for example 'planning'.");
return 2;
