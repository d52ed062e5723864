using System.Globalization;
using System.Net;
using System.Text;
using System.Text.Json;
using System.Xml;

namespace Coulisse.Formats.In;

/// <summary>Writes one recipe of the schema.org vocabulary as card text.</summary>
internal static class RecipeCard
{
    private const int MostSteps = 5000;

    public static string Of(JsonElement recipe, int recipes)
    {
        if (Carried(recipe) is { } card)
        {
            return card;
        }

        StringBuilder b = new();
        b.Append("# ").AppendLine(One(Text(recipe, "name")) is { Length: > 0 } name ? name : "Untitled").AppendLine();
        Yield(recipe, b);
        Times(recipe, b);
        if (recipes > 1)
        {
            b.Append("Note: the source holds ").Append(recipes.ToString(CultureInfo.InvariantCulture)).AppendLine(" recipes; this is the first.").AppendLine();
        }

        List<string> tips = [];
        List<(string Name, List<string> Steps)> sections = Sections(recipe, tips);
        List<(string Name, List<string> Lines)> groups = Groups(recipe);
        HashSet<int> told = [];
        foreach ((string group, List<string> lines) in groups)
        {
            if (group.Length > 0)
            {
                b.Append("## ").AppendLine(group).AppendLine();
            }

            lines.ForEach(l => b.Append("- ").AppendLine(l));
            int same = sections.FindIndex(s => ListHeads.Same(group, s.Name));
            if (same >= 0 && told.Add(same))
            {
                b.AppendLine();
                Steps(sections[same].Steps, b);
            }

            b.AppendLine();
        }

        for (int i = 0; i < sections.Count; i++)
        {
            if (!told.Contains(i) && sections[i].Steps.Count > 0)
            {
                b.Append("## ").AppendLine(sections[i].Name.Length > 0 ? sections[i].Name : "Method").AppendLine();
                Steps(sections[i].Steps, b);
                b.AppendLine();
            }
        }

        if (tips.RemoveAll(t => t.Length == 0) >= 0 && tips.Count > 0)
        {
            b.AppendLine("## Notes").AppendLine();
            tips.ForEach(t => b.AppendLine(t).AppendLine());
        }

        return b.ToString();
    }

    /// <summary>The card that goes with data written here; null when there is none, or when the list or the steps beside it were changed since: then those speak.</summary>
    private static string? Carried(JsonElement recipe)
    {
        if (!recipe.TryGetProperty("encodingFormat", out JsonElement format) || format.ValueKind != JsonValueKind.String || format.GetString() != Out.RecipeData.CardFormat
            || !recipe.TryGetProperty("text", out JsonElement text) || text.ValueKind != JsonValueKind.String)
        {
            return null;
        }

        string card = text.GetString()!;
        string[] bodies = [.. card.Split('\n').Select(l => Body(l.TrimEnd('\r')))];
        HashSet<string> lines = [.. bodies, .. bodies.Select(One)];
        bool same = Texts(recipe, "recipeIngredient").All(l => l.EndsWith(':') || lines.Contains(l)) && Sections(recipe).SelectMany(s => s.Steps).All(lines.Contains);
        return same ? card : null;

        static string Body(string l)
        {
            int i = l.StartsWith("- ", StringComparison.Ordinal) ? 2 : 0;
            int digits = i;
            while (i == 0 && digits < l.Length && char.IsAsciiDigit(l[digits]))
            {
                digits++;
            }

            return digits > 0 && digits + 1 < l.Length && l[digits] == '.' && l[digits + 1] == ' ' ? l[(digits + 2)..] : l[i..];
        }
    }

    private static void Steps(List<string> steps, StringBuilder b)
    {
        for (int i = 0; i < steps.Count; i++)
        {
            b.Append((i + 1).ToString(CultureInfo.InvariantCulture)).Append(". ").AppendLine(steps[i]);
        }
    }

    /// <summary>Of "6" and "6 slices" the wordier speaks.</summary>
    private static void Yield(JsonElement recipe, StringBuilder b)
    {
        string yield = Texts(recipe, "recipeYield").Concat(Texts(recipe, "yield")).Select(One).OrderByDescending(y => y.Length).FirstOrDefault() ?? "";
        if (yield.Length == 0)
        {
            return;
        }

        bool bare = yield.All(char.IsAsciiDigit);
        bool says = !char.IsAsciiDigit(yield[0]);
        b.Append(says ? "" : bare ? "Serves " : yield.Contains("serving", StringComparison.OrdinalIgnoreCase) || yield.Contains("portion", StringComparison.OrdinalIgnoreCase) || yield.Contains("people", StringComparison.OrdinalIgnoreCase) ? "Serves " : "Makes ").Append(yield).AppendLine(".").AppendLine();
    }

    private static void Times(JsonElement recipe, StringBuilder b)
    {
        foreach ((string key, string words) in (ReadOnlySpan<(string, string)>)[("prepTime", "Preparation"), ("cookTime", "Cooking"), ("totalTime", "In all")])
        {
            if (Text(recipe, key) is { Length: > 0 } iso && Minutes(iso) is { } minutes)
            {
                b.AppendLine(FormattableString.Invariant($"{words}: {minutes:0.##} min.")).AppendLine();
            }
        }
    }

    /// <summary>ISO 8601 duration in minutes; null when it is none.</summary>
    internal static double? Minutes(string iso)
    {
        try
        {
            return iso.Length is > 2 and < 40 ? XmlConvert.ToTimeSpan(iso.Trim()).TotalMinutes : null;
        }
        catch (Exception e) when (e is FormatException or OverflowException)
        {
            return null;
        }
    }

