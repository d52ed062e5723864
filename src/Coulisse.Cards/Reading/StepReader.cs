using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Reads one step of a method.</summary>
internal static class StepReader
{
    private const int LongestStep = 20_000;
    private static readonly string[] Nights = ["overnight", "une nuit", "über nacht", "de un día para otro", "tutta la notte", "una notte", "toda la noche", "la noche anterior", "o/n", "over night", "all night", "through the night", "pendant la nuit", "toute la nuit", "eine Nacht", "una noche", "durante la noche", "de un día para el otro", "tutta notte", "per la notte", "until the next day", "until next day", "until the following day", "jusqu'au lendemain", "bis zum nächsten Tag", "bis zum nächsten Morgen", "bis zum Folgetag", "hasta el día siguiente", "fino al giorno dopo", "fino al giorno seguente", "翌日まで", "一晩", "ひと晩", "1晩", "一夜"];
    private static readonly Beginnings FirstOfNights = new(Nights);
    private static readonly (string Words, int People)[] Hands = [("two people", 2), ("three people", 3), ("four people", 4), ("deux personnes", 2), ("zu zweit", 2)];
    private static readonly Beginnings FirstOfHands = new(Hands.Select(h => h.Words));
    private static readonly WordList Meanwhiles = new("meanwhile", "pendant ce temps", "währenddessen", "mientras tanto", "nel frattempo", "その間", "as the bags go in", "while");
    private static readonly WordList Leaves = new("unattended", "nobody need stand");
    private static readonly WordList Looks = new("every", "halfway", "now and then", "turning once", "stirring once", "ab und zu");
    private static readonly WordList Keepers = new("keeps", "keep for", "will keep", "store in", "dura", "durano", "se conserve", "hält sich", "haltbar", "aguanta", "si conserva", "se conserva");
    // What is labelled and dated is put away: days behind it say how long it keeps.
    private static readonly WordList Labelled = new("label", "use within", "use by", "shelf life", "étiqueter", "dlc", "à consommer dans", "etikettieren", "beschriften", "verbrauchen", "etiquetar", "consumir en", "caducidad", "etichettare", "consumare entro", "scadenza");
    private static readonly WordList Held = new("keep", "hold", "store", "leave out", "warm halten", "aufbewahren", "garder", "tenir", "conserver", "mantener", "conservar", "guardar", "mantenere", "tenere", "conservare");
    private static readonly WordList Cold = new("fridge", "freezer", "Kühlschrank", "réfrigérateur", "nevera", "frigo", "冷蔵庫");
    private static readonly WordList Still = new("leave", "stand", "let", "hold", "bench", "repos", "kristallisieren", "crystallise", "crystallize", "cristalliser", "cristallizzare", "cristalizar", "laisser", "lassen", "dejar", "lasciare", "riposo", "reposar");
    private static readonly WordList Thrice = new("three times", "dreimal", "trois fois", "tre volte");
    private static readonly WordList Twice = new("twice", "zweimal", "deux fois");

    /// <summary>The step's reading.</summary>
    /// <param name="raw">As written.</param>
    /// <param name="lang">Language.</param>
    /// <param name="span">Where.</param>
    /// <param name="component">Name of its component.</param>
    /// <param name="order">Place in the component, from 1.</param>
    /// <param name="ovenBefore">Oven figure set earlier in the component.</param>
    public static Step Read(string raw, string lang, Span span, string component, int order, double? ovenBefore = null) => Placed(Alone(raw, lang, span), Folding.Lower(component), order, ovenBefore);

    /// <summary>A step that was read alone, in its place.</summary>
    /// <param name="step">As read alone.</param>
    /// <param name="component">Name of its component in small letters.</param>
    /// <param name="order">Place in the component, from 1.</param>
    /// <param name="ovenBefore">Oven figure set earlier in the component.</param>
    /// <param name="heatBefore">The heat of an oven, a bath or a pan told last.</param>
    public static Step Placed(Step step, string component, int order, double? ovenBefore, StepTemperature? heatBefore = null)
    {
        if (SameHeat.Of(step, heatBefore) is { } same)
        {
            step = step with { Temperatures = [same] };
        }

        bool oven = step.Operations.Contains("bake") || step.Operations.Contains("roast") || step.Operations.Contains("blind_bake");
        bool told = step.Temperatures.Any(t => t.Of == TemperatureOf.Oven);
        return step with
        {
            Anchor = new Anchor(component, order, step.Anchor.Fingerprint),
            Temperatures = oven && !told && ovenBefore is { } c ? step.Temperatures.Add(new StepTemperature(TemperatureOf.Oven, c, "") { Inherited = true }) : step.Temperatures,
        };
    }

