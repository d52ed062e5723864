using System.Collections.Immutable;
using System.Text.Json;
using Coulisse.Views.Papers;

namespace Coulisse.Flows;

/// <summary>A sheet as it was last printed into a folder.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Title">Its title.</param>
/// <param name="Content">Hash of what it says.</param>
/// <param name="Version">Version mark it bears.</param>
/// <param name="Printed">Hour it bears.</param>
/// <param name="Lines">What it says, line by line, for the note of what changed.</param>
public sealed record HungSheet(string Id, string Title, string Content, string Version, string Printed, ImmutableArray<string> Lines);

/// <summary>Which sheets hang: a small file beside the printed ones.</summary>
public static class HungSheets
{
    /// <summary>Name of the file.</summary>
    public const string FileName = "papers.json";

    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web) { WriteIndented = true, Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The sheets of a folder; empty when nothing was printed there.</summary>
    /// <exception cref="IOException">The file cannot be read.</exception>
    /// <exception cref="FormatException">The file is there and is no list of sheets.</exception>
    public static ImmutableArray<HungSheet> Read(string folder)
    {
        string file = Path.Combine(folder, FileName);
        if (!File.Exists(file))
        {
            return [];
        }

        try
        {
            ImmutableArray<HungSheet> read = JsonSerializer.Deserialize<ImmutableArray<HungSheet>>(File.ReadAllText(file), Options);
            return read.IsDefault || read.Any(s => s is null || s.Id is null || s.Content is null) ? throw new FormatException($"{file} is no list of printed sheets; delete it and print all again.") : read;
        }
        catch (JsonException e)
        {
            throw new FormatException($"{file} is no list of printed sheets ({e.Message}); delete it and print all again.", e);
        }
    }

    /// <summary>Writes what hangs now: the sheets just printed in place of their older copies.</summary>
    public static void Write(string folder, IEnumerable<HungSheet> before, IEnumerable<Paper> printed, IEnumerable<string> gone)
    {
        HungSheet[] fresh = [.. printed.Select(p => new HungSheet(p.Id, p.Title, p.Content, p.Mark.Version, p.Mark.Printed, PaperLines.Of(p)))];
        HashSet<string> out_ = [.. fresh.Select(f => f.Id), .. gone];
        PrintFiles.Save(folder, FileName, JsonSerializer.SerializeToUtf8Bytes(before.Where(b => !out_.Contains(b.Id)).Concat(fresh).OrderBy(s => s.Id, StringComparer.Ordinal), Options));
    }
}
