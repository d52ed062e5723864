using System.Globalization;
using System.Text.RegularExpressions;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Planning;
using Coulisse.Views.Web;

namespace Coulisse.Views.Papers;

/// <summary>The grams a step of the card names, for the batch in hand: "press 485 g into the tin" is of one tin, and two are made.</summary>
internal static partial class StepGrams
{
    /// <summary>Share of a part from which a figure is of the whole: less may be a piece ("a line of 1.8 g") and is not multiplied.</summary>
    private const double Bulk = 0.05;

    private const double Same = 0.005;   // a factor this near to 1 changes no figure a scale shows

    /// <summary>"485 g × 2 = 970 g; 273 g × 2 = 546 g", or nothing when the batch is the card's or the step names no such grams.</summary>
    public static string Of(Step step, BatchComponent part, CultureInfo culture)
    {
        if (Math.Abs(part.Factor - 1) < Same)
        {
            return "";
        }

        double whole = part.Weighed.Grams;
        string[] figures = [.. Grams().Matches(step.Text).Where(m => !m.Groups["each"].Success && !m.Groups["range"].Success)
            .Select(m => double.Parse(m.Groups["g"].Value, NumberStyles.Float | NumberStyles.AllowThousands, CultureInfo.InvariantCulture)).Where(g => g >= Bulk * whole).Distinct()
            .Select(g => $"{Figures.Grams(g, culture)} {CardPaper.Factor(part.Factor, culture)} = {Figures.Grams(g * part.Factor, culture)}")];
        return string.Join("; ", figures);
    }

    /// <summary>The line under a piece of work.</summary>
    public static string Line(PaperBundle bundle, PlannedTask task, BriefPhrases say)
    {
        if (task.Line <= 0 || task.Kind is not (TaskKind.Work or TaskKind.Unattended) || task.Text.StartsWith("fill it", StringComparison.Ordinal))
        {
            return "";
        }

        (BatchComponent Part, Step Step) found = bundle.Batches.Where(b => task.Dish is null || task.Dish == bundle.NameOf(b) || task.Dish == b.Weighed.Dish.Title)
            .SelectMany(b => b.Components).SelectMany(c => c.Steps.Select(s => (c, s.Step))).FirstOrDefault(x => x.Step.Span.Line == task.Line && (task.Component is null || x.c.Weighed.Component.Name == task.Component));
        if (found.Part is null)
        {
            return "";
        }

        // The stage's batch has a weigh-out of its own; the card's figures are not of it.
        return task.ForStage ? Grams().IsMatch(found.Step.Text) && bundle.ForStage.Any(t => t.Need.OwnBatch) ? say["stageGrams"] : ""
            : Of(found.Step, found.Part, bundle.Culture) is { Length: > 0 } grams ? $"{say.Say("madeTimes", found.Part.Factor.ToString("0.####", say.Culture))} {grams}." : "";
    }

    [GeneratedRegex(@"(?<![\d.,])(?<range>\d+ (to|–) )?(?<g>\d[\d,]*(\.\d+)?) g\b(?<each> (each|a (tin|tray|plate|piece|bag)))?", RegexOptions.ExplicitCapture)]
    private static partial Regex Grams();
}
