using Coulisse.Cards.Words;
using Coulisse.Matter.Foods;

namespace Coulisse.Cards.Reading;

/// <summary>"400 g mixed seafood (prawns, mussels, squid)": a mixture that the table does not know, and in brackets what is in it. As a preparation their allergens would be lost, so that each is a food of the line, with no amount of its own; the weight stays that of the mixture.</summary>
internal static class Members
{
    /// <summary>Adds the members of a mixture behind it.</summary>
    public static void Add(List<Draft> drafts, string s, string lang, FoodIds? ids)
    {
        if (ids is null || drafts is not [{ Known: null, Amount: not null, Preparation: { } told, Food.Length: > 2 } whole] || s[^1] != ')' || s.IndexOf('(') is var open && (open < 4 || s.IndexOf('(', open + 1) > 0))
        {
            return;
        }

        string inside = s[(open + 1)..^1].Trim();
        if (told != inside || NameList.Of(inside, lang) is not { } names || !names.Exists(n => FoodIds.Match(n, lang) is { } m && FoodTable.Default.Find(m.Id) is { Contains.Length: > 0 }))
        {
            return;
        }

        foreach (string name in names)
        {
            Draft member = new(why: false) { Food = name, Use = "in the " + whole.Food };
            member.Known = ids.Of(member, s);
            drafts.Add(member);
        }
    }
}
