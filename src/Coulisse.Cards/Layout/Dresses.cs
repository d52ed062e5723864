using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>Headings in a dress of their own: in a box ("【生地】", "[Dough]"), between strokes ("--- Dough ---", "== Dough =="), in italics over a list, behind a flag ("■生地", "▼ Sauce").</summary>
internal static class Dresses
{
    private const int Longest = 60;
    private static readonly System.Buffers.SearchValues<char> Inside = System.Buffers.SearchValues.Create("()[]<>/=");
    private const string Flags = "■□◆◇●○▼▽▲△★☆◎▶►»§❖✦";

    /// <summary>The name in its dress; null for any other line.</summary>
    public static string? Of(List<RawLine> lines, int i, string lang)
    {
        string s = lines[i].Text;
        if (s.Length is < 3 or > Longest)
        {
            return null;
        }

        if ((s[0], s[^1]) is ('【', '】') or ('〈', '〉') or ('《', '》') or ('〔', '〕') or ('［', '］') or ('＜', '＞') or ('≪', '≫'))
        {
            return Name(s.AsSpan(1, s.Length - 2));
        }

        if ((s[0], s[^1]) is ('[', ']') or ('<', '>') or ('«', '»') or ('（', '）') or ('(', ')') && !s.AsSpan(1, s.Length - 2).ContainsAny(Inside) && Name(s.AsSpan(1, s.Length - 2)) is { } boxed && !Looks.Amounted(boxed, lang) && Opens(lines, i) && Over(lines, i, lang))
        {
            return boxed;
        }

        if (s[0] is '-' or '=' or '~' or '*' or '_' or '–' or '—' or '/' && s[^1] == s[0] && s.Length > 4)
        {
            string inner = s.Trim(s[0]).Trim();
            int strokes = s.Length - s.TrimStart(s[0]).Length;
            bool single = strokes == 1 && s[0] is not ('*' or '_');
            // "*Granité*": italics head only what is over a list.
            if (inner.Length > 1 && inner.Length < s.Length - 1 && !inner.Contains(s[0], StringComparison.Ordinal) && (!single || s[1] == ' ') && char.IsLetterOrDigit(inner[0]) && Name(inner) is { } name && !Looks.Amounted(name, lang) && !Looks.Statement(name, lang) && (strokes > 1 && s[0] is not ('*' or '_') || Over(lines, i, lang)))
            {
                return name;
            }
        }

        return null;
    }

    /// <summary>The name behind a flag that no other line of its block carries; null for any other line.</summary>
    public static string? Flagged(List<RawLine> lines, int i, string lang)
    {
        string s = lines[i].Text;
        if (s.Length is > 2 and < Longest && Flags.Contains(s[0], StringComparison.Ordinal) && Folding.Line(s.AsSpan(1)).Trimmed(" :：") is var section && Sections.Of(section, lang) is not null)
        {
            // "●作り方" over its steps, whatever other heads carry
            return section;
        }

        if (s.Length is < 2 or > Longest || !Flags.Contains(s[0], StringComparison.Ordinal) || i + 1 >= lines.Count || lines[i + 1].Text[0] == s[0])
        {
            return null;
        }

        string name = Folding.Line(s.AsSpan(1)).Trimmed(" :");
        return name.Length > 0 && !Looks.Amounted(name, lang) && name[^1] is not ('.' or '。') && Over(lines, i, lang) ? name : null;
    }

    /// <summary>A heading dressed as a bullet: bare, opening the list (or the list has such headings), with amounts behind it.</summary>
    /// <param name="body">The words of the bullet.</param>
    /// <param name="next">The line under it.</param>
    /// <param name="opens">True where no item stands before it.</param>
    /// <param name="named">True when a part was named before.</param>
    /// <param name="headed">True when the list has headings so dressed.</param>
    /// <param name="lang">The language of the card.</param>
    public static bool Bulleted(string body, string next, bool opens, bool named, bool headed, string lang)
    {
        string bare = body.TrimEnd(':');
        if (!Looks.Heading(bare))
        {
            return false;
        }

        bool finish = Lexicon.Longest("heading", body, 0, 3, lang, out int end) is not null && end >= bare.Length;
        bool behind = Looks.Amounted(Reading.Marks.Strip(Folding.Line(next)), lang);
        // "Meringue" among bullets is a part where the list has headings so dressed and parts are called by that word.
        return finish || (body[^1] == ':' || behind && (opens && !named || headed)) && (!Looks.Food(body, lang) || headed && behind && (opens && !named || Parts.Called(body, lang)));
    }

