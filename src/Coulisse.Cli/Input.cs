using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;
using Coulisse.Cards;

namespace Coulisse.Cli;

/// <summary>What every command shares: reading a file or standard input, printing problems, printing JSON.</summary>
internal static class Input
{
    private const int Buffer = 1 << 16;

    private static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        WriteIndented = true,
        DefaultIgnoreCondition = JsonIgnoreCondition.Never,
        Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase), new HonestDigits() },
    };

    /// <summary>Reads a text file ("-" is standard input); prints what is wrong and returns null when it cannot.</summary>
    public static byte[]? Bytes(string path, out int exit)
    {
        exit = Exit.Done;
        try
        {
            if (path == "-")
            {
                using MemoryStream all = new();
                using Stream stdin = Console.OpenStandardInput();
                stdin.CopyTo(all);
                return all.ToArray();
            }

            if (!File.Exists(path))
            {
                exit = Fail(Exit.Storage, Directory.Exists(path)
                    ? $"{path} is a folder; name the file in it."
                    : $"There is no file {path}. Name a card or sheet that exists, or - for standard input.");
                return null;
            }

            return File.ReadAllBytes(path);
        }
        catch (IOException e)
        {
            exit = Fail(Exit.Storage, $"{path} cannot be read: {e.Message}");
            return null;
        }
        catch (UnauthorizedAccessException e)
        {
            exit = Fail(Exit.Storage, $"{path} may not be read: {e.Message}");
            return null;
        }
    }

    /// <summary>A file's bytes; null, with nothing printed, when it is not there or cannot be read.</summary>
    public static byte[]? Quiet(string path)
    {
        try
        {
            return File.Exists(path) ? File.ReadAllBytes(path) : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <summary>Prints one line to standard error and gives the code back.</summary>
    public static int Fail(int code, string message)
    {
        Console.Error.WriteLine("coulisse: " + message);
        return code;
    }

    /// <summary>Prints problems, each with its line and what would be right.</summary>
    public static int Fail(string name, IEnumerable<Problem> problems)
    {
        foreach (Problem p in problems)
        {
            StringBuilder b = new(name);
            if (p.Line > 0)
            {
                b.Append(CultureInfo.InvariantCulture, $", line {p.Line}");
            }

            b.Append(CultureInfo.InvariantCulture, $": {p.Message} {p.Hint} ({p.Code})");
            Console.Error.WriteLine(b.ToString());
        }

        return Exit.Problems;
    }

    /// <summary>Prints one JSON document on standard output.</summary>
    public static int Json(object document)
    {
        // straight to the stream: a string of the whole and a console that writes line by line cost more than reading the card
        using Stream stdout = Console.OpenStandardOutput();
        using BufferedStream buffered = new(stdout, Buffer);
        JsonSerializer.Serialize(buffered, document, document.GetType(), Options);
        buffered.Write(Encoding.UTF8.GetBytes(Environment.NewLine));
        return Exit.Done;
    }

    /// <summary>Prints text on standard output at once.</summary>
    public static void Print(string text)
    {
        using Stream stdout = Console.OpenStandardOutput();
        using StreamWriter writer = new(stdout, new UTF8Encoding(false), Buffer);
        writer.Write(text);
    }
}
