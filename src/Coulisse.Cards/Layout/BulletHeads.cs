using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>A card every line of which carries a bullet, headings too ("* Pulpo", "* 2 kg pulpo", "* Elaboración"), as note programs of telephones give it. That the word of a method stands among the bullets says so; in a list without it "* Salt" between two amounts is an item.</summary>
internal static class BulletHeads
{
    private const int MostLines = 400;
    private const int Fewest = 6;

    /// <summary>The lines that head something, with their level; none for any other card.</summary>
    public static Dictionary<int, int> Of(List<RawLine> lines, string lang)
    {
        Dictionary<int, int> heads = [];
        if (lines.Count is < Fewest or > MostLines || !Looks.Bullet(lines[0].Text))
        {
            return heads;
        }

        int last = 0;
        while (last < lines.Count && Looks.Bullet(lines[last].Text) && !(Body(lines, last) is { Length: > 2 } b && Sections.Of(b.TrimmedEnd(": "), lang) == "method"))
        {
            last++;
        }

        if (last < Fewest - 1 || last >= lines.Count || !Looks.Bullet(lines[last].Text))
        {
            return heads;
        }

        for (int i = 0; i < last; i++)
        {
            string body = Body(lines, i);
            if (i == 0 && Titled(body, lang))
            {
                heads[0] = 1;
                continue;
            }

            if (!Bare(body, lang))
            {
                continue;
            }

            string next = Body(lines, i + 1);
            bool over = Looks.Amounted(next, lang) || i + 1 < last && Bare(next, lang) && !Looks.Food(body, lang) && Looks.Food(next, lang);
            if (over && (i == 0 || heads.ContainsKey(i - 1) && heads[i - 1] == 1 || Looks.Amounted(Body(lines, i - 1), lang)))
            {
                heads[i] = 2;
            }
        }

        heads[last] = 2;
        return heads;
    }

    private static string Body(List<RawLine> lines, int i) => Marks.Strip(Folding.Line(lines[i].Text));

    private static bool Bare(string body, string lang) => body.Length > 2 && Parts.Numberless(body) && Looks.Heading(body.TrimEnd(':')) && !Looks.Amounted(body, lang) && !Looks.Used(body, lang);

    /// <summary>"PULPO A LA BRASA (6 pax)": capitals, or a yield behind the name.</summary>
    private static bool Titled(string body, string lang) => body.Length > 4 && !Looks.Amounted(Titles.Unbracketed(body), lang) && (Looks.Capitals(Titles.Unbracketed(body)) || body[^1] == ')' && YieldWords.OfTitle(body, default, lang) is not null);
}
