using System.CommandLine;
using System.Text;
using Coulisse.Cards;
using Coulisse.Flows;
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

            // a probe's file that the sheet names lies beside it
            string folder = Path.GetDirectoryName(Path.GetFullPath(file)) ?? ".";
            trials.Add(CoreCurves.Fitted(trial, name => Input.Quiet(Path.Combine(folder, Path.GetFileName(name))) is { } probe ? CoreCurves.Read(probe) : null));
        }

        return trials;
    }

    /// <summary>The option of every command that may learn from sheets.</summary>
    public static Option<string[]> Option() => new("--trials") { Description = "Filled trial sheets: steps tried three times or more take the minutes they really took; three good runs with the same yield also teach what parts weigh, how fast they boil down and how fast heat goes in", AllowMultipleArgumentsPerToken = true };

    /// <summary>The occasion with what its cards' trials tell; null, with the problems printed, when a sheet cannot be read.</summary>
    public static Occasion? Learnt(Occasion occasion, string[] files)
        => Read(files, out _) is { } trials
            ? occasion with
            {
                Learnt = [.. Dishes(occasion).SelectMany(d => TrialLearning.Times(d, Of(d, trials)))],
                LearntCards = [.. Dishes(occasion).Select(d => TrialLearning.Card(d, Of(d, trials))).OfType<LearntCard>()],
            }
            : null;

    /// <summary>A dish with what its trials tell laid over; as it is when they tell nothing.</summary>
    public static Dish Onto(Dish dish, List<Trial> trials) => TrialLearning.Card(dish, Of(dish, trials)) is { } learnt ? LearntCard.Onto(dish, [learnt]) : dish;

    private static IEnumerable<Dish> Dishes(Occasion occasion) => occasion.Dishes.Select(d => d.Dish).DistinctBy(d => d.Title, StringComparer.OrdinalIgnoreCase);

    private static List<Trial> Of(Dish dish, List<Trial> trials) => [.. trials.Where(t => t.Card.Equals(dish.Title, StringComparison.OrdinalIgnoreCase))];
}
