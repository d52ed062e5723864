using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Reads one step of a method.</summary>
internal static class StepReader
{
    private const int LongestStep = 20_000;
    private static readonly WordList Hands = new("two people", "three people", "four people", "deux personnes", "zu zweit");
    private static readonly int[] People = [2, 3, 4, 2, 2];
    private static readonly string[] Folds = ["rabat à", "rabats à", "pli à", "plis à", "fold at", "folds at", "fold after", "folds after", "pliegue a", "pliegues a", "piega a", "pieghe a", "piega dopo", "falten nach", "rabat après", "rabats après"];
    private static readonly string[] LeastBehind = ["以上", "minimum", "or more", "or longer", "at least", "como mínimo", "por lo menos", "al menos", "o más", "mindestens", "oder mehr", "oder länger", "au moins", "au minimum", "ou plus", "almeno", "come minimo", "al minimo", "minimo", "o più"];
    private static readonly WordList Meanwhiles = new("meanwhile", "pendant ce temps", "währenddessen", "mientras tanto", "nel frattempo", "その間", "as the bags go in", "while");
    private static readonly WordList Leaves = new("unattended", "nobody need stand");
    private static readonly WordList Looks = new("every", "halfway", "now and then", "turning once", "stirring once", "ab und zu");
    private static readonly WordList Held = new("keep", "hold", "store", "leave out", "warm halten", "aufbewahren", "garder", "tenir", "conserver", "mantener", "conservar", "guardar", "mantenere", "tenere", "conservare");

    /// <summary>The step's reading.</summary>
    /// <param name="raw">As written.</param>
    /// <param name="lang">Language.</param>
    /// <param name="span">Where.</param>
    /// <param name="component">Name of its component.</param>
    /// <param name="order">Place in the component, from 1.</param>
    /// <param name="ovenBefore">Oven set earlier in the component, with its fan.</param>
    public static Step Read(string raw, string lang, Span span, string component, int order, StepTemperature? ovenBefore = null) => Scales.Of(Placed(Alone(raw, lang, span), Folding.Lower(component), order, ovenBefore), lang);

    /// <summary>A step that was read alone, in its place.</summary>
    /// <param name="step">As read alone.</param>
    /// <param name="component">Name of its component in small letters.</param>
    /// <param name="order">Place in the component, from 1.</param>
    /// <param name="ovenBefore">Oven set earlier in the component, with its fan.</param>
    /// <param name="heatBefore">The heat of an oven, a bath or a pan told last.</param>
    public static Step Placed(Step step, string component, int order, StepTemperature? ovenBefore, StepTemperature? heatBefore = null)
    {
        if (SameHeat.Of(step, heatBefore) is { } same)
        {
            step = step with { Temperatures = [same] };
        }

        bool oven = step.Operations.Contains("bake") || step.Operations.Contains("roast") || step.Operations.Contains("blind_bake");
        StepTemperature? told = step.Temperatures.FirstOrDefault(t => t.Of == TemperatureOf.Oven);
        StepTemperature? set = oven && ovenBefore is not null ? new StepTemperature(TemperatureOf.Oven, ovenBefore.Celsius, "") { Inherited = true, Fan = ovenBefore.Fan } : null;
        return step with
        {
            Anchor = new Anchor(component, order, step.Anchor.Fingerprint),
            Temperatures = set is null ? step.Temperatures : told is null ? step.Temperatures.Add(set) : TurnedDown(step, told) ? step.Temperatures.Insert(0, set) : step.Temperatures,
        };
    }

    /// <summary>"Bake 20 min, then turn down to 160 °C and bake 30 min more": the first minutes are of the oven set before.</summary>
    private static bool TurnedDown(Step step, StepTemperature told)
    {
        int at = told.Words.Length > 0 ? step.Text.IndexOf(told.Words, StringComparison.Ordinal) : -1;
        int time = step.Times.FirstOrDefault(t => t.Kind == TimeKind.Oven) is { } first ? step.Text.IndexOf(first.Words, StringComparison.Ordinal) : -1;
        return time >= 0 && at > time && Turns.In(step.Text[time..at]);
    }

