using System.Text;
using Coulisse.Cards;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Trials;

namespace Coulisse.Cli;

/// <summary>Filled trial sheets from files.</summary>
internal static class TrialFiles
{
    /// <summary>The trials; null, with the exit code, when one cannot be read.</summary>
    public static List<Trial>? Read(IEnumerable<string> files, out int exit)
    {
        exit = Exit.Done;
        List<Trial> trials = [];
        foreach (string file in files)
        {
            if (Input.Bytes(file, out exit) is not { } bytes)
            {
                return null;
            }

            if (TrialSheet.Read(Encoding.UTF8.GetString(bytes)) is not Parsed<Trial>.Ok(var trial))
            {
                exit = Input.Fail(file, ((Parsed<Trial>.Failed)TrialSheet.Read(Encoding.UTF8.GetString(bytes))).Problems);
                return null;
            }

            trials.Add(trial);
        }

        return trials;
    }

    /// <summary>The occasion with what its cards' trials tell; null, with the problems printed, when a sheet cannot be read.</summary>
    public static Occasion? Learnt(Occasion occasion, string[] files)
        => Read(files, out _) is { } trials
            ? occasion with { Learnt = [.. occasion.Dishes.SelectMany(d => TrialSummary.Learn(d.Dish, [.. trials.Where(t => t.Card.Equals(d.Dish.Title, StringComparison.OrdinalIgnoreCase))]))] }
            : null;
}
