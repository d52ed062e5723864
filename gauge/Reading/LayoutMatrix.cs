using System.Globalization;
using Coulisse.Cards;
using Coulisse.Cards.Reading;

namespace Coulisse.Gauge.Reading;

/// <summary>
/// Two dishes of three parts in six languages, set in every combination of how people head, list, measure and tell: whatever the dress, the foods stand in their parts and the four times are read. The dress of a card is chosen by its number, so that each can be printed again.
/// </summary>
internal static class LayoutMatrix
{
    private static readonly string[] Titles = ["#", "plain", "underlined", "bold", "capitals", "none"];
    private static readonly string[] Intros = ["none", "serves", "serves and list"];
    private static readonly string[] Heads = ["##", "###", "bold", "bold colon", "capitals", "colon", "plain", "underlined", "for", "for colon", "square", "dashes", "capitals colon", "letter", "italic", "bold heading"];
    private static readonly string[] Marks = ["", "- ", "* ", "• ", "– ", "- [ ] ", "  ", "\t"];
    private static readonly string[] Places = ["front", "back", "comma", "colon", "dots", "column", "tab"];
    private static readonly string[] Methods = ["part lines", "part numbers", "part paragraph", "part bullets", "end numbers", "end lines", "end paragraph", "end bullets", "end numbers bare", "end lines bare", "end named", "part headed"];
    private static readonly string[] Gaps = ["airy", "tight"];
    private static readonly double[] Minutes = [5, 25, 8, 3];

    /// <summary>How many dresses there are.</summary>
    public static int Count => LayoutDishes.All.Length * Titles.Length * Intros.Length * Heads.Length * Marks.Length * Places.Length * Methods.Length * Gaps.Length;

    /// <summary>Numbers of dresses, spread over all of them: the same at every look.</summary>
    public static int[] Drawn(int many) => [.. Enumerable.Range(0, Math.Min(many, Count)).Select(i => (int)(i * Stride % Count))];

    private const long Stride = 7_368_787;

    /// <summary>The card in a dress, and the dress in words.</summary>
    public static (string Text, string[] Dress) Card(int number)
    {
        int Next(int of)
        {
            (int q, int r) = Math.DivRem(number, of);
            number = q;
            return r;
        }

        LayoutDishes.Tongue t = LayoutDishes.All[Next(LayoutDishes.All.Length)];
        string title = Titles[Next(Titles.Length)];
        string head = Heads[Next(Heads.Length)];
        string mark = Marks[Next(Marks.Length)];
        string place = Places[Next(Places.Length)];
        string method = Methods[Next(Methods.Length)];
        string intro = Intros[Next(Intros.Length)];
        string gap = Gaps[Next(Gaps.Length)];
        return (Written(t, title, intro, head, mark, place, method, gap == "airy"), [t.Lang, "title " + title, "intro " + intro, "head " + head, $"mark “{mark.Replace("\t", "tab", StringComparison.Ordinal)}”", "amount " + place, "method " + method, gap]);
    }

    private static string Written(LayoutDishes.Tongue t, string title, string intro, string head, string mark, string place, string method, bool airy)
    {
        List<string> lines = [];
        switch (title)
        {
            case "#": lines.Add("# " + t.Title); break;
            case "plain": lines.Add(t.Title); break;
            case "underlined": lines.AddRange([t.Title, new string('=', t.Title.Length)]); break;
            case "bold": lines.Add($"**{t.Title}**"); break;
            case "capitals": lines.Add(t.Title.ToUpperInvariant()); break;
            default: break;
        }

        if (intro != "none")
        {
            Blank(lines);
            lines.Add(t.Serves);
        }

        if (intro == "serves and list")
        {
            Blank(lines);
            lines.AddRange(Headed(t.List, head is "for" or "for colon" or "plain" or "colon" or "letter" ? "plain" : head));
        }

        int order = 1;
        int letter = 0;
        foreach (LayoutDishes.Part p in t.Parts)
        {
            Blank(lines);
            lines.AddRange(Headed(head.StartsWith("for", StringComparison.Ordinal) ? p.For : p.Name, head, (char)('A' + letter++)));
            if (airy && head is "##" or "###" or "underlined")
            {
                Blank(lines);
            }

            lines.AddRange(p.Foods.Select(f => mark + Item(t, f, place)));
            if (method == "part headed")
            {
                Blank(lines);
                lines.AddRange(Headed(t.Method, head == "##" ? "###" : head is "for" or "letter" ? "plain" : head is "for colon" ? "colon" : head));
            }

            if (method.StartsWith("part", StringComparison.Ordinal))
            {
                Blank(lines);
                lines.AddRange(Told(t, p.Steps, method == "part headed" ? "numbers" : method[5..], ref order, fresh: true));
            }
        }

        if (method.StartsWith("end", StringComparison.Ordinal))
        {
            Blank(lines);
            if (!method.EndsWith("bare", StringComparison.Ordinal))
            {
                lines.AddRange(Headed(t.Method, head is "for" or "letter" ? "plain" : head is "for colon" ? "colon" : head));
                if (airy)
                {
                    Blank(lines);
                }
            }

            if (method == "end named")
            {
                lines.AddRange(t.Parts.Select(p => p.Name + t.Colon + string.Join(t.Lang == "ja" ? "" : " ", p.Steps)));
            }
            else
            {
                order = 1;
                lines.AddRange(Told(t, [.. t.Parts.SelectMany(p => p.Steps)], method.Split(' ')[1], ref order, fresh: false));
            }
        }

        return string.Join('\n', lines) + "\n";
    }

