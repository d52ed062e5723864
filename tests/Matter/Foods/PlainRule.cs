using System.Text;

namespace Coulisse.Matter.Tests.Foods;

/// <summary>How names are folded, said plainly and slowly: what <see cref="Coulisse.Matter.Foods.FoodName"/> and <see cref="Coulisse.Matter.Foods.FoodForms"/> must come to.</summary>
internal static class PlainRule
{
    public static string Fold(string name)
    {
        StringBuilder b = new();
        foreach (char raw in name.Normalize(NormalizationForm.FormKD))
        {
            if (raw is >= '\u0300' and <= '\u036F' or '\u2019' or '\'')
            {
                continue;
            }

            char c = char.ToLowerInvariant(raw);
            _ = c switch
            {
                'œ' => b.Append("oe"),
                'æ' => b.Append("ae"),
                'ß' => b.Append("ss"),
                '%' or '\u3099' or '\u309A' or 'ー' => b.Append(c),
                _ => b.Append(char.IsLetterOrDigit(c) ? c : ' '),
            };
        }

        string[] words = b.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries);
        StringBuilder folded = new();
        foreach (string w in words)
        {
            bool joins = folded.Length == 0 || w[0] == '%' && char.IsDigit(folded[^1]);
            folded.Append(joins ? "" : " ").Append(w);
        }

        return folded.ToString();
    }

    public static string Singular(string folded) => Words(folded, (w, _, _) =>
        w.Length <= 3 || !w.EndsWith('s') || w[^2] == 's' ? w
        : w.EndsWith("ies", StringComparison.Ordinal) && w.Length > 5 ? w[..^3] + "y"
        : w.EndsWith("oes", StringComparison.Ordinal) ? w[..^2]
        : w.EndsWith("ves", StringComparison.Ordinal) && !w.EndsWith("ives", StringComparison.Ordinal) && !w.EndsWith("oves", StringComparison.Ordinal) ? w[..^3] + "f"
        : w[..^1]);

    public static string Form(string folded, string language) => language switch
    {
        "fr" => Words(folded, (w, first, _) => French(w, first)),
        "de" => Words(folded, (w, _, last) => German(w, last)),
        "es" => Words(folded, (w, first, _) => Spanish(w, first)),
        "it" => Words(folded, (w, _, _) => Italian(w)),
        "ja" => string.Concat(folded.Where(c => c != ' ').Select(c => c is >= 'ァ' and <= 'ヶ' ? (char)(c - 'ァ' + 'ぁ') : c)),
        _ => folded,
    };

    private static string Words(string folded, Func<string, bool, bool, string> one)
    {
        string[] words = folded.Split(' ');
        return string.Join(' ', words.Select((w, i) => one(w, i == 0, i == words.Length - 1)));
    }

    private static string French(string w, bool first)
    {
        if (w.Length < 4)
        {
            return w;
        }

        string bare = w[^1] is 's' or 'x' && w[^2] != 's' ? w[..^1] : w;
        string male = bare switch { "blanche" => "blanc", "fraiche" => "frai", "seche" => "sec", "douce" => "doux", "grosse" => "gro", "nouvelle" => "nouveau", "mure" => "mur", _ => bare };
        return !first && male.Length > 4 && male.EndsWith('e') ? male[..^1] : male;
    }

    private static string German(string w, bool last) =>
        Ends(w, "eier") ? w[..^2]
        : w.Length < 4 ? w
        : last ? w.Length > 4 && Ends(w, "en", "eln", "ern") ? w[..^1] : w
        : w.Length > 4 && Ends(w, "er", "es", "en", "em") ? w[..^2]
        : Ends(w, "e") ? w[..^1] : w;

    private static string Spanish(string w, bool first)
    {
        if (w.Length < 4)
        {
            return w;
        }

        if (Ends(w, "ces"))
        {
            return w[..^3] + "z";
        }

        string one = Ends(w, "nes", "les", "res", "des", "jes") ? w[..^2] : Ends(w, "s") ? w[..^1] : w;
        string stem = one.Length > 3 && Ends(one, "ne", "le", "re", "de", "je") ? one[..^1] : one;
        return !first && stem.Length > 4 && Ends(stem, "a", "o") ? stem[..^1] : stem;
    }

    private static string Italian(string w)
    {
        if (w.Length < 3 || !Ends(w, "a", "e", "i", "o"))
        {
            return w;
        }

        string stem = w[..^1];
        stem = stem.Length > 2 && Ends(stem, "i") ? stem[..^1] : stem;
        return Ends(stem, "ch", "gh") ? stem[..^1] + "k" : Ends(w, "ca", "co", "ga", "go") ? stem + "k" : stem;
    }

    private static bool Ends(string w, params string[] endings) => endings.Any(e => w.EndsWith(e, StringComparison.Ordinal));
}