    /// <summary>True when a later bullet of the list is a bare name that parts are called by, over an amount: then the first one heads too, were it a food ("Masa quebrada").</summary>
    public static bool Rowed(List<RawLine> lines, int i, string lang)
    {
        if (i + 3 >= lines.Count || !Looks.Amounted(Reading.Marks.Strip(Folding.Line(lines[i + 1].Text)), lang) || !Parts.Numberless(lines[i].Text))
        {
            return false;
        }

        for (int k = i + 2; k + 1 < lines.Count && k < i + 60 && Looks.Bullet(lines[k].Text); k++)
        {
            string body = Reading.Marks.Strip(Folding.Line(lines[k].Text));
            if (body.Length > 0 && Parts.Numberless(body) && Looks.Heading(body.TrimEnd(':')) && Parts.Called(body, lang) && !Looks.Food(body, lang) && Looks.Amounted(Reading.Marks.Strip(Folding.Line(lines[k + 1].Text)), lang))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"BESCIAMELLA" right over a table with bars, on a card that has its title: the name of the part the table lists; null for any other line.</summary>
    public static string? Over(List<RawLine> lines, int i, bool titled, string lang)
    {
        if (!titled || i + 2 >= lines.Count || lines[i + 1].Block != lines[i].Block || lines[i + 1].Text[0] != '|' || lines[i + 2].Text[0] != '|' || lines[i + 2].Block != lines[i].Block || lines[i].Text.Contains('|') || Looks.Bullet(lines[i].Text))
        {
            return null;
        }

        string name = Folding.Line(lines[i].Text).Trimmed(" :");
        return name.Length > 1 && Looks.Heading(name) && Parts.Numberless(name) && !Looks.Statement(name, lang) ? name : null;
    }

    /// <summary>"• Riso" over lines without a mark that stand further in and tell amounts: the name of the part they list; null for any other line.</summary>
    public static string? Indented(List<RawLine> lines, int i, string lang)
    {
        if (!Looks.Bullet(lines[i].Text) || i + 2 >= lines.Count || !Under(lines, i, 1, lang))
        {
            return null;
        }

        // Without room before them two items show that the mark is the name's alone.
        string name = Reading.Marks.Strip(Folding.Line(lines[i].Text)).Trimmed(" :");
        bool further = lines[i + 1].Indent > lines[i].Indent;
        return name.Length is > 1 and < 40 && char.IsLetter(name[0]) && name[^1] is not ('.' or ',' or ';') && Parts.Numberless(name) && (further && Looks.Heading(name) || Under(lines, i, 2, lang) && (i == 0 || !Looks.Bullet(lines[i - 1].Text) && !Looks.Used(name, lang))) ? name : null;
    }

    /// <summary>True where so many lines behind it stands an item without a mark.</summary>
    private static bool Under(List<RawLine> lines, int i, int below, string lang) =>
        lines[i + below].Block == lines[i].Block && !Looks.Bullet(lines[i + below].Text) && Parts.Listed(lines[i + below].Text, lang) && !Looks.Work(Folding.Line(lines[i + below].Text), lang);

    private static string? Name(ReadOnlySpan<char> s) => Folding.Line(s).Trimmed(" :#") is { Length: > 0 } name && name.Any(char.IsLetterOrDigit) && name.Count(c => c == ' ') < 8 && name[^1] is not ('.' or '。' or '!') ? name : null;

    private static bool Opens(List<RawLine> lines, int i) => i == 0 || lines[i - 1].Block != lines[i].Block;

    /// <summary>True when the next line is an item.</summary>
    private static bool Over(List<RawLine> lines, int i, string lang) =>
        i + 1 < lines.Count && lines[i + 1].Text is var next && (Looks.Bullet(next) || Reading.Marks.ListNumber(next, 0) > 0 || Leaders.In(next) || Folding.Line(next) is { Length: > 0 } body && Looks.Amounted(Reading.Marks.Strip(body), lang) && !Looks.Statement(body, lang));
}
