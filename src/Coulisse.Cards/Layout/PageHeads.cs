namespace Coulisse.Cards.Layout;

/// <summary>The line a printer sets over every page: the first line of the card, told again beside the number of a page. What stands between the two belongs to the page too; none of it is a food or a part.</summary>
internal static class PageHeads
{
    /// <summary>How far the line stands from the number of its page.</summary>
    private const int Near = 3;
    private const string Gap = "   ";
    private static readonly HashSet<int> None = [];

    /// <summary>Which lines belong to the pages, running heads among them. The first one is the name of the dish unless it has two ends far apart ("KITCHEN MANUAL        Section 4").</summary>
    public static HashSet<int> Of(List<RawLine> lines, string lang)
    {
        HashSet<int>? running = Running(lines, lang);
        if (lines.Count < 4 || lines[0].Text is not { Length: > 5 } head || !char.IsLetter(head[0]))
        {
            return running ?? None;
        }

        HashSet<int>? found = running;
        bool again = false;
        for (int i = 1; i < lines.Count; i++)
        {
            if (lines[i].Text != head)
            {
                continue;
            }

            int page = i - 1;
            while (page > 0 && i - page <= Near && !Furniture.Page(lines[page].Text))
            {
                page--;
            }

            bool above = page > 0 && i - page <= Near;
            if (above || i + 1 < lines.Count && Furniture.Page(lines[i + 1].Text))
            {
                found ??= [];
                again = true;
                for (int k = above ? page : i; k <= i; k++)
                {
                    found.Add(k);
                }
            }
        }

        if (again && found is not null && head.Contains(Gap, StringComparison.Ordinal))
        {
            found.Add(0);
        }

        return found ?? None;
    }

    private static HashSet<int>? Running(List<RawLine> lines, string lang)
    {
        HashSet<int>? found = null;
        for (int i = 0; i < lines.Count; i++)
        {
            if (RunningHeads.At(lines, i, lang))
            {
                (found ??= []).Add(i);
            }
        }

        return found;
    }
}
