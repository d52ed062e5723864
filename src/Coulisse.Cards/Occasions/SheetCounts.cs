using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Occasions;

/// <summary>How many a sentence speaks of.</summary>
internal sealed record Counted
{
    public int? Guests { get; init; }

    public int? Plates { get; init; }

    public int? Over { get; init; }

    public int? Live { get; init; }

    /// <summary>Stretches of the sentence that were read.</summary>
    public ImmutableArray<(int Start, int End)> Read { get; init; } = [];

    /// <summary>What was taken where the sentence leaves it open.</summary>
    public ImmutableArray<string> Assumed { get; init; } = [];
}

/// <summary>Reads guests, plates and what is over of a sentence: "48 guests and five over, so 53 plates", "20 plates and two spare".</summary>
internal static class SheetCounts
{
    private const int Most = 100_000;
    private static readonly string[] Guests = ["guests", "guest", "covers", "cover", "diners", "pax", "heads", "couverts", "convives", "invités", "Gäste", "Gästen", "Personen", "Leute", "comensales", "invitados", "personas", "coperti", "ospiti", "persone"];
    private static readonly string[] Plates = ["plates", "plate", "portions", "portion", "servings", "assiettes", "assiette", "Teller", "Tellern", "platos", "piatti"];
    private static readonly string[] Over = ["over", "spare", "spares", "extra", "in reserve"];
    private static readonly string[] Within = ["of which", "of them", "including", "incl.", "among them"];

    /// <summary>What a sentence counts.</summary>
    /// <param name="s">The sentence.</param>
    /// <param name="line">Sheet line.</param>
    /// <param name="problems">Where what cannot be goes.</param>
    public static Counted Of(string s, int line, List<Problem> problems)
    {
        Counted all = new();
        int last = -1; // end of the count of guests or plates that "and two spare" belongs to
        for (int i = 0; i < s.Length; i++)
        {
            if (!char.IsLetterOrDigit(s[i]) || (i > 0 && (char.IsLetterOrDigit(s[i - 1]) || s[i - 1] is ':' or '.' or '/')) || Numbers.Range(s, i, "en") is not { } n)
            {
                continue;
            }

            int noun = Places.Skip(s, n.End);
            bool spare = Noun(s, noun, Over, out int end);
            bool and = last >= 0 && Joined(s, last, i);
            string? kind = Noun(s, noun, Guests, out int guestsEnd) ? "guests" : Noun(s, noun, Plates, out guestsEnd) ? "plates" : null;
            if (Places.WordAt(s, noun, "plated live"))
            {
                all = all with { Live = Whole(n) };
            }
            else if (spare && (and || Places.WordAt(s, noun, "over")) && n.Min >= 0)
            {
                int over = Whole(n);
                bool within = Within.Any(w => s[..i].TrimEnd().EndsWith(w, StringComparison.OrdinalIgnoreCase));
                end = Places.Skip(s, end) is var more && Noun(s, more, Plates, out int moreEnd) ? moreEnd : end;
                all = all with { Over = all.Over ?? over, Guests = within && all.Guests is { } g ? g - over : all.Guests, Plates = within && all.Plates is { } p ? p - over : all.Plates, Read = all.Read.Add((i, end)) };
                Sum(s, end, all, line, problems);
                last = -1;
                i = end - 1;
                continue;
            }
            else if (kind is null && Ahead(s, n.End) && n.Max is null && n.Min == Math.Floor(n.Min) && n.Min > 0)
            {
                // "48 and five over": what is over is over the guests
                all = all with { Guests = all.Guests ?? n.Count, Read = all.Read.Add((i, n.End)) };
                last = n.End;
            }
            else if (kind is null && all.Guests is null && all.Plates is null && last < 0 && For(s, i, n.End) && n is { Max: null, Min: >= 2 } && n.Min == Math.Floor(n.Min))
            {
                // "Dinner for 24 on 12 December"
                all = all with { Guests = n.Count, Read = all.Read.Add((i, n.End)) };
            }
            else if (kind is not null && !Rate(s, guestsEnd))
            {
                bool minus = i > 0 && s[i - 1] is '-' or '−' && (i == 1 || s[i - 2] is ' ' or ',' or '(');
                if (minus || n.Min is < 1 or > Most || n.Min != Math.Floor(n.Min))
                {
                    problems.Add(new Problem("OCC007", line, $"“{s[(minus ? i - 1 : i)..guestsEnd]}” is no number of {kind}.", "Write a whole number above nothing, for example 53 plates."));
                }
                else if (kind == "guests" ? all.Guests is null : all.Plates is null)
                {
                    int count = Whole(n);
                    all = kind == "guests" ? all with { Guests = count } : all with { Plates = count };
                    all = n.Max is null ? all : all with { Assumed = all.Assumed.Add(string.Create(CultureInfo.InvariantCulture, $"{kind}: {s[i..guestsEnd]} is written, {count} taken")) };
                }

                all = all with { Read = all.Read.Add((minus ? i - 1 : i, guestsEnd)) };
                last = guestsEnd;
                i = guestsEnd - 1;
                continue;
            }

            i = Math.Max(i, n.End - 1);
        }

        return all;
    }