    /// <summary>What a step says by itself, whatever stands before it: its handle has no component and no place yet.</summary>
    public static Step Alone(string raw, string lang, Span span)
    {
        bool struck = raw.Length <= LongestStep && Struck.In(raw);
        string s = Marks.Strip(raw.Length > LongestStep ? Folding.Line(raw.AsSpan(0, LongestStep)) : Folding.Line(struck ? Struck.Out(raw) : raw));
        string shown = struck ? Marks.Strip(Struck.Shown(raw)) : s;
        List<(int At, string Id)> operations = Operations.In(s, lang);
        string? main = Operations.Main(operations);
        List<StepTemperature> temperatures = Heat.In(s, lang, main, operations);
        List<StepTime> times = [];
        List<StepStorage> storage = [];
        double? hands = null;
        int people = 1;
        List<double> tendAt = [];
        Times(s, lang, operations, times, tendAt, temperatures, storage, ref hands);
        foreach ((string word, int n) in FirstOfHands.MayIn(s) ? Hands : [])
        {
            people = Places.FindWord(s, word) >= 0 ? n : people;
        }

        return new Step
        {
            Span = span, Text = shown, Anchor = new Anchor("", 0, Anchors.Fingerprint(shown)), Operation = main, Operations = Operations.Ids(operations),
            Times = [.. times], Temperatures = [.. temperatures], Kit = StepWords.Kit(s), People = people, HandsMinutes = hands, TendAt = [.. tendAt],
            Tending = Tended(s, main, times, tendAt, hands), Storage = [.. storage], Until = StepWords.Until(s), Meanwhile = Meanwhiles.In(s),
            ThicknessMillimetres = StepWords.Thickness(s), EndGrams = StepWords.End(s), LossPercent = StepWords.Loss(s),
        };
    }