    private static readonly WordList Turns = new("turn down", "turn the oven down", "turn it down", "turn up", "reduce", "reduce the oven", "lower", "drop", "baisser", "réduire", "abaisser", "herunterschalten", "reduzieren", "zurückschalten", "bajar", "reducir", "abbassare", "ridurre");

    /// <summary>What a step says by itself, whatever stands before it: its handle has no component and no place yet.</summary>
    public static Step Alone(string raw, string lang, Span span)
    {
        bool struck = raw.Length <= LongestStep && Struck.In(raw);
        string s = Marks.Strip(raw.Length > LongestStep ? Folding.Line(raw.AsSpan(0, LongestStep)) : Folding.Line(struck ? Struck.Out(raw) : raw));
        string shown = struck ? Marks.Strip(Struck.Shown(raw)) : s;
        string told = s;
        List<(int At, string Id)> operations = Operations.Verbs(s, lang, []);
        string? main = Operations.Main(operations);
        List<StepTemperature> temperatures = Heat.In(s, lang, main, operations);
        main = FatBaths.Settle(s, lang, operations, temperatures) ? Operations.Main(operations) : main;
        List<StepTime> times = [];
        List<StepStorage> storage = [];
        double? hands = null;
        int people = 1;
        List<double> tendAt = [];
        string? other = null;
        (int From, int Begin, int To)? way = OtherWay.In(s, lang);
        if (way is null && OtherGoals.In(s, lang) is { } goals)
        {
            (way, other) = ((goals.From, goals.From, goals.To), goals.Text);
        }

        if (way is var (from, begin, to))
        {
            // What follows is read as if the other way were not there; places stay what they were.
            other ??= s[begin..to].TrimmedEnd(" ,");
            told = string.Concat(s.AsSpan(0, from), new string(' ', to - from), s.AsSpan(to));
            operations.RemoveAll(o => o.At >= from && o.At < to && operations.Exists(k => k.At < from));
            temperatures = Heat.In(told, lang, Operations.Main(operations), operations);
        }

        Times(told, lang, operations, times, tendAt, temperatures, storage, ref hands);
        for (int k = Hands.Next(s, 0); k >= 0; k = Hands.Next(s, k + 1))
        {
            people = Places.FindWord(s, Hands[k]) >= 0 ? People[k] : people;
        }

        return new Step
        {
            Span = span, Text = shown, Anchor = new Anchor("", 0, Anchors.Fingerprint(shown)), Operation = main, Operations = Operations.Ids(operations),
            Times = [.. times], Temperatures = [.. temperatures], Kit = StepWords.Kit(s), People = people, HandsMinutes = hands, TendAt = [.. tendAt],
            Tending = Tended(s, main, times, tendAt, hands), Storage = [.. storage], Until = StepWords.Until(s), Alternative = other, Meanwhile = Meanwhiles.In(s),
            ThicknessMillimetres = StepWords.Thickness(s), EndGrams = StepWords.End(s), LossPercent = StepWords.Loss(s),
        };
    }

