using System.Globalization;
using System.Text;

namespace Coulisse.Kitchen.Planning.Tasks;

/// <summary>Gives every piece of work a name that does not depend on when it is done, so that a person can speak of it across plans.</summary>
internal static class TaskKeys
{
    /// <summary>Names the work: component and card line ("lemon-curd-34"), or the first words of what no card states; the second of a kind ends in ".2".</summary>
    public static void Name(List<PrepTask> tasks)
    {
        Dictionary<string, int> seen = new(StringComparer.Ordinal);
        for (int i = 0; i < tasks.Count; i++)
        {
            PrepTask t = tasks[i];
            string stem = t switch
            {
                { Component: { } component, Line: > 0 } => Short(component) + "-" + t.Line.ToString(CultureInfo.InvariantCulture),
                { Kind: TaskKind.Plate } => "plate-" + Words(t.Dish ?? t.Text, 4),
                { Component: { } component } => Short(component) + "-" + Words(t.Text, 2),
                _ => Words(t.Text, 3),
            };
            stem = t.ForStage ? "stage-" + stem : stem;
            int n = seen[stem] = seen.GetValueOrDefault(stem) + 1;
            tasks[i] = t with { Key = n == 1 ? stem : stem + "." + n.ToString(CultureInfo.InvariantCulture) };
        }
    }

    // A component's code says enough ("c1"); else two words of its name.
    private static string Short(string component)
    {
        string first = Words(component, 1);
        return first.Length is > 1 and <= 4 && char.IsLetter(first[0]) && first.Any(char.IsDigit) ? first : Words(component, 2);
    }

    private static string Words(string text, int most)
    {
        StringBuilder slug = new();
        int words = 1;
        foreach (char c in text.ToLowerInvariant())
        {
            if (char.IsLetterOrDigit(c))
            {
                slug.Append(c);
            }
            else if (slug.Length > 0 && slug[^1] != '-')
            {
                if (++words > most)
                {
                    break;
                }

                slug.Append('-');
            }
        }

        return slug.ToString().TrimEnd('-');
    }
}