    private static void Times(string s, string lang, List<(int At, string Id)> operations, List<StepTime> times, List<double> tendAt, List<StepTemperature> temperatures, List<StepStorage> storage, ref double? hands)
    {
        string? lower = null;
        for (int i = 0; i < s.Length; i++)
        {
            bool begins = i == 0 || !(char.IsLetterOrDigit(s[i - 1]) && !Places.IsJapanese(s[i - 1])) && s[i - 1] is not '.' and not ',' || i > 0 && s[i - 1] == ',' && !char.IsAsciiDigit(s[i]);
            if (!begins || !(char.IsLetterOrDigit(s[i]) || Numbers.Vulgar(s[i]) > 0) || (Clock.At(s, i, lang) ?? (times.Count > 0 ? Elliptic(s, i, lang) : BareMinutes.At(s, i, lang, temperatures))) is not { } t)
            {
                continue;
            }

            string words = s[i..t.End];
            lower ??= Folding.Lower(s);
            string before = lower.AsSpan(Math.Max(0, i - 40)..i).TrimEnd().ToString();
            string after = lower[t.End..Math.Min(s.Length, t.End + 24)];
            int open = s.LastIndexOf('(', i);
            bool inHands = open >= 0 && s.IndexOf(')', open) is var close && (close < 0 || close > i) && Bracketed(s, open);
            i = t.End - 1;
            if (inHands)
            {
                hands ??= t.Min;
                continue;
            }

            if (before.EndsWith(" at", StringComparison.Ordinal) || before == "at" || before.EndsWith("again at", StringComparison.Ordinal))
            {
                tendAt.Add(t.Min);
                continue;
            }

            if (times.Count == 0 && Ends(before, "every", "toutes les", "alle", "cada", "ogni") && !Places.HasAny(s, "times", "twice", "veces", "fois", "mal", "volte", "folds", "pieghe", "plis", "pliegues") || Aside(s, before, after, times))
            {
                continue;
            }

            if (Listed(before))
            {
                // "folding at 30, 60 and 90 min"
                tendAt.Add(t.Min);
                continue;
            }

            if (times.Count > 0 && Ends(before, "every", "toutes les", "alle", "cada", "ogni"))
            {
                // "2 hours, basting every 20 minutes": when to look, no time of its own
                Every(t.Min, times[^1].MinutesMax, tendAt);
                continue;
            }

            if (times.Count > 0 && Ends(before, "for the last", "during the last"))
            {
                // "18 min, vent open for the last 3 min": within the time before
                continue;
            }

            if (Offsets.Is(s, before, after))
            {
                continue;
            }

            if (t.Min >= 1440 && (Keeps(s) || Labelled.In(s)) || Stored.Said(s, i, before))
            {
                storage.Add(new StepStorage(Place(s), t.Max / 1440));
                continue;
            }

            bool least = Ends(before, "at least", "au moins", "mindestens", "al menos", "almeno", "up to a good", "a good", "a minimum of", "minimum of", "un minimum de", "un mínimo de", "mínimo", "un minimo di") || after.TrimStart().StartsWith("以上", StringComparison.Ordinal) || after.TrimStart().StartsWith("minimum", StringComparison.Ordinal) || t.Min >= 60 && Places.WordAt(after.TrimStart(), 0, "min") || after.TrimStart().StartsWith("or more", StringComparison.Ordinal) || after.TrimStart() is var closing && (closing.StartsWith("como mínimo", StringComparison.Ordinal) || closing.StartsWith("mindestens", StringComparison.Ordinal) || closing.StartsWith("au moins", StringComparison.Ordinal) || closing.StartsWith("almeno", StringComparison.Ordinal) || closing.StartsWith("at least", StringComparison.Ordinal) || closing.StartsWith("minimo", StringComparison.Ordinal) || closing.StartsWith("mini", StringComparison.Ordinal) && (closing.Length == 4 || !char.IsLetter(closing[4]))) || words.Contains('+') || before.Length > 0 && before[^1] is '≥' or '>' || Ends(before, "not less than", "no less than", "min.", "mind.", "a minimum");
            bool longest = Ends(before, "for no longer than", "for not longer than", "for no more than", "nicht länger als", "pas plus de", "no más de", "non più di") && !Held.In(s);
            bool limit = !longest && Ends(before, "within", "in weniger als", "en menos de", "en moins de", "longer than");
            bool most = longest || Ends(before, "no more than", "at most", "up to", "höchstens", "maximum", "max.", "max", "not more than", "jusqu'à", "bis zu", "hasta un máximo de", "al massimo", "como máximo", "au plus", "au maximum") || before.Length > 0 && before[^1] is '≤' or '<' || after.TrimStart() is var behind && (behind.StartsWith("max", StringComparison.Ordinal) || behind.StartsWith("at most", StringComparison.Ordinal) || behind.StartsWith("tops", StringComparison.Ordinal));
            if (least && temperatures.Count > 0 && before.Contains("or more for", StringComparison.Ordinal))
            {
                temperatures[^1] = temperatures[^1] with { HoldMinutes = t.Min };
                continue;
            }

            if (Ends(before, "better", "besser", "mejor", "meglio", "mieux", "keeps", "keep", "in the last four") )
            {
                continue;
            }

            string? main = Operations.Main(operations);
            string? op = Operations.Before(operations, i) ?? main;
            if (Ends(before, "hold there", "hold there at least", "hold there for", "keep there", "keep there at least") && main is "blast_chill" or "chill_fridge" or "chill_ice" or "freeze")
            {
                // The cold goes on: the nearest verb spoke of where the food came from.
                op = main;
            }
            else if (main is "fill_bath")
            {
                // "64 min from cold": the water's cold, not the food's.
                op = main;
            }
            else if (op is "cure" or "brine" or "season" && main is not null && Kind(main, s) == TimeKind.Cook)
            {
                // "simmer in vinegar, sugar and salt 25 min": a food there, not an act.
                op = main;
            }

            if (op is not null && op != main && t.Min >= 15 && Kind(op, s) == TimeKind.Hands && main is not null && Kind(main, s) != TimeKind.Hands)
            {
                // The nearest verb is a word on the way ("until a probe reads …, about 40 minutes"): the work that lasts is the main one.
                op = main;
            }

            int repeats = Thrice.In(s) ? 3 : Twice.In(s) ? 2 : 1;
            times.Add(new StepTime(most ? null : t.Min, least ? null : t.Max, limit ? TimeKind.Limit : Kind(op, s) is TimeKind.Hands && op is null && temperatures.Exists(x => x.Of == TemperatureOf.Oven && !x.Inherited) ? TimeKind.Oven : Kind(op, s), words)
            {
                Bound = least ? Bound.AtLeast : most || limit ? Bound.AtMost : Bound.At,
                Repeats = repeats > 1 && after.TrimStart().StartsWith("each", StringComparison.Ordinal) ? repeats : 1,
            });
        }

        foreach (string night in FirstOfNights.MayIn(s) ? Nights : [])
        {
            if (Places.FindWord(s, night) is var at and >= 0)
            {
                if (NightHours.Told(s, at, at + night.Length, times))
                {
                    break;
                }

                string before = s[..at].TrimEnd();
                if (times.Count > 0 && before.EndsWith("or, better,", StringComparison.OrdinalIgnoreCase))
                {
                    // "2 hours or, better, overnight": the other way is no second wait.
                    break;
                }

                // Where it stands among the others: "all night …, next day boil it an hour".
                int place = 0;
                while (place < times.Count && s.IndexOf(times[place].Words, StringComparison.Ordinal) is var told && told >= 0 && told < at)
                {
                    place++;
                }

                times.Insert(place, new StepTime(null, null, Kind(Operations.Main(operations), s) is TimeKind.Hands ? TimeKind.Rest : Kind(Operations.Main(operations), s), night));
                break;
            }
        }

        if (OpenWaits.In(s, times) is { } wait)
        {
            times.Add(new StepTime(null, null, TimeKind.Rest, wait));
        }
    }

