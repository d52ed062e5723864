using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>What each figure of a step was taken from. Made only when somebody asks.</summary>
internal static class StepWhy
{
    /// <summary>Words, what they are, and what they say, in the order operation, times, heats, the rest.</summary>
    public static ImmutableArray<ReadToken> Of(Step step, string lang)
    {
        List<int> ends = [];
        List<(int At, string Id)> verbs = Operations.Verbs(step.Text, lang, ends);
        string? main = Operations.Main(verbs);
        ImmutableArray<ReadToken>.Builder why = ImmutableArray.CreateBuilder<ReadToken>();
        for (int k = 0; k < verbs.Count; k++)
        {
            why.Add(new ReadToken(step.Text[verbs[k].At..ends[k]].TrimmedEnd(" .,;"), "operation", verbs[k].Id == main ? verbs[k].Id + ", the main one" : verbs[k].Id));
        }

        int cursor = 0;
        foreach (StepTime t in step.Times)
        {
            int at = Math.Max(0, step.Text.IndexOf(t.Words, cursor, StringComparison.Ordinal));
            cursor = Math.Min(step.Text.Length, at + t.Words.Length);
            string? op = Operations.Behind(verbs, step.Text, cursor, lang) ?? Operations.Before(verbs, at) ?? main;
            why.Add(new ReadToken(t.Words.TrimmedEnd(" .,;"), "time", $"{Minutes(t)}, {t.Kind.ToString().ToLowerInvariant()}{(op is null ? "; no verb tells what of" : $"; of {op}")}"));
        }

        foreach (StepTemperature t in step.Temperatures)
        {
            string scale = Scales.TakenForFahrenheit(t) && !t.Words.Contains('F', StringComparison.OrdinalIgnoreCase) ? ", taken for °F" : "";
            string fan = t.Fan switch { true => ", fan", false => ", no fan", _ => "" };
            why.Add(new ReadToken(t.Inherited ? "(a step before)" : t.Words, "heat", string.Create(CultureInfo.InvariantCulture, $"{t.Of.ToString().ToLowerInvariant()} {t.Celsius:0.#}{(t.CelsiusMax is { } most ? string.Create(CultureInfo.InvariantCulture, $" to {most:0.#}") : "")} °C{scale}{fan}{(t.Bound == Bound.At ? "" : t.Bound == Bound.AtLeast ? ", at least" : ", at most")}")));
        }

        foreach (StepStorage s in step.Storage)
        {
            why.Add(new ReadToken(s.Where.Length > 0 ? s.Where : "(no place said)", "keeps", s.Days is { } days ? string.Create(CultureInfo.InvariantCulture, $"{days:0.#} days, no wait") : "no wait"));
        }

        if (step.Alternative is { } other)
        {
            why.Add(new ReadToken(other, "other way", "in no sum"));
        }

        if (step.Until is { } until)
        {
            why.Add(new ReadToken(until, "until", "the sign that ends it"));
        }

        return why.ToImmutable();
    }

    private static string Minutes(StepTime t)
    {
        string Say(double? m) => m is { } x ? x.ToString("0.##", CultureInfo.InvariantCulture) : "";
        string span = (t.MinutesMin, t.MinutesMax) switch
        {
            (null, null) => "no figure",
            (null, _) => $"at most {Say(t.MinutesMax)} min",
            (_, null) => $"at least {Say(t.MinutesMin)} min",
            _ when t.MinutesMin == t.MinutesMax => $"{Say(t.MinutesMin)} min",
            _ => $"{Say(t.MinutesMin)} to {Say(t.MinutesMax)} min",
        };
        return t.Repeats > 1 ? string.Create(CultureInfo.InvariantCulture, $"{t.Repeats} times {span}") : span;
    }
}
