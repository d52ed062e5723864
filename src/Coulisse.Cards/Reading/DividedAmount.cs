using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"180 g butter, 120 g for the dough and 60 g for the filling": one amount, and how it is divided. The shares are in it and are never added to it; what comes on top says so ("plus 20 g for the tin"). Without an amount before them the shares are all of it.</summary>
/// <param name="Line">The line without the words that divide.</param>
/// <param name="Words">Those words.</param>
/// <param name="Whole">What the shares come to where the line tells no amount of its own; null where it does.</param>
internal sealed record DividedAmount(string Line, string Words, Measure? Whole)
{
    private const int Longest = 300;
    private static readonly string[] Leads = ["of which", "of it", "of them", "divided into", "divided", "dont", "davon", "di cui", "dei quali", "de los cuales", "de las cuales", "de ellos", "de ellas", "aufgeteilt"];
    private static readonly WordList Mixed = new("mixed", "assorted", "mélangés", "mélangées", "variés", "variées", "gemischte", "gemischter", "gemischtes", "gemischten", "mixtos", "mixtas", "variados", "variadas", "misti", "miste", "misto");
    private static readonly Beginnings FirstOfLeads = new(Leads);

    /// <summary>The line parted; null when it divides nothing.</summary>
    public static DividedAmount? Of(string s, string lang)
    {
        if (s.Length is < 12 or > Longest || lang == "ja" || Figures(s) < 2)
        {
            return null;
        }

        int depth = 0;
        for (int i = 2; i < s.Length - 5; i++)
        {
            depth += s[i] == '(' ? 1 : s[i] == ')' && depth > 0 ? -1 : 0;
            if (depth > 0 || From(s, i, out bool within) is not (> 0 and var from))
            {
                continue;
            }

            string line = s[..i].TrimmedEnd(" ,;:-");
            if (DividedShares.In(s, from, lang) is not { } shares)
            {
                if ((s[i] == ':' || Mixed.In(line)) && DividedShares.In(s, from, lang, named: false) is { Amounts.Count: > 1 } kinds && Comes(line, kinds, lang))
                {
                    return new DividedAmount(line, s[i..].Trimmed(" ,;:-"), null);
                }

                continue;
            }

            if ((shares.Amounts.Count > 1 || within || shares.Within) && Divides(line, shares, within || shares.Within, lang, out Measure? whole))
            {
                return new DividedAmount(line, s[i..].Trimmed(" ,;:-"), whole);
            }
        }

        return null;
    }

    /// <summary>Where the shares begin behind a comma, a colon, a dash or "of which"; 0 when nothing of the kind stands here.</summary>
    private static int From(string s, int i, out bool within)
    {
        within = false;
        bool mark = s[i] is ';' or ':' or ',' && !(char.IsAsciiDigit(s[i - 1]) && char.IsAsciiDigit(s[i + 1]));
        int k = mark ? Places.Skip(s, i + 1) : i;
        if (s[i] == ' ')
        {
            k = Places.Skip(s, i);
            mark = k + 1 < s.Length && s[k] == '-' && s[k + 1] == ' ';
            k = mark ? Places.Skip(s, k + 1) : k;
        }
        else if (!mark)
        {
            return 0;
        }

        foreach (string lead in FirstOfLeads.May(s, k) ? Leads : [])
        {
            if (Places.WordAt(s, k, lead))
            {
                within = true;
                k = Places.Skip(s, k + lead.Length);
                k = k < s.Length && s[k] is ':' or ',' ? Places.Skip(s, k + 1) : k;
                break;
            }
        }

        return (mark || within) && k < s.Length && (char.IsAsciiDigit(s[k]) || Numbers.Vulgar(s[k]) > 0) ? k : 0;
    }

    /// <summary>"6 eggs: 4 whole, 2 yolks", "500 g mixed berries, 300 g raspberries and 200 g blackberries": kinds of one food everybody knows, or of a mixture, that come to its amount.</summary>
    private static bool Comes(string line, DividedShares kinds, string lang) =>
        Joins.Split(line, lang).Count == 1 && PartReader.Read(line, lang) is { Amount: { } all, AmountMax: null, Percent: null, Food.Length: > 0 } d && (Mixed.In(line) || FoodIds.Match(d.Food, lang) is not null)
        && kinds.Sum(d.Unit) is { } sum && DividedShares.Same(sum, all);

    private static bool Divides(string line, DividedShares shares, bool within, string lang, out Measure? whole)
    {
        whole = null;
        if (Joins.Split(line, lang).Count > 1)
        {
            return false;
        }

        Draft d = PartReader.Read(line, lang);
        if (d.Food.Length == 0 || d.Percent is not null || d.AmountMax is not null)
        {
            return false;
        }

        if (d.Amount is { } all)
        {
            return within || shares.Purposes || (shares.Sum(d.Unit) is { } sum && DividedShares.Same(sum, all));
        }

        Measure first = shares.Amounts[0];
        if (!shares.Purposes || shares.Rest || shares.Sum(first.Unit) is not { } told)
        {
            return false;
        }

        whole = first with { Number = first.Number with { Min = told } };
        return true;
    }

    private static int Figures(string s)
    {
        int n = 0;
        for (int i = 0; i < s.Length; i++)
        {
            n += char.IsAsciiDigit(s[i]) && (i == 0 || !char.IsLetterOrDigit(s[i - 1]) && s[i - 1] is not ('.' or ',' or '/')) ? 1 : 0;
        }

        return n;
    }
}
