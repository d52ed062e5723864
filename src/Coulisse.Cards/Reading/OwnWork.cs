using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Which work a time is of when a step has several sentences: that of its own sentence first. What was boiled a sentence before does not stay on the hob for the hours of a brine, and what was chilled before is not chilled in a hot oven.</summary>
internal static class OwnWork
{
    private const double Hot = 60;
    private static readonly WordList Thens = new("then", "puis", "ensuite", "dann", "danach", "luego", "después", "poi", "quindi");
    private static readonly WordList Waits = new("abkühlen", "auskühlen", "lauwarm", "autolyse", "autolisi", "autolisis", "intiepidire", "tiédir", "templar", "entibiar", "rest", "rests", "proof", "prove", "overnight", "repos", "pointage", "apprêt", "croûter", "lievitazione", "riposo", "puntata", "appretto", "Gare", "Stockgare", "Stückgare", "Ruhe", "Ruhezeit", "reposo", "fermentación", "levado");

    private static readonly WordList Stood = new("autolyse", "autolisi", "autolisis");

    /// <summary>"Mix flour and water, autolyse 1 h": dough that stands, in the part of the sentence the time is told in.</summary>
    public static bool Stands(string part) => Stood.In(part);

    /// <summary>The main work of the sentence between two places; null when it tells none.</summary>
    public static string? Main(List<(int At, string Id)> all, int from, int to)
    {
        string? first = null;
        foreach ((int at, string id) in all)
        {
            if (at < from || at >= to)
            {
                continue;
            }

            if (!Operations.IsSmall(id))
            {
                return id;
            }

            first ??= id;
        }

        return first;
    }

    /// <summary>The last work told between two places; null when none is.</summary>
    public static string? Last(List<(int At, string Id)> all, int from, int to)
    {
        for (int k = all.Count - 1; k >= 0; k--)
        {
            if (all[k].At <= to)
            {
                return all[k].At >= from ? all[k].Id : null;
            }
        }

        return null;
    }

    /// <summary>True where the first work of a step comes after a time and a "then": the time is not of it.</summary>
    public static bool Follows(List<(int At, string Id)> all, string s, int end) => all.Count > 0 && all[0].At > end && Thens.In(s[end..all[0].At]);

    /// <summary>True where the work told last is of an earlier sentence, and this one speaks of the contrary: heat after a wait or the cold, a wait or the cold after heat.</summary>
    /// <param name="op">The work told last.</param>
    /// <param name="clause">The sentence of the time.</param>
    /// <param name="temperatures">The heats of the step.</param>
    public static bool Strays(string op, string clause, List<StepTemperature> temperatures) => TimeKinds.Plain(op, "", own: true) switch
    {
        TimeKind.Rest or TimeKind.Chill => Heated(clause, temperatures),
        TimeKind.Cook or TimeKind.Oven or TimeKind.Machine => TimeKinds.IsCold(clause) || Waits.In(clause),
        _ => false,
    };

    private static bool Heated(string clause, List<StepTemperature> temperatures) => temperatures.Exists(t => t.Celsius >= Hot && t.Words.Length > 0 && clause.Contains(t.Words, StringComparison.Ordinal));

    /// <summary>"Fry at 140 °C 6 min, drain, then at 190 °C 2 min": a heat told behind handwork goes on with the work over heat before it; null where none is.</summary>
    public static string? Carried(List<(int At, string Id)> all, string s, int from, int start, List<StepTemperature> temperatures)
    {
        string? heat = null;
        int last = -1;
        foreach ((int at, string id) in all)
        {
            if (at >= from && at < start)
            {
                last = at;
                heat = TimeKinds.Plain(id, "", own: true) is TimeKind.Cook or TimeKind.Oven ? id : heat;
            }
        }

        return heat is not null && s[last..start] is var part && Thens.In(part) && temperatures.Exists(t => t.Celsius >= Hot && t.Words.Length > 0 && part.Contains(t.Words, StringComparison.Ordinal)) ? heat : null;
    }

    private static readonly WordList Leaves = new("leave", "leave it", "leave them", "stand", "let stand", "let it stand", "laisser", "stehen lassen", "dejar", "lasciare");
    private static readonly string[] LeftAt = ["leave", "leave it", "leave them", "let stand", "let it stand", "laisser", "laisser reposer", "dejar", "dejar reposar", "lasciare", "lasciar riposare", "lasciare riposare"];
    private static readonly WordList Heats = new("oven", "four", "Ofen", "horno", "forno", "bubble", "bubbling", "heat", "hob", "stove", "bath", "tick over", "feu", "fuego", "fuoco");
    private static readonly WordList OffHeat = new("off the heat", "off heat", "hors du feu", "fuera del fuego", "fuori dal fuoco", "lontano dal fuoco");

    /// <summary>"Simmer 10 min, then leave 30 min": what is only left, behind the work over heat; "leave in the oven" and "leave at 90 °C" go on with it.</summary>
    public static bool Left(List<(int At, string Id)> all, string s, int from, int start)
    {
        string? op = null;
        foreach ((int at, string id) in all)
        {
            (from, op) = at >= from && at < start ? (at, id) : (from, op);
        }

        if (op is null || TimeKinds.Plain(op, "", own: true) is not (TimeKind.Cook or TimeKind.Oven))
        {
            return false;
        }

        int comma = s.AsSpan(from, start - from).LastIndexOf(',');
        if (comma < 0)
        {
            return false;
        }

        string part = s[Places.Skip(s, from + comma + 1)..start];
        part = Places.WordAt(part, 0, "then") || Places.WordAt(part, 0, "puis") || Places.WordAt(part, 0, "and") ? part[(part.IndexOf(' ') + 1)..] : part;
        return Leaves.In(part) && (OffHeat.In(part) || !part.AsSpan().ContainsAnyInRange('0', '9') && !Heats.In(part)) && part.IndexOf(' ') is var space && Leaves.In(space < 0 ? part : part[..space] is "let" or "stehen" ? part : part[..space]);
    }

    /// <summary>True where the bath is named between the work told last and the time: "score, render 8 min, SV 57 °C 45 min".</summary>
    public static bool Bathed(List<(int At, string Id)> all, string s, int from, int start)
    {
        foreach ((int at, string _) in all)
        {
            from = at > from && at < start ? at : from;
        }

        return TimeKinds.IsBath(s[from..start]);
    }

    /// <summary>What a night is: the work of its own sentence, and a wait where that is handwork, a machine or a heat that was left ("braise, then leave overnight").</summary>
    public static TimeKind OfNight(List<(int At, string Id)> all, string s, int at, string lang)
    {
        int from = Sentences.Begin(s, at);
        string sentence = Sentences.Around(s, at);
        string lead = Folding.Lower(s[Math.Max(from, at - 20)..at].TrimEnd());
        if (Places.Ends(lead, LeftAt) && Last(all, from, at) is { } left && TimeKinds.Plain(left, "", own: true) is TimeKind.Cook or TimeKind.Oven)
        {
            // "Simmer 2 h and leave overnight": the fire is out, or the food in the cold.
            return TimeKinds.IsCold(s[at..Math.Min(s.Length, at + 40)]) ? TimeKind.Chill : TimeKind.Rest;
        }

        string? op = Operations.Behind(all, s, at, lang) ?? Last(all, from, at) ?? Main(all, from, from + sentence.Length);
        if (op is null)
        {
            op = Operations.Main(all);
            op = op is not null && Strays(op, sentence, []) ? null : op;
        }

        return TimeKinds.Plain(op, sentence) is var kind && kind is TimeKind.Hands or TimeKind.Machine ? TimeKind.Rest : kind;
    }
}
