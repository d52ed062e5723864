using System.Globalization;
using System.Text.RegularExpressions;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;

namespace Coulisse.Kitchen.Planning.Slot;

/// <summary>At which stage of its card a twin must stand, and how much of it.</summary>
/// <param name="Line">Card line of the last step done; 0 when it is only weighed.</param>
/// <param name="State">In words.</param>
/// <param name="Replaces">What the audience does not wait for.</param>
/// <param name="Done">The last step done; null when only weighed.</param>
internal sealed partial record TwinStage(int Line, string State, string Replaces, Step? Done)
{
    /// <summary>Nothing of the card is left to do to it.</summary>
    public bool Finished => State == "finished";

    public static TwinStage Of(ShowItem item, Step? shownBefore)
    {
        Step[] steps = item.Sequence;
        bool finished = item.Show.How == ShowKind.Tell || item.Step is null || (item.Show.How == ShowKind.Finish && (item.Step == shownBefore || item.Step.Times.Length > 0));
        int next = finished ? steps.Length : Array.IndexOf(steps, item.Step);
        int from = shownBefore is null ? 0 : Array.IndexOf(steps, shownBefore) + 1;
        Step[] skipped = next > from ? steps[from..next] : [];

        // The longest wait in between is what the twin is for; what lies after it is done too.
        Step? longest = skipped.MaxBy(Wait);
        Step? done = finished ? steps.LastOrDefault() : longest is null ? null : Wait(longest) >= 10 ? longest : skipped[^1];
        double minutes = skipped.Sum(s => Math.Max(Wait(s), s.HandsMinutes ?? 0));
        string replaces = minutes <= 0 ? "weighing out" : Words(minutes) + (longest is not null && Wait(longest) >= 10 ? ", most of it “" + Clause(longest.Text) + "”" : " of work");
        string state = finished ? "finished"
            : done is null ? "weighed and ready for “" + Clause(item.Step!.Text) + "”"
            : "after “" + Clause(done.Text) + "”";
        return new TwinStage(done?.Span.Line ?? 0, state, replaces, done);
    }

    /// <summary>Grams of the twin: what the card itself sets aside or portions out, else a plate's share; null when nothing tells.</summary>
    public static (double? Grams, double Count, string Why) Amount(ShowItem item, double perPlate, double piecesPerPlate, int live, double componentGrams)
    {
        IEnumerable<string> texts = item.Component is null ? [] : item.Component.Steps.Select(s => s.Text).Concat(item.Component.Notes.Select(n => n.Text)).Concat(item.Component.Makes.Select(m => m.Text));
        if (item.Show.How is ShowKind.Begin or ShowKind.Full)
        {
            foreach (string text in texts)
            {
                Match kept = Kept().Match(text);
                if (kept.Success)
                {
                    return (Number(kept), 1, "set aside by the card");
                }
            }

            foreach (string text in texts)
            {
                Match each = Each().Match(text);
                if (each.Success)
                {
                    return (Number(each), 1, "one portion as the card fills it");
                }
            }

            if (item.Dish.Dish.Plate.IsEmpty && componentGrams > 0)
            {
                return (componentGrams, 1, "one tin");
            }
        }

        foreach (string sentence in texts.SelectMany(t => t.Split('.')).Where(t => t.Contains("for the stage", StringComparison.OrdinalIgnoreCase)))
        {
            // "one block of 3 × 2 bars uncut for the stage"
            Match block = Block().Match(sentence);
            if (item.Show.How == ShowKind.Finish && block.Success && perPlate > 0)
            {
                double pieces = double.Parse(block.Groups["a"].Value, CultureInfo.InvariantCulture) * double.Parse(block.Groups["b"].Value, CultureInfo.InvariantCulture);
                return (perPlate / Math.Max(1, piecesPerPlate) * pieces, pieces, "left for the stage by the card");
            }
        }

        return perPlate > 0 ? (perPlate * Math.Max(1, live), piecesPerPlate > 0 ? piecesPerPlate * Math.Max(1, live) : 1, "what one plate takes")
            : componentGrams > 0 && item.Show.How is ShowKind.Begin or ShowKind.Full ? (Math.Round(componentGrams / 10, 0), 1, "a tenth of the batch (assumed)")
            : (null, 1, "one piece");
    }

    private static readonly char[] Ends = ['.', ';', ':', ',', '('];

    /// <summary>The sentence up to its first stop, for a label.</summary>
    public static string Clause(string text)
    {
        int end = text.IndexOfAny(['.', ';', ':'], Math.Min(text.Length, 12));
        while (end > 0 && end + 1 < text.Length && text[end] == '.' && char.IsDigit(text[end + 1]))
        {
            end = text.IndexOfAny(['.', ';', ':'], end + 1);
        }

        string clause = end > 0 ? text[..end] : text;
        int comma = clause.Length > 60 ? clause.IndexOf(',', StringComparison.Ordinal) : -1;
        return comma > 12 ? clause[..comma] : clause;
    }

    /// <summary>The sentence that holds some words of the text, up to the stop or comma after them: "Reduce the juices, about 75 min", not "Weigh a pan empty" that stands before it.</summary>
    /// <param name="text">A step as written.</param>
    /// <param name="words">Words of it, such as a time.</param>
    public static string ClauseWith(string text, string words)
    {
        words = words.TrimEnd('.', ',', ' ');
        int at = words.Length > 0 ? text.IndexOf(words, StringComparison.OrdinalIgnoreCase) : -1;
        if (at < 0)
        {
            return Clause(text);
        }

        int start = text.LastIndexOf(". ", at, StringComparison.Ordinal) is >= 0 and var stop ? stop + 2 : 0;
        int end = text.IndexOfAny(Ends, at + words.Length);
        while (end > 0 && end + 1 < text.Length && text[end] is ('.' or ',') && char.IsDigit(text[end + 1]))
        {
            end = text.IndexOfAny(Ends, end + 1);
        }

        return (end > 0 ? text[start..end] : text[start..]).Trim();
    }

    private static double Wait(Step step) => step.Times.Where(t => t.Kind != TimeKind.Limit && t.Kind != TimeKind.Hands).Select(t => t.MinutesMin ?? 0).DefaultIfEmpty(0).Max();

    private static string Words(double minutes) => minutes >= 90
        ? (minutes / 60).ToString("0.#", CultureInfo.InvariantCulture) + " h"
        : Math.Max(1, Math.Round(minutes)).ToString("0", CultureInfo.InvariantCulture) + " min";

    private static double? Number(Match m) => double.TryParse(m.Groups["g"].Value.Replace(",", "", StringComparison.Ordinal), NumberStyles.Float, CultureInfo.InvariantCulture, out double g) ? g : null;

    [GeneratedRegex(@"keep (?<g>\d[\d,.]*) g\b[^.]{0,400}(stage|show)", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex Kept();

    [GeneratedRegex(@"(?<!\d)(?<g>\d[\d,.]{0,14}) g each", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex Each();

    [GeneratedRegex(@"(?<!\d)(?<a>\d+) [×x] (?<b>\d+)", RegexOptions.ExplicitCapture)]
    private static partial Regex Block();
}