    /// <summary>The moments inside a time at which one looks.</summary>
    private static void Every(double minutes, double? whole, List<double> tendAt)
    {
        if (whole is { } all && minutes >= 1 && all / minutes < 40)
        {
            for (int k = 1; k < (int)Math.Ceiling(all / minutes); k++)
            {
                tendAt.Add(k * minutes);
            }
        }
    }

    /// <summary>A figure that leans on the time before it: "25 to 30 more", "4 on medium", "another 20", "for ten".</summary>
    private static (double Min, double Max, int Start, int End)? Elliptic(string s, int at, string lang)
    {
        if (lang != "en" || Numbers.Range(s, at, lang) is not { } n || n.Min > 600)
        {
            return null;
        }

        int j = Places.Skip(s, n.End);
        bool stops = j >= s.Length || s[j] is ',' or '.' or ';';
        string before = stops ? s[..at].TrimEnd() : "";
        bool leans = Places.WordAt(s, j, "more") || Places.WordAt(s, j, "on medium") || Places.WordAt(s, j, "on high") || Places.WordAt(s, j, "on low") || Places.WordAt(s, j, "on fast")
            || (stops && n is { InWords: false, Min: >= 2 and <= 60 } && Ends(before.ToLowerInvariant(), Verbs))
            || (stops && !Places.HasAny(before, "or on") && (before.EndsWith(" another", StringComparison.Ordinal) || before.EndsWith(" for", StringComparison.Ordinal)));
        return leans ? (n.Min, n.Max ?? n.Min, at, n.End) : null;
    }

    // "sweat 15 min, add cream, cook 10, blend 3 min"
    private static readonly string[] Verbs = ["cook", "simmer", "boil", "fry", "sweat", "roast", "bake", "rest", "blend", "steam", "poach", "knead", "braise"];

    /// <summary>Another way, a stretch inside another time, an addition: "or up to 2 days", "(4-5 hours on high)", "the first two hours", what goes by weight and all beside it.</summary>
    private static bool Aside(string s, string before, string after, List<StepTime> times) =>
        Offsets.Aside(before, times.Count == 0)
        || times.Count > 0 && before.EndsWith('(') && s.Contains(times[^1].Words + " (", StringComparison.Ordinal) && after.Contains(" on ", StringComparison.Ordinal)
        || before.EndsWith("plus", StringComparison.Ordinal) && Places.HasAny(s, "per 500g", "per 500 g", "per kg", "per kilo", "per lb", "per pound", "per 450g", "per 450 g");

