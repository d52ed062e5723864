using System.CommandLine;
using System.Globalization;
using System.Text;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Plating;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse line CARD: the plating line, who lays what, where it is narrow, how long, in which waves.</summary>
internal static class LineCommand
{
    public static Command Create()
    {
        Argument<string> card = new("CARD") { Description = "A card that states one plate; - for standard input" };
        Option<int> plates = new("--plates") { Description = "Plates to lay", Required = true };
        Option<int> people = new("--people") { Description = "People on the line", DefaultValueFactory = _ => 3 };
        Option<int> together = new("--together") { Description = "Most people at one station", DefaultValueFactory = _ => 2 };
        Option<string[]> seconds = new("--seconds") { Description = "The house's own seconds, \"PART=30\"; may be given again" };
        Option<int?> tray = new("--tray") { Description = "Plates a tray holds; gives the waves" };
        Option<double> out_ = new("--out") { Description = "Longest time of a wave out of the fridge, minutes", DefaultValueFactory = _ => PlatingTimes.WaveMinutes };
        Option<bool> json = new("--json") { Description = "One JSON document on standard output" };
        Command command = new("line", "The fastest plating line: stations, narrow place, minutes, waves.\nExample: coulisse line examples/demo/cards/starter.md --plates 52 --people 3 --tray 6") { card, plates, people, together, seconds, tray, out_, json };
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(plates) < 1 || parsed.GetValue(people) is < 1 or > 40 || parsed.GetValue(together) < 1 || parsed.GetValue(tray) is < 1 || !(parsed.GetValue(out_) > 0))
            {
                return Input.Fail(Exit.Usage, "--plates, --people (at most 40), --together and --tray are whole numbers from 1; --out is minutes above 0.");
            }

            Dictionary<string, double> own = new(StringComparer.OrdinalIgnoreCase);
            foreach (string text in parsed.GetValue(seconds) ?? [])
            {
                int eq = text.LastIndexOf('=');
                if (eq < 1 || !double.TryParse(text[(eq + 1)..], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double s) || s <= 0)
                {
                    return Input.Fail(Exit.Usage, $"--seconds \"{text}\": write \"PART=SECONDS\", such as \"C2=30\".");
                }

                own[text[..eq].Trim()] = s;
            }

            return WeighCommand.Read(parsed.GetRequiredValue(card), null, weighed => Give(weighed, own, parsed.GetValue(plates), parsed.GetValue(people), parsed.GetValue(together), parsed.GetValue(tray), parsed.GetValue(out_), parsed.GetValue(json)));
        });
        return command;
    }

    private static int Give(WeighedDish weighed, Dictionary<string, double> own, int plates, int people, int together, int? tray, double minutes, bool json)
    {
        var tasks = PlatingTimes.Of(weighed.Dish, own);
        if (tasks.IsEmpty || tasks.Length > 12)
        {
            return Input.Fail(Exit.Problems, tasks.IsEmpty ? "the card states no plate; write \"One plate: 1 bar (22 g), 14 g purée …\"." : "the plate has more than 12 parts; lay some together.");
        }

        PlatingLine line = PlatingLine.Best(tasks, people, plates, together);
        var waves = tray is { } t ? line.Waves(t, minutes) : [];
        if (json)
        {
            return Input.Json(new
            {
                schema = "coulisse/line/1", title = weighed.Dish.Title, plates, people, secondsAPlate = Math.Round(line.Pace, 2), leastSecondsAPlate = Math.Round(line.LeastPace, 2), minutes = Math.Round(line.Minutes, 2), personMinutes = Math.Round(line.PersonMinutes, 2),
                stations = line.Stations.Select(s => new { parts = s.Tasks.Select(p => new { name = p.Name, seconds = Math.Round(p.Seconds, 2) }), people = s.People, secondsAPlate = Math.Round(s.Pace, 2), narrow = s == line.Narrow }), waves,
            });
        }

        Console.OutputEncoding = new UTF8Encoding(false);
        foreach (Station s in line.Stations)
        {
            Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{s.People} × {string.Join(", ", s.Tasks.Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.Name} {p.Seconds:0.#} s")))}: {s.Pace:0.#} s a plate{(s == line.Narrow ? "  NARROW PLACE" : "")}"));
        }

        Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{plates} plates in {line.Minutes:0.0} min, nothing fetched or wiped; no split of this work is under {line.LeastPace:0.#} s a plate"));
        if (tray is not null)
        {
            Console.Out.WriteLine(waves.IsEmpty ? "Not even one tray is done in that time." : $"Waves: {string.Join(", ", waves)}");
        }

        return Exit.Done;
    }
}
