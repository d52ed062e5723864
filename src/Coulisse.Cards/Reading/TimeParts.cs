using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>What a time is by the heat and the words of its own part of the sentence, whatever verb stood before: "boil the brine, add the hocks, 48 h at 3 °C" boils nothing for two days, "knead 10 min then 24 h at 4 °C" kneads for ten minutes.</summary>
internal static class TimeParts
{
    private const double Cold = 8;
    private const double Hot = 50;
    private const double Short = 20;
    private static readonly string[] Parted = [" then ", "then ", " puis ", " dann ", " luego ", " poi ", " and then ", "してから"];
    private static readonly string[] Rests = ["rest", "riposo", "repos", "reposo", "reposar", "riposare", "ruhe", "ruhezeit", "pause", "pausa", "retard", "autolyse", "autolisi", "autolisis", "stockgare", "stückgare", "lievitazione", "pointage", "apprêt", "levado", "ageing", "frigo", "maturazione"];
    private static readonly Beginnings FirstOfRests = new(Rests);
    private static readonly WordList Stands = new("autolyse", "autolisi", "autolisis", "retard", "retarder");
    private static readonly WordList Heated = new("pasteurise", "pasteurize", "sterilise", "sterilize", "sterilised", "pressure-cook", "pressure cook", "pressure cooker", "process", "pasteuriser", "stériliser", "autocuiseur", "pasteurisieren", "sterilisieren", "einkochen", "einwecken", "regenerieren", "pasteurizar", "pasterizar", "esterilizar", "confitar", "pastorizzare", "sterilizzare", "confitare", "regenerate", "regen", "régénérer");
    private static readonly WordList Still = new("rest", "stand", "leave", "cool", "let", "reposer", "ruhen", "stehen", "reposar", "riposare");
    private static readonly WordList Processed = new("food processor", "processor");

    /// <summary>The kind, set right by the part of the sentence.</summary>
    /// <param name="kind">As the verb says.</param>
    /// <param name="op">The work.</param>
    /// <param name="s">The step.</param>
    /// <param name="start">Where the time begins.</param>
    /// <param name="end">Where it ends.</param>
    /// <param name="minutes">Its low end.</param>
    /// <param name="operations">The works of the step.</param>
    /// <param name="temperatures">Its heats.</param>
    public static TimeKind Of(TimeKind kind, string? op, string s, int start, int end, double minutes, List<(int At, string Id)> operations, List<StepTemperature> temperatures)
    {
        if (kind is TimeKind.Limit || kind == TimeKind.Rest && op is not (null or "cure" or "brine" or "season" or "marinate"))
        {
            return kind;
        }

        bool rests = FirstOfRests.MayIn(s);
        if (!rests && temperatures.Count == 0 && minutes < Short && kind is not (TimeKind.Chill or TimeKind.Rest) && !(kind == TimeKind.Hands && op is null))
        {
            return kind;
        }

        int from = From(s, start);
        int to = To(s, end);
        string part = s[from..to];
        bool own = operations.Exists(o => o.At >= from && o.At < start);
        if (kind == TimeKind.Chill)
        {
            // "60℃の湯煎で2時間加熱し、氷水で冷やす": what is chilled afterwards is cooked before.
            return !operations.Exists(o => o.At >= from && o.At < to) && Between(part, temperatures, Hot, 99) && !TimeKinds.IsCold(part) && !Between(part, temperatures, double.MinValue, Cold) ? TimeKind.Cook : kind;
        }

        if (kind == TimeKind.Rest)
        {
            // "Salt, bag, 58 °C 4 h": what is so hot does not cure.
            return op is null ? Heated.In(part) && !Still.In(part) ? TimeKind.Cook : kind : !own && Between(part, temperatures, Hot, 99) ? TimeKind.Cook : kind;
        }

        if (own && op is "smoke" or "dehydrate" && !TimeKinds.IsCold(part))
        {
            // Cold smoke has its machine.
            return kind;
        }

        if (Between(part, temperatures, double.MinValue, Cold) && !Between(part, temperatures, Hot, double.MaxValue) && minutes >= Short)
        {
            return TimeKind.Chill;
        }

        if (minutes >= Short && kind is TimeKind.Hands or TimeKind.Machine && (TimeKinds.IsCold(part) || Stands.In(part)))
        {
            return TimeKinds.IsCold(part) ? TimeKind.Chill : TimeKind.Rest;
        }

        if (rests && Places.Ends(Folding.Lower(s[from..start]).TrimEnd(' ', ':'), Rests))
        {
            return TimeKind.Rest;
        }

        if (!own && minutes >= Short && op is "mix_dough" or "knead_hand" or "shape_dough" && Between(part, temperatures, Cold, 40))
        {
            return TimeKind.Rest;
        }

        return kind == TimeKind.Hands && op is null && (Heated.In(part) && !Processed.In(part) || Between(part, temperatures, Hot, 99)) ? TimeKind.Cook : kind;
    }

    private static bool Between(string part, List<StepTemperature> temperatures, double low, double high) => temperatures.Exists(t => t.Celsius >= low && t.Celsius <= high && t.Words.Length > 0 && part.Contains(t.Words, StringComparison.Ordinal));

    private static int From(string s, int start)
    {
        int from = Math.Max(Sentences.Begin(s, start), s.AsSpan(0, start).LastIndexOfAny(",、(") + 1);
        foreach (string word in Parted)
        {
            from = s.AsSpan(from, start - from).LastIndexOf(word, StringComparison.OrdinalIgnoreCase) is var at and >= 0 ? from + at + word.Length : from;
        }

        return Math.Min(from, start);
    }

    private static int To(string s, int end)
    {
        int to = s.AsSpan(end).IndexOfAny(",;、。)") is var stop and >= 0 ? end + stop : s.Length;
        int full = s.IndexOf(". ", end, StringComparison.Ordinal);
        to = full >= 0 && full < to ? full : to;
        foreach (string word in Parted)
        {
            to = s.AsSpan(end, to - end).IndexOf(word, StringComparison.OrdinalIgnoreCase) is var at and >= 0 ? end + at : to;
        }

        return to;
    }
}