    private static void Times(string s, string lang, List<(int At, string Id)> operations, List<StepTime> times, List<double> tendAt, List<StepTemperature> temperatures, List<StepStorage> storage, ref double? hands)
    {
        string? lower = null;
        int fold = 0;
        for (int i = 0; i < s.Length; i++)
        {
            bool begins = i == 0 || !(char.IsLetterOrDigit(s[i - 1]) && !Places.IsJapanese(s[i - 1]) && !Crossed(s, i) && !TouchedHeat.At(s, i)) && s[i - 1] is not '.' and not ',' || i > 0 && s[i - 1] == ',' && !char.IsAsciiDigit(s[i]);
            if (!begins || !(char.IsLetterOrDigit(s[i]) || Numbers.Vulgar(s[i]) > 0) || (KeepTimes.Frozen(s, i) ?? Clock.At(s, i, lang) ?? BareMinutes.Leaning(s, i, lang, times.Count > 0, temperatures) ?? SharedMinutes.At(s, i, lang, times) ?? BareMinutes.At(s, i, lang, temperatures, times.Count > 0 ? times[^1] : null) ?? BareMinutes.Letter(s, i, lang, temperatures) ?? BareWaits.At(s, i, lang) ?? KeepTimes.At(s, i, lang)) is not { } t)
            {
                continue;
            }

            if (NightHours.Figured(s, t.Start, t.End, lang) || FoodAges.Is(s, t.Start, t.End, t.Min) || ClockHours.Is(s, t.Start, t.End, t.Min, lang))
            {
                i = t.End - 1;
                continue;
            }

            string words = s[i..t.End];
            lower ??= Folding.Lower(s);
            string before = lower.AsSpan(Math.Max(0, i - 40)..i).TrimEnd().ToString();
            string after = lower[t.End..Math.Min(s.Length, t.End + 24)];
            string tail = after.TrimStart() is var behindIt && OpenRanges.OfNext(behindIt) ? "" : behindIt;
            int open = s.LastIndexOf('(', i);
            bool inHands = open >= 0 && s.IndexOf(')', open) is var close && (close < 0 || close > i) && Bracketed(s, open);
            i = t.End - 1;
            if (inHands)
            {
                hands ??= t.Min;
                continue;
            }

            if (!tail.StartsWith("interval", StringComparison.Ordinal) && before.EndsWith(" at", StringComparison.Ordinal) || before == "at" || before.EndsWith("again at", StringComparison.Ordinal))
            {
                tendAt.Add(t.Min);
                continue;
            }

            if (times.Count > 0 && OpenRanges.OrLonger(s, times[^1], t.Start, t.End, t.Max, before) is { } longer)
            {
                times[^1] = longer;
                continue;
            }

            if (times.Count == 0 && Ends(before, "every", "toutes les", "alle", "cada", "ogni") && !Places.HasAny(s, "times", "twice", "veces", "fois", "mal", "volte", "folds", "pieghe", "plis", "pliegues") || Aside(s, before, after, times))
            {
                continue;
            }

            if (Listed(before) || lang == "ja" && Intervals.Told(tail))
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

            if (times.Count > 0 && LastMinutes.Within(s, before, t.Start, t.End, temperatures))
            {
                continue;
            }

            string clause = Sentences.Around(s, t.Start);
            if (Offsets.Is(s, before, after) || TotalTimes.Is(clause, before))
            {
                if (HoldLimits.NoMore(before) && t.Min < 1440)
                {
                    // "no more than 30 minutes before cooking": a limit, which is lost as a mere moment
                    times.Add(new StepTime(null, t.Max, TimeKind.Limit, words) { Bound = Bound.AtMost });
                }

                continue;
            }

            if (times.Count > 0 && t.Max <= times[^1].MinutesMax && (Ends(before, Folds) || fold > 0 && s[fold..t.Start].Trim(' ') is "," or "et" or "and" or "und" or "y" or "e"))
            {
                // "2 h avec 1 rabat à 1 h": a moment within them
                tendAt.Add(t.Min);
                fold = t.End;
                continue;
            }

            int begin = Sentences.Begin(s, t.Start);
            bool upTo = Ends(before, "up to", "jusqu'à", "bis zu", "hasta", "fino a", "at most", "maximum", "max.", "max", "höchstens", "no more than", "al massimo", "como máximo", "au maximum") || tail.StartsWith("max", StringComparison.Ordinal);
            if (KeptDays.Condition(clause, before, t.Min) || TotalTimes.Sums(tail, t.Max, times))
            {
                continue;
            }

            if (KeptDays.Is(clause, t.Min, OwnWork.Last(operations, begin, t.Start), tail, upTo, temperatures, lang) || t.Min >= 1440 && (Storing.Is(clause, upTo, t.Min) || Storing.Verbless(s, clause, t.Min, OwnWork.Last(operations, begin, t.Start) is not (null or "freeze"), lang) || upTo && Storing.Chilled(clause) && !(times.Count > 0 && OpenRanges.Closed(s, times[^1], t.Start, t.End, t.Max, most: true) is not null)) || Storing.Said(s, t.Start, before, t.Min))
            {
                storage.Add(new StepStorage(StoragePlaces.Of(s, clause, words, temperatures), t.Max / 1440));
                continue;
            }

            bool least = Ends(before, "at least", "au moins", "mindestens", "al menos", "almeno", "minimum", "au minimum", "mini", "minimo", "al minimo", "como mínimo", "up to a good", "a good", "a minimum of", "minimum of", "un minimum de", "un mínimo de", "mínimo", "un minimo di") || Places.Begins(tail, LeastBehind) && !DeniedTimes.Denied(tail) && !HoldLimits.NotSo(tail) || t.Min >= 60 && Places.WordAt(tail, 0, "min") || Places.WordAt(tail, 0, "mini") || words.Contains('+') || after.StartsWith('+') && !(after.Length > 1 && (after[1] == ' ' && after.AsSpan(1).TrimStart() is { Length: > 0 } plus && char.IsAsciiDigit(plus[0]) || char.IsAsciiDigit(after[1]))) || before.Length > 0 && before[^1] is '≥' or '>' || Ends(before, "not less than", "no less than", "no menos de", "pas moins de", "nicht weniger als", "non meno di", "min.", "mind.", "a minimum") || Ends(before, "min") && before.Length > 4 && !char.IsAsciiDigit(before.AsSpan(0, before.Length - 3).TrimEnd()[^1]);
            bool longest = Ends(before, "for no longer than", "for not longer than", "for no more than", "nicht länger als", "pas plus de", "no más de", "non più di") && !Held.In(s) || DeniedTimes.Longest(s, begin, t.Start, before) && !Held.In(s) || DeniedTimes.Denied(tail);
            bool limit = !longest && Ends(before, "within", "in weniger als", "within a further", "within another", "within the next", "innerhalb von", "innerhalb", "binnen", "en menos de", "en moins de", "dans les", "sous", "entro", "longer than") || !longest && tail.StartsWith("以内", StringComparison.Ordinal);
            bool most = longest || Ends(before, "no more than", "at most", "up to", "höchstens", "maximum", "max.", "max", "not more than", "jusqu'à", "bis zu", "hasta un máximo de", "maximal", "massimo", "máximo", "maximum de", "un máximo de", "máximo de", "un massimo di", "massimo di", "un maximum de", "a maximum of", "al massimo", "como máximo", "como mucho", "a lo sumo", "au plus", "au maximum", "tout au plus", "nicht mehr als", "non oltre") || before.Length > 0 && before[^1] is '≤' or '<' || tail is var behind && (behind.StartsWith("max", StringComparison.Ordinal) || behind.StartsWith("at most", StringComparison.Ordinal) || behind.StartsWith("tops", StringComparison.Ordinal) || HoldLimits.OrLess(behind));
            limit = limit || HoldLimits.By(before, tail) || HoldLimits.NotSo(tail) || HoldLimits.Is(clause, before, most, t.Min);
            if (times.Count > 0 && OpenRanges.Closed(s, times[^1], t.Start, t.End, t.Max, most) is { } range)
            {
                times[^1] = range;
                continue;
            }

            if (t.Start > 2 && TouchedHeat.At(s, t.Start) && TouchedHeat.Core(s, t.Start, temperatures) is >= 0 and var core)
            {
                // "中心75℃1分": how long the core is held there
                temperatures[core] = temperatures[core] with { HoldMinutes = t.Min };
                continue;
            }

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
            string? here = OwnWork.Main(operations, begin, begin + clause.Length);
            string? verb = Operations.Behind(operations, s, t.End, lang);
            string? op = verb ?? OwnWork.Last(operations, begin, t.Start);
            if (op is null)
            {
                op = Operations.Before(operations, t.Start) ?? (tail.StartsWith("before", StringComparison.Ordinal) || OwnWork.Follows(operations, s, t.End) ? null : main);
                op = op is not null && OwnWork.Strays(op, clause, temperatures) ? here : op;
            }

            if (temperatures.Count > 0 && verb is null && op is not null && TimeKinds.Plain(op, "", own: true) is TimeKind.Hands or TimeKind.Rest && OwnWork.Carried(operations, s, begin, t.Start, temperatures) is { } carried)
            {
                op = carried;
            }

            if (temperatures.Count > 0 && verb is null && OwnWork.Bathed(operations, s, begin, t.Start))
            {
                op = "water_bath";
            }

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
            else if (op is "cure" or "brine" or "season" && (here ?? main) is { } heated && TimeKinds.Plain(heated, s) == TimeKind.Cook)
            {
                // "simmer in vinegar, sugar and salt 25 min": a food there, not an act.
                op = heated;
            }

            if (op is "reduce" or "turn_tray" && Turned(s, operations, t.Start, temperatures))
            {
                // "Bake 15 min, reduce to 180 °C, 20 min": the oven is turned, nothing is boiled down.
                op = "bake";
            }

            if (op is not null && op != main && verb is null && t.Min >= 15 && TimeKinds.Plain(op, s) == TimeKind.Hands && main is not null && TimeKinds.Plain(main, s) != TimeKind.Hands)
            {
                // The nearest verb is a word on the way ("until a probe reads …, about 40 minutes"): the work that lasts is the main one.
                op = main;
            }

            if (verb is null && OwnWork.Left(operations, s, begin, t.Start))
            {
                op = "set_aside";
            }

            (int repeats, bool between) = Repeats.Of(s, t.Start, before, after);
            TimeKind kind = TimeKinds.Of(op, clause, t.Min * repeats, after, verb is not null, temperatures);
            kind = kind is TimeKind.Hands or TimeKind.Machine && OwnWork.Stands(clause) && OwnWork.Stands(StoragePlaces.Part(clause, words)) ? TimeKind.Rest : kind;
            kind = TimeParts.Of(kind, op, s, t.Start, t.End, t.Min * repeats, operations, temperatures);
            kind = limit ? TimeKind.Limit : between && kind is TimeKind.Hands or TimeKind.Machine ? TimeKind.Rest : kind;
            times.Add(new StepTime(most ? null : t.Min, least ? null : t.Max, kind, words) { Bound = least ? Bound.AtLeast : most || limit ? Bound.AtMost : Bound.At, Repeats = repeats });
        }

        Nights.Add(s, lang, times, operations);
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

    /// <summary>True where the last verb turns an oven down, or what is in it round.</summary>
    private static bool Turned(string s, List<(int At, string Id)> operations, int place, List<StepTemperature> temperatures)
    {
        (int at, string id) = operations.FindLast(o => o.At <= place);
        bool baked = temperatures.Exists(t => t.Of == TemperatureOf.Oven) && operations.Exists(o => o.At < at && o.Id is "bake" or "roast" or "blind_bake" or "preheat_oven");
        string rest = Folding.Lower(s[at..Math.Min(s.Length, at + 30)]);
        return baked && (id == "turn_tray" || rest.StartsWith("reduce to", StringComparison.Ordinal) && rest.AsSpan(9).ContainsAnyInRange('0', '9') || rest.StartsWith("reduce the oven", StringComparison.Ordinal) || rest.StartsWith("reduce heat", StringComparison.Ordinal) || rest.StartsWith("reduce the heat", StringComparison.Ordinal) || rest.StartsWith("reduce the temperature", StringComparison.Ordinal));
    }

    /// <summary>"2x20 min": the sign touches its figures.</summary>
    private static bool Crossed(string s, int i) => s[i - 1] is 'x' or 'X' or '×' && i > 1 && char.IsAsciiDigit(s[i - 2]) && char.IsAsciiDigit(s[i]);

    private static bool Bracketed(string s, int open)
    {
        string head = s[(open + 1)..Math.Min(s.Length, open + 18)].ToLowerInvariant();
        return head.StartsWith("hands", StringComparison.Ordinal) || head.Contains("people", StringComparison.Ordinal);
    }

    private static bool Ends(string before, params ReadOnlySpan<string> words)
    {
        foreach (string w in before.Length > 0 ? words : [])
        {
            // "dalle 4 alle 6 ore" does not say "alle".
            if (before[^1] == w[^1] && before.EndsWith(w, StringComparison.Ordinal) && (before.Length == w.Length || !char.IsLetter(w[0]) || !char.IsLetter(before[before.Length - w.Length - 1]) || Places.IsJapanese(w[0])))
            {
                return true;
            }
        }

        return false;
    }

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