    /// <summary>True behind "at 30, 60 and": the last of several moments.</summary>
    private static bool Listed(string before)
    {
        int at = before.LastIndexOf(" at ", StringComparison.Ordinal);
        return at >= 0 && before.Length - at > 5 && (before.EndsWith("and", StringComparison.Ordinal) || before.EndsWith(',') && before.IndexOf(',', at) < before.Length - 1) && before[(at + 4)..^(before[^1] == ',' ? 1 : 3)].All(c => char.IsAsciiDigit(c) || c is ',' or ' ');
    }

    /// <summary>True for a sentence that says how long a thing keeps: storage, no wait.</summary>
    private static bool Keeps(string s) =>
        Keepers.In(s) || s.Contains("保存", StringComparison.Ordinal);

    private static string Place(string s) => Places.HasAny(s, "freezer", "congélateur", "congelador", "Gefrierschrank", "Tiefkühler", "Tiefkühlfach", "congelatore") || s.Contains("冷凍", StringComparison.Ordinal) ? "freezer"
        : Places.HasAny(s, "tin", "airtight", "boîte") && !Places.HasAny(s, "frais") ? "airtight"
        : Places.HasAny(s, "fridge", "refrigerator", "frais", "réfrigérateur", "frigo", "nevera", "frigorífico", "frigorifero", "cámara", "Kühlschrank", "gekühlt") || s.Contains("冷蔵", StringComparison.Ordinal) ? "fridge" : "room";

    private static bool Bracketed(string s, int open)
    {
        string head = s[(open + 1)..Math.Min(s.Length, open + 18)].ToLowerInvariant();
        return head.StartsWith("hands", StringComparison.Ordinal) || head.Contains("people", StringComparison.Ordinal);
    }

    private static bool Ends(string before, params ReadOnlySpan<string> words)
    {
        foreach (string w in words)
        {
            // "dalle 4 alle 6 ore" does not say "alle".
            if (before.EndsWith(w, StringComparison.Ordinal) && (before.Length == w.Length || !char.IsLetter(w[0]) || !char.IsLetter(before[before.Length - w.Length - 1]) || Places.IsJapanese(w[0])))
            {
                return true;
            }
        }

        return false;
    }

    private static TimeKind Kind(string? op, string s) => op switch
    {
        "bake" or "roast" or "blind_bake" or "gratinate" => TimeKind.Oven,
        "blend" or "mix_dough" or "whip_cream" or "whisk_ribbon" or "stick_blend" or "shear_gel" or "homogenise" or "cream_butter" or "freeze_mill" or "dehydrate" => TimeKind.Machine,
        "chill_fridge" or "blast_chill" or "chill_ice" or "freeze" or "cool_rack" or "set_gel" => TimeKind.Chill,
        "simmer" or "boil_food" or "boil_water" or "water_bath" or "steam" or "deep_fry" or "saute" or "sear" or "poach" or "reduce" or "braise" or "fill_bath" or "blanch_refresh" or "cook_unsaid" => TimeKind.Cook,
        "rest_meat" or "rest_dough" or "prove_bulk" or "prove_final" or "soak" or "infuse" or "marinate" or "pickle" or "cure" or "brine" or "soak_gelatine" or "bloom_powder" or "thaw" or "ferment" or "hang_drain" or "press_weight" or "set_aside" => TimeKind.Rest,
        _ => Cold.In(s) ? TimeKind.Chill : Still.In(s) || s.Contains('置') ? TimeKind.Rest : TimeKind.Hands,
    };

    private static Tending Tended(string s, string? main, List<StepTime> times, List<double> at, double? hands)
    {
        if (Leaves.In(s))
        {
            return Tending.None;
        }

        if (at.Count > 0 || Looks.In(s))
        {
            return Tending.Some;
        }

        bool waits = times.Exists(t => t.Kind is TimeKind.Oven or TimeKind.Chill or TimeKind.Rest or TimeKind.Cook);
        return waits && main is not null ? (hands is null ? Tending.Ends : Tending.Some) : Tending.All;
    }
}