    // "…, so 53 plates": the sum that is written is the sum there is.
    private static void Sum(string s, int end, Counted all, int line, List<Problem> problems)
    {
        int i = end;
        while (i < s.Length && s[i] is ' ' or ',' or '(')
        {
            i++;
        }

        bool so = i < s.Length && (s[i] == '=' || Places.WordAt(s, i, "so") || Places.WordAt(s, i, "together") || Places.WordAt(s, i, "makes"));
        i = so ? Places.Skip(s, s[i] == '=' ? i + 1 : Places.WordEnd(s, i)) : i;
        if (so && Numbers.Single(s, i, "en") is { } sum && (all.Guests ?? all.Plates) is { } first && all.Over is { } over && sum.Count != first + over)
        {
            problems.Add(new Problem("OCC031", line, string.Create(CultureInfo.InvariantCulture, $"{first} and {over} over are {first + over}, but {sum.Count} is written."), "Correct the guests, what is over, or the sum."));
        }
    }

    private static int Whole(Numeral n) => n.Max is { } max ? (int)Math.Min(Math.Ceiling(max), Most) : n.Count;

    private static bool Noun(string s, int at, string[] nouns, out int end)
    {
        foreach (string noun in nouns)
        {
            if (at < s.Length && Places.WordAt(s, at, noun))
            {
                end = at + noun.Length;
                return true;
            }
        }

        end = at;
        return false;
    }

    // "and", "plus", a comma with or without "of which", between a count and what is over it
    private static bool Joined(string s, int from, int to)
    {
        string between = s[from..to].Trimmed(" ,(");
        return between.Length == 0 || between is "and" or "plus" or "+" or "&" or "with" || Within.Contains(between, StringComparer.OrdinalIgnoreCase);
    }

    // "two plates a minute" is a pace
    private static bool Rate(string s, int at) => Places.Skip(s, at) is var i && i < s.Length && (s[i] == '/' || Places.WordAt(s, i, "a") || Places.WordAt(s, i, "an") || Places.WordAt(s, i, "per") || Places.WordAt(s, i, "each") || Places.WordAt(s, i, "every"));

    // "for 24" with nothing counted behind it; "7 for 8" and "for 8 o'clock" are times
    private static bool For(string s, int at, int end)
    {
        string before = s[..at].TrimEnd();
        int i = Places.Skip(s, end);
        return before.EndsWith("for", StringComparison.OrdinalIgnoreCase) && (before.Length == 3 || before[^4] == ' ' && !char.IsAsciiDigit(before[..^3].TrimEnd() is { Length: > 0 } lead ? lead[^1] : ' '))
            && (i >= s.Length || s[i] is ',' or ';' || s[i] == '.' && i == end && (i + 1 == s.Length || s[i + 1] == ' ') || Places.WordAt(s, i, "on") || Places.WordAt(s, i, "at") || SheetTime.DayOfWeek(s, i) > 0);
    }

    // "and five over" right behind a bare number
    private static bool Ahead(string s, int at)
    {
        int i = Places.Skip(s, at);
        bool and = Places.WordAt(s, i, "and") || Places.WordAt(s, i, "plus") || (i < s.Length && s[i] is '+' or '&');
        int j = and ? Places.Skip(s, char.IsLetter(s[i]) ? Places.WordEnd(s, i) : i + 1) : i;
        return and && Numbers.Single(s, j, "en") is { } n && Noun(s, Places.Skip(s, n.End), Over, out _);
    }
}
