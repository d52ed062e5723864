using System.Text;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"6 minutes for soft, 10 for hard", "50 minutes for 4 people, 70 for 8": a time for each end one may wish, of which one is waited and which do not add up. The first is read, the others are the other way.</summary>
internal static class OtherGoals
{
    private const int MostFigures = 12;
    private const int MostLabel = 40;

    /// <summary>The word that names a goal.</summary>
    private static string For(string lang) => lang switch { "fr" => "pour", "de" => "für", "it" => "per", "es" => "para", _ => "for" };

    /// <summary>Ends of cooking and sizes: behind these a time that bears its own unit is another goal, too.</summary>
    private static readonly string[] Goals = ["soft", "runny", "jammy", "medium", "hard", "rare", "well done", "firm", "al dente", "thin", "thick", "small", "large", "saignant", "à point", "bien cuit", "bleu", "mollet", "mollets", "durs", "dur", "à la coque", "weich", "wachsweich", "hart", "rosa", "durch", "mollet", "duro", "duros", "poco hecho", "al punto", "muy hecho", "barzotte", "sode", "sodo", "alla coque", "al sangue", "ben cotta"];

    /// <summary>What comes after the other and not in its place.</summary>
    private static readonly string[] Sequels = ["the first", "the second", "the next", "each", "every", "the other", "la première", "la seconde", "le premier", "die erste", "die zweite", "la primera", "la segunda", "il primo", "la prima", "il secondo"];

    /// <summary>Where the other goals begin and end, with their figures' unit told; null where none are.</summary>
    /// <param name="s">The step.</param>
    /// <param name="lang">Language.</param>
    public static (int From, int To, string Text)? In(string s, string lang)
    {
        string goal = For(lang);
        // Each goal is named by its own "for": one alone is in nearly every step.
        if (lang == "ja" || Places.FindWord(s, goal) is not (>= 0 and var one) || Places.FindWord(s, goal, one + 1) < 0)
        {
            return null;
        }

        int figures = 0;
        for (int i = 0; i < s.Length && figures < MostFigures; i++)
        {
            if (!char.IsAsciiDigit(s[i]) || i > 0 && (char.IsLetterOrDigit(s[i - 1]) || s[i - 1] is '.' or ','))
            {
                continue;
            }

            figures++;
            if (Clock.At(s, i, lang) is not { } first || Goal(s, first.End, goal) is not { } label)
            {
                continue;
            }

            int comma = Close(s, label);
            string unit = Unit(s, first.End);
            if (comma > 0 && unit.Length > 0 && Others(s, comma, unit, goal, lang) is { } told)
            {
                return (comma, told.To, told.Text);
            }

            i = first.End;
        }

        return null;
    }

    private static (int To, string Text)? Others(string s, int comma, string unit, string goal, string lang)
    {
        StringBuilder text = new();
        int to = comma;
        while (to < s.Length && s[to] is ',' or ';' or ' ' && Joint(s, to) is > 0 and var at)
        {
            if (!char.IsAsciiDigit(s[at]) || Numbers.Range(s, at, lang) is not { InWords: false } n)
            {
                break;
            }

            int behind = Math.Max(n.End, Clock.At(s, at, lang)?.End ?? 0);
            bool own = behind > n.End;
            if (Goal(s, behind, goal) is not { } label || own && Places.Behind(s, label, Goals) == 0)
            {
                break;
            }

            int end = Stop(s, label);
            text.Append(text.Length > 0 ? " / " : "").Append(s, at, n.End - at).Append(own ? "" : " ").Append(own ? "" : unit).Append(s, n.End, end - n.End);
            to = end;
        }

        return text.Length > 0 ? (to, text.ToString()) : null;
    }

    /// <summary>Where the goal is named behind a time; null where none is.</summary>
    private static int? Goal(string s, int end, string word)
    {
        int at = Places.Skip(s, end);
        int behind = (Places.WordAt(s, at, word) ? at + word.Length : 0);
        int label = behind > 0 ? Places.Skip(s, behind) : s.Length;
        return label < s.Length && char.IsLetterOrDigit(s[label]) && Places.Behind(s, label, Sequels) == 0 ? label : null;
    }

    /// <summary>What parts a goal, which is a few words, from the next: a comma, or "and" before a figure. Below nothing where the sentence ends before.</summary>
    private static int Close(string s, int label)
    {
        int stop = Stop(s, label);
        return stop < s.Length && stop - label < MostLabel && s[stop] != '.' ? stop : -1;
    }

    private static int Stop(string s, int label)
    {
        for (int i = label; i < s.Length; i++)
        {
            if (s[i] is ',' or ';' or '.' || s[i] == ' ' && Joint(s, i) is > 0 and var next && char.IsAsciiDigit(s[next]))
            {
                return i;
            }
        }

        return s.Length;
    }

    /// <summary>Where what is joined begins; nought where nothing joins there.</summary>
    private static int Joint(string s, int at)
    {
        int word = Places.Skip(s, at < s.Length && s[at] is ',' or ';' ? at + 1 : at);
        int behind = Places.Behind(s, word, Joints);
        int next = behind > 0 ? Places.Skip(s, behind) : word == at + 1 && s[at] == ' ' ? 0 : word;
        return next < s.Length ? next : 0;
    }

    private static readonly string[] Joints = ["and", "or", "et", "ou", "und", "oder", "y", "o", "e"];

    /// <summary>The word of the unit that ends a time.</summary>
    private static string Unit(string s, int end)
    {
        int from = end;
        while (from > 0 && (char.IsLetter(s[from - 1]) || s[from - 1] == '.' && from == end))
        {
            from--;
        }

        return TimeWords.Unit(s, from, out _) is not null ? s[from..end] : "";
    }
}
