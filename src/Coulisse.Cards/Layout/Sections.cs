using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>Headings that divide a component instead of naming one.</summary>
internal static class Sections
{
    /// <summary>"ingredients", "method", "notes"; null for a name.</summary>
    public static string? Of(string name, string lang)
    {
        // "Ingredients (serves 4)", "材料(4人分)", "Zutaten für 4 Personen"
        string key = Folding.Key(Word(name, lang));
        if (Lexicon.Word("ingredients", key, lang) is not null)
        {
            return "ingredients";
        }

        if (Lexicon.Word("method", key, lang) is not null || Day(key) || Step(key))
        {
            return "method";
        }

        return Lexicon.Word("notes", key, lang) is not null ? "notes" : null;
    }

    /// <summary>The heading without what it says behind its section word: "Jour J" of "Jour J (samedi)".</summary>
    public static string Word(string name, string lang) => Rest(name, lang) is { Length: > 0 } rest ? name[..^rest.Length].TrimmedEnd(" (:-,/") : name.TrimmedEnd(" :");

    /// <summary>What a heading says behind its section word and is a sentence of its own: what stands in brackets, or a yield. Empty when it says nothing more.</summary>
    public static string Rest(string name, string lang)
    {
        int open = name.IndexOf('(');
        if (open > 1)
        {
            return name[(open + 1)..];
        }

        foreach (string kind in (ReadOnlySpan<string>)["ingredients", "method"])
        {
            if (Lexicon.Longest(kind, name, 0, 3, lang, out int end) is null || end >= name.Length - 1)
            {
                continue;
            }

            string rest = name[end..].TrimmedStart(" :-,/：");
            bool tells = rest.Length > 1 && (rest.AsSpan().IndexOfAnyInRange('0', '9') >= 0 || rest.Contains(' ')) && YieldWords.In(rest, default, lang) is not null;
            return tells ? rest : "";
        }

        return lang == "ja" && name.StartsWith("材料", StringComparison.Ordinal) && name.EndsWith('分') ? name[2..].TrimmedStart(" :…・") : "";
    }

    /// <summary>True for a heading that says when the work is done.</summary>
    public static bool IsDay(string name) => Day(Folding.Key(name));

    /// <summary>"Step 1", "Étape 2", "Schritt 3": the number of a step on a line of its own.</summary>
    private static bool Step(string key)
    {
        foreach (string w in (ReadOnlySpan<string>)["step ", "etape ", "schritt ", "paso ", "passo ", "passaggio ", "fase ", "step", "手順", "工程"])
        {
            if (key.StartsWith(w, StringComparison.Ordinal) && key.Length - w.Length is 1 or 2 && key.AsSpan(w.Length).IndexOfAnyExceptInRange('0', '9') < 0)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"Day 1", "J-1", "Jour J", "Tag 2", "Día 1", "Giorno 1": when the work is done, not what is made.</summary>
    private static bool Day(string key)
    {
        if (key is "jour j" or "the day" or "on the day" or "the day before" or "two days before" or "three days before" or "the night before" or "the evening before" or "day before" or "two days ahead" or "the day ahead" or "la veille" or "am vortag" or "el dia antes" or "il giorno prima" or "当日" or "前日")
        {
            return true;
        }

        foreach (string w in (ReadOnlySpan<string>)["day ", "jour ", "tag ", "dia ", "giorno ", "j-", "d-", "j"])
        {
            if (key.StartsWith(w, StringComparison.Ordinal) && key.Length - w.Length is 1 or 2 && key.AsSpan(w.Length).IndexOfAnyExceptInRange('0', '9') < 0)
            {
                return true;
            }
        }

        return false;
    }
}