    private static List<(string Name, List<string> Lines)> Groups(JsonElement recipe)
    {
        List<(string Name, List<string> Lines)> groups = [("", [])];
        List<string> list = [.. Texts(recipe, "recipeIngredient").Concat(Texts(recipe, "ingredients")).SelectMany(raw => raw.Split('\n')).Select(One).Where(l => l.Length > 0)];
        List<(string Name, List<string> Steps)> sections = Sections(recipe);
        ListHeads heads = new(list, sections.Select(s => s.Name), sections.SelectMany(s => s.Steps));
        for (int i = 0; i < list.Count; i++)
        {
            if (heads.At(i))
            {
                groups.Add((list[i].TrimEnd(':', ' '), []));
            }
            else
            {
                groups[^1].Lines.Add(list[i]);
            }
        }

        groups.RemoveAll(g => g.Lines.Count == 0 && g.Name.Length == 0);
        return groups;
    }

    /// <summary>Steps however they are nested: one string, strings, steps, sections, sections in sections.</summary>
    private static List<(string Name, List<string> Steps)> Sections(JsonElement recipe, List<string>? tips = null)
    {
        List<(string Name, List<string> Steps)> sections = [("", [])];
        if (!recipe.TryGetProperty("recipeInstructions", out JsonElement all))
        {
            return sections;
        }

        Stack<(JsonElement Element, string Section)> open = new([(all, "")]);
        int steps = 0;
        while (open.Count > 0 && steps < MostSteps)
        {
            (JsonElement e, string section) = open.Pop();
            switch (e.ValueKind)
            {
                case JsonValueKind.String:
                    foreach (string line in Plain(e.GetString()!).Split('\n').Select(One).Where(l => l.Length > 0))
                    {
                        steps++;
                        Add(sections, section, line);
                    }

                    break;
                case JsonValueKind.Array:
                    foreach (JsonElement x in e.EnumerateArray().Reverse())
                    {
                        open.Push((x, section));
                    }

                    break;
                case JsonValueKind.Object when e.TryGetProperty("itemListElement", out JsonElement inner):
                    open.Push((inner, One(Text(e, "name")) is { Length: > 0 } name && !Is(e, "HowToStep") ? name : section));
                    break;
                case JsonValueKind.Object when e.TryGetProperty("item", out JsonElement wrapped) && wrapped.ValueKind is JsonValueKind.Object or JsonValueKind.Array:
                    // A step in the wrapping of a list: {"@type": "ListItem", "item": {…}}.
                    open.Push((wrapped, section));
                    break;
                case JsonValueKind.Object when Is(e, "HowToTip"):
                    tips?.Add(One(Text(e, "text") is { Length: > 0 } tip ? tip : Text(e, "name")));
                    break;
                case JsonValueKind.Object:
                    string text = One(Text(e, "text"));
                    text = text.Length > 0 ? text : One(Text(e, "name"));
                    if (text.Length > 0)
                    {
                        steps++;
                        Add(sections, section, text);
                    }

                    break;
            }
        }

        return sections;
    }

    private static bool Is(JsonElement e, string type) => e.TryGetProperty("@type", out JsonElement t) && t.ValueKind == JsonValueKind.String && t.GetString() == type;

    private static void Add(List<(string Name, List<string> Steps)> sections, string section, string step)
    {
        if (sections[^1].Name != section)
        {
            sections.Add((section, []));
        }

        sections[^1].Steps.Add(step);
    }

    private static string Text(JsonElement e, string key) => Texts(e, key).FirstOrDefault() ?? "";

    private static IEnumerable<string> Texts(JsonElement e, string key)
    {
        if (!e.TryGetProperty(key, out JsonElement v))
        {
            yield break;
        }

        foreach (JsonElement x in v.ValueKind == JsonValueKind.Array ? v.EnumerateArray().AsEnumerable() : [v])
        {
            string? s = x.ValueKind switch
            {
                JsonValueKind.String => x.GetString(),
                JsonValueKind.Number => x.GetRawText(),
                JsonValueKind.Object => Amount(x),
                _ => null,
            };
            if (!string.IsNullOrWhiteSpace(s))
            {
                yield return s;
            }
        }
    }

    /// <summary>An ingredient told as a value with a unit and a name.</summary>
    private static string Amount(JsonElement e)
    {
        string value = e.TryGetProperty("value", out JsonElement v) && v.ValueKind is JsonValueKind.String or JsonValueKind.Number ? v.ToString() : "";
        string unit = e.TryGetProperty("unitText", out JsonElement u) && u.ValueKind == JsonValueKind.String ? u.GetString()! : "";
        string name = e.TryGetProperty("name", out JsonElement n) && n.ValueKind == JsonValueKind.String ? n.GetString()! : "";
        return $"{value} {unit} {name}".Trim();
    }

    /// <summary>Tags and entities resolved; breaks stay as line ends.</summary>
    private static string Plain(string s) => s.Contains('<') || s.Contains('&') ? RecipePage.Words(WebUtility.HtmlDecode(s.Contains('<') ? s : WebUtility.HtmlDecode(s))) : s;

    /// <summary>On one line, without the marks that would make it a heading or an item.</summary>
    private static string One(string s)
    {
        string line = string.Join(' ', Plain(s).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        return line.TrimStart('#', '>', ' ');
    }
}