    private static IEnumerable<string> Told(LayoutDishes.Tongue t, string[] steps, string how, ref int order, bool fresh)
    {
        int first = fresh ? 1 : order;
        return how switch
        {
            "numbers" => steps.Select((s, i) => $"{first + i}. {s}"),
            "bullets" => steps.Select(s => "- " + s),
            "paragraph" => [string.Join(t.Lang == "ja" ? "" : " ", steps)],
            _ => steps,
        };
    }

    private static string Item(LayoutDishes.Tongue t, (string Amount, string Unit, string Of, string Food, double Told) f, string place)
    {
        bool spoon = t.Lang == "ja" && f.Unit.Length == 0;
        if (f.Amount.Length == 0)
        {
            return f.Food;
        }

        string amount = spoon ? f.Amount : t.Lang == "ja" || f.Unit.Length == 0 ? f.Amount + f.Unit : $"{f.Amount} {f.Unit}";
        return place switch
        {
            "front" => t.Lang == "ja" ? $"{f.Food} {amount}" : $"{amount} {f.Of}{f.Food}",
            "back" => $"{f.Food} {amount}",
            "comma" => t.Lang == "ja" ? $"{f.Food}\u3000{amount}" : $"{f.Food}, {amount}",
            "colon" => $"{f.Food}{t.Colon}{amount}",
            "dots" => $"{f.Food} {new string('.', 20 - Math.Min(18, f.Food.Length))} {amount}",
            "column" => f.Food.PadRight(24) + amount,
            _ => $"{f.Food}\t{amount}",
        };
    }

    private static string[] Headed(string name, string head, char letter = 'A') => head switch
    {
        "##" or "###" => [$"{head} {name}"],
        "bold" => [$"**{name}**"],
        "bold colon" => [$"**{name}:**"],
        "capitals" => [name.ToUpperInvariant()],
        "colon" or "for colon" => [name + ":"],
        "underlined" => [name, new string('-', Math.Max(4, name.Length))],
        "square" => [$"[{name}]"],
        "dashes" => [$"--- {name} ---"],
        "capitals colon" => [name.ToUpperInvariant() + ":"],
        "letter" => [$"{letter}. {name}"],
        "italic" => [$"*{name}*"],
        "bold heading" => [$"## **{name}**"],
        _ => [name],
    };

    private static void Blank(List<string> lines)
    {
        if (lines.Count > 0 && lines[^1].Length > 0)
        {
            lines.Add("");
        }
    }

    /// <summary>What is wrong with the reading of a dress; empty when nothing is.</summary>
    public static string Wrong(int number)
    {
        LayoutDishes.Tongue t = LayoutDishes.All[number % LayoutDishes.All.Length];
        Dish? dish = CardReader.Read(new CardText(Card(number).Text)).Match<Dish?>(d => d, _ => null);
        if (dish is null)
        {
            return "not read";
        }

        List<(string Part, double? Amount, string Food)> read = [.. dish.Components.SelectMany(c => c.Ingredients.SelectMany(l => l.Foods).Select(f => (c.Name, f.Amount, f.Food)))];
        int at = 0;
        foreach (LayoutDishes.Part p in t.Parts)
        {
            foreach ((_, _, _, string food, double told) in p.Foods)
            {
                if (at >= read.Count || !(read[at].Amount ?? double.NaN).Equals(told) || !read[at].Food.Contains(food, StringComparison.OrdinalIgnoreCase))
                {
                    return $"food {food}: {(at < read.Count ? FormattableString.Invariant($"{read[at].Amount} {read[at].Food}") : "lost")}";
                }

                if (!read[at].Part.Contains(p.Name, StringComparison.OrdinalIgnoreCase) && !string.Equals(read[at].Part, p.For, StringComparison.OrdinalIgnoreCase) && !p.For.EndsWith(read[at].Part, StringComparison.OrdinalIgnoreCase))
                {
                    return $"part {p.Name}: {read[at].Part}";
                }

                at++;
            }
        }

        if (at < read.Count)
        {
            return $"more: {read[at].Food}";
        }

        double?[] minutes = [.. dish.Components.SelectMany(c => c.Steps).SelectMany(s => s.Times).Select(x => x.MinutesMin)];
        return minutes.Order().SequenceEqual(Minutes.Select(m => (double?)m).Order()) ? "" : "minutes " + string.Join(", ", minutes.Select(m => string.Create(CultureInfo.InvariantCulture, $"{m}")));
    }
}
