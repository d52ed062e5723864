using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>Headings that divide a component instead of naming one.</summary>
internal static class Sections
{
    /// <summary>"ingredients", "method", "notes"; null for a name.</summary>
    public static string? Of(string name, string lang)
    {
        // "Ingredients (serves 4)", "材料(4人分)"
        int open = name.IndexOf('(');
        string key = Folding.Key(open > 1 ? name[..open].TrimEnd() : name);
        if (Lexicon.Word("ingredients", key, lang) is not null)
        {
            return "ingredients";
        }

        if (Lexicon.Word("method", key, lang) is not null || Day(key))
        {
            return "method";
        }

        return Lexicon.Word("notes", key, lang) is not null ? "notes" : null;
    }

    /// <summary>True for a heading that says when the work is done.</summary>
    public static bool IsDay(string name) => Day(Folding.Key(name));

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
