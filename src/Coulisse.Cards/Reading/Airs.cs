using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Heat of the air around a food where no oven is named: a smoker, a steamer, a combi, a braise in the oven. Read as the food's own it would say that the food was as hot.</summary>
internal static class Airs
{
    private const double Warm = 60;
    private const double Boiling = 100;
    private static readonly string[] Machines = ["combi", "combi oven", "rational", "smoker", "steamer", "kombidämpfer", "dämpfer", "konvektomat", "fumoir", "four vapeur", "ahumador", "affumicatore"];
    private static readonly string[] Goals = ["to", "until", "reaches", "hits", "reads", "bis", "auf", "jusqu'à", "hasta", "fino a", "is", "of", "limit", "limit:", "limit is"];
    private static readonly string[] Limits = ["exceed", "exceeds", "not above", "not over", "never above", "never over", "nicht über", "pas dépasser", "ne dépasse pas", "no superar", "no supere", "non superare", "non superi"];

    /// <summary>True for a figure that is of the air.</summary>
    /// <param name="before">What stands before it in its sentence, lower case.</param>
    /// <param name="op">The work told before it.</param>
    /// <param name="celsius">The figure.</param>
    public static bool Of(string before, string? op, double celsius)
    {
        if (celsius >= Boiling && Places.HasAny(before, Machines))
        {
            // "Bring the smoker to 110 °C": no food is meant.
            return true;
        }

        if (celsius < Warm || Places.Ends(before.TrimEnd(), Goals))
        {
            return false;
        }

        // What simmers in its pot in the oven is no hotter than it boils.
        return op is "smoke" or "steam" || op is "braise" && celsius > Boiling || Places.HasAny(before, Machines);
    }

    private static readonly WordList Steamers = new("steamer", "in steam", "Dämpfer", "Dampfgarer", "Dämpfeinsatz", "cuit-vapeur", "four vapeur", "à la vapeur", "vaporera", "al vapor", "vaporiera", "a vapore");

    /// <summary>True for a step that steams and bakes nothing: its heat is of wet air, and what is baked after it is no cooler or hotter for it.</summary>
    public static bool Steams(Step step) => !step.Operations.Any(o => o is "bake" or "roast" or "blind_bake" or "preheat_oven" or "gratinate") && (step.Operation is "steam" || Steamers.In(step.Text));

    private static readonly string[] Ovens = ["oven", "ovens", "rohr", "backrohr", "au four", "le four", "du four", "un four", "votre four", "four à", "four chaud", "four préchauffé", "four th", "horno", "forno"];
    private static readonly string[] Sugars = ["sugar", "caramel", "syrup", "sucre", "sirop", "zucker", "sirup", "karamell", "azúcar", "almíbar", "caramelo", "zucchero", "sciroppo", "caramello", "isomalt"];

    /// <summary>True where an oven is named before a figure, or right behind it. "Four hours at 80 °C" names none.</summary>
    public static bool Oven(string before, string after) =>
        Places.HasAny(before, Ovens) || Places.Ends(before.TrimEnd(' ', ':'), "four") || before.Contains("ofen", StringComparison.Ordinal) || before.Contains("オーブン", StringComparison.Ordinal)
        || after.StartsWith(" oven", StringComparison.Ordinal) || after.StartsWith(" ofen", StringComparison.Ordinal) || after.StartsWith(" horno", StringComparison.Ordinal) || after.StartsWith(" forno", StringComparison.Ordinal) || after.Contains("オーブン", StringComparison.Ordinal);

    /// <summary>True where sugar is brought to a heat that only an oven has else.</summary>
    public static bool Sugar(string before, string? op, double celsius) =>
        celsius is > 100 and <= 200 && (op is "caramel" or "cook_syrup" || op is not ("bake" or "roast" or "gratinate") && Places.Ends(before.TrimEnd(), Goals)) && Places.HasAny(before, Sugars);

    /// <summary>True where a bath is named behind a figure before its clause ends: "@ 76 °C x 16 h water bath".</summary>
    public static bool Bath(string after)
    {
        string clause = Baths.Clause(after);
        return clause.Contains("water bath", StringComparison.Ordinal) || clause.Contains("waterbath", StringComparison.Ordinal) || clause.Contains("sous vide", StringComparison.Ordinal);
    }

    /// <summary>True where the figure must not be passed.</summary>
    public static bool Passed(string before) => Places.HasAny(before, Limits) || Places.Ends(before.TrimEnd(), "above", "over") && Places.HasAny(before, "never", "not", "don't");
}
