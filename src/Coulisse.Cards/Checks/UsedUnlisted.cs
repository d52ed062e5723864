using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;
using Coulisse.Matter.Foods;

namespace Coulisse.Cards.Checks;

/// <summary>A food a step takes that no list holds: what an allergen sheet made from the lists would miss. English cards, foods of our table.</summary>
internal static class UsedUnlisted
{
    private const double Sure = 0.95;
    private const int MostWords = 3;

    // What stands behind these is taken. Greasing and dusting take what stands in every kitchen.
    private static readonly HashSet<string> Takes = new(StringComparer.Ordinal) { "beat", "whisk", "whip", "cream", "mix", "combine", "fold", "stir", "add", "blend", "toss", "knead", "sprinkle", "scatter", "melt", "adding", "folding", "whisking" };
    private static readonly HashSet<string> Steers = new(StringComparer.Ordinal) { "in", "into", "through", "together", "the", "a", "an", "of", "all", "both", "half", "some", "more", "extra", "any", "other", "remaining", "rest", "also", "then", "with", "lightly", "gently", "quickly", "well", "over", "up" };
    // Other work begins here: what stands behind it is not taken by the verb before.
    private static readonly HashSet<string> Works = new(StringComparer.Ordinal) { "serve", "served", "serving", "bake", "cook", "pour", "chill", "leave", "fry", "roast", "garnish", "top", "spoon", "transfer", "set", "line", "grease", "brush", "dust", "cover", "boil", "simmer", "bring", "heat", "season", "decorate", "return", "finish" };
    private static readonly HashSet<string> Parts = new(StringComparer.Ordinal) { ",", "and", "&", "+", "with", "plus", "or" };
    private static readonly HashSet<string> Stops = new(StringComparer.Ordinal) { "until", "till", "for", "to", "at", "on", "from", "while", "before", "after", "as", "so", "which", "that", "using", "by", "if", "when", "where", "like", "without", "onto", "under", "between", "is", "are", "has", "have", "off", "out", "no", "not", "one", "two", "three", "instead" };
    private static readonly HashSet<string> States = new(StringComparer.Ordinal) { "melted", "softened", "soft", "cold", "hot", "warm", "cool", "cooled", "chilled", "chopped", "toasted", "roasted", "grated", "sliced", "diced", "crushed", "ground", "fresh", "dried", "sifted", "beaten", "whisked", "drained", "peeled", "cooked", "frozen", "whole", "plain", "good", "finely", "coarsely", "roughly", "freshly", "boiling", "shredded", "flaked", "little", "large", "small", "separated", "soaked" };

    // Stands in every kitchen, is made by a step, or is a part or a state of what is listed.
    private static readonly HashSet<string> Passed = new(StringComparer.Ordinal)
    {
        "water", "salt", "ice", "oil", "pepper", "flour", "seasoning", "steam",
        "dough", "batter", "custard", "caramel", "ganache", "syrup", "meringue", "sauce", "gravy", "stock", "broth", "glaze", "icing", "frosting", "filling", "mixture", "mix", "paste", "puree", "jam", "pastry", "crumb", "sponge", "cake", "bread", "base", "roux", "mayonnaise", "vinaigrette", "dressing", "marinade", "brine", "jelly", "gel", "foam", "mousse", "praline", "soup", "salad", "pickle", "crust", "topping", "crumble", "buttercream", "starter", "levain", "poolish", "sourdough", "leaven", "biga", "sponge", "pesto", "curd", "compote", "jus", "liquid", "fat", "stew", "porridge", "polenta", "risotto", "pudding", "pie", "tart", "toffee", "fudge", "nougat", "stuffing", "toast", "croutons", "crumbs", "biscuit", "biscuits", "cookies", "breadcrumbs", "tempering", "wash", "infusion", "reduction", "emulsion", "whey", "beurre", "béchamel", "bechamel", "hummus", "kimchi", "salsa", "relish", "chutney", "garnish", "brittle", "nibs", "crisps",
        "zest", "juice", "juices", "peel", "rind", "yolk", "yolks", "white", "whites", "leaves", "leaf", "seeds", "stems", "stalks", "skin", "skins", "bones", "flesh", "meat", "heart", "core", "shell", "shells", "kernels", "root", "tops", "florets", "fillets", "flakes", "powder", "beans", "tea", "coffee", "slices", "pieces", "dice", "cubes",
        "fish", "herbs", "spices", "vegetables", "veg", "fruit", "fruits", "berries", "greens", "aromatics", "seafood", "shellfish", "pasta", "noodles", "dry", "wet", "colour", "color", "colouring", "food", "rub", "curry", "drink", "alcohol", "spirit", "wine", "sugars", "raising", "gelatine", "gelatin", "yeast", "bouillon",
    };

    // A general word is met by any of its kinds.
    internal static readonly (string Word, string[] Kinds)[] Kinds =
    [
        ("fish", ["cod", "salmon", "trout", "hake", "halibut", "turbot", "plaice", "sole", "bass", "bream", "mackerel", "haddock", "monkfish", "tuna", "pollock", "char", "zander", "sardine", "herring"]), ("meat", ["beef", "lamb", "pork", "veal", "venison", "mince", "goat", "duck"]), ("leaves", ["lettuce", "gem", "spinach", "rocket", "chard"]), ("bread", ["loaf", "sourdough", "baguette", "ciabatta", "brioche", "focaccia"]), ("flour", ["tipo", "type", "farine", "mehl"]),
        ("cheese", ["parmesan", "gruy", "cheddar", "comt", "mozzarella", "ricotta", "feta", "pecorino", "emmental", "mascarpone", "gouda", "brie", "halloumi", "manchego", "quark", "gorgonzola", "stilton", "roquefort", "taleggio", "fontina", "raclette", "camembert", "reblochon", "paneer", "provolone"]),
        ("nuts", ["almond", "walnut", "hazelnut", "pecan", "pistachio", "cashew", "peanut", "macadamia", "brazil", "pine"]),
        ("cream", ["creme", "crème", "mascarpone", "sahne", "panna"]),
        ("milk", ["buttermilk", "lait", "milch", "latte"]),
        ("onion", ["shallot", "allium", "scallion", "cipoll"]), ("onions", ["shallot", "allium", "scallion"]),
        ("potato", ["maris", "charlotte", "spud", "desiree", "king edward"]), ("potatoes", ["maris", "charlotte", "spud", "desiree", "king edward", "ratte"]),
        ("chocolate", ["couverture", "callets", "valrhona", "guanaja", "callebaut", "cocoa", "% "]),
        ("rice", ["arborio", "basmati", "carnaroli", "jasmine", "bomba", "vialone"]),
        ("sugar", ["muscovado", "demerara", "icing", "jaggery", "panela", "isomalt", "dextrose", "trehalose", "caster", "honey"]),
        ("mushrooms", ["cep", "shiitake", "chanterelle", "porcini", "girolle", "morel", "oyster", "enoki", "portobello"]),
        ("prawns", ["shrimp", "langoustine"]), ("shrimp", ["prawn"]),
        ("chicken", ["thigh", "wing", "breast", "drumstick", "poussin", "bird", "supreme"]),
        ("beef", ["steak", "mince", "brisket", "sirloin", "chuck", "shin", "rib", "cheek", "oxtail"]), ("pork", ["belly", "bacon", "ham", "loin", "shoulder", "cheek", "pancetta", "sausage"]), ("lamb", ["shoulder", "leg", "rack", "shank", "neck"]),
        ("lettuce", ["gem", "cos", "romaine", "salad", "leaves"]), ("lentils", ["puy", "dal", "beluga"]), ("vinegar", ["sherry", "balsamic"]), ("tomatoes", ["passata", "polpa", "san marzano"]),
    ];

    public static IEnumerable<Remark> Of(Dish dish)
    {
        if (dish.Language != "en" || dish.Components.All(c => c.Ingredients.IsEmpty))
        {
            yield break;
        }

        string listed = Folding.Key(string.Join('\n', dish.Components.SelectMany(c => c.Ingredients.Select(l => l.Text + " " + l.Group).Append(c.Name).Concat(c.Notes.Select(n => n.Text)))
            .Concat(dish.Notes.Concat(dish.Unread).Select(n => n.Text)).Concat(dish.Variants.SelectMany(v => v.Ingredients).Select(l => l.Text))));
        HashSet<string> ids = [.. dish.Components.SelectMany(c => c.Ingredients).SelectMany(l => l.Foods).Select(f => f.FoodId ?? FoodIds.Match(f.Food, "en")?.Id).OfType<string>()];
        Dictionary<string, Food?> known = new(StringComparer.Ordinal);
        HashSet<string> said = [];
        foreach (Step s in dish.Components.Where(c => !c.Ingredients.IsEmpty).SelectMany(c => c.Steps))
        {
            foreach (string name in Taken(s.Text))
            {
                if (!known.TryGetValue(name, out Food? unlisted))
                {
                    known[name] = unlisted = Unlisted(name, listed, ids);
                }

                if (unlisted is { } food && said.Add(food.Id))
                {
                    string allergen = food.Contains.IsEmpty ? "" : $" ({string.Join(", ", food.Contains)}: an allergen)";
                    yield return new Remark(s.Span.Line, "used unlisted", $"The step takes {name}{allergen}, which no list holds: “{s.Text}”.");
                }
            }
        }
    }

    private static Food? Unlisted(string name, string listed, HashSet<string> ids)
    {
        string[] words = Folding.Key(name).Split(' ');
        if (words is ["yolk" or "yolks"] && !listed.Contains("egg", StringComparison.Ordinal) && !listed.Contains("yolk", StringComparison.Ordinal))
        {
            return FoodTable.Default.Find("egg");
        }

        if (words.Any(w => Passed.Contains(w) || Held(w, listed)) || FoodIds.Match(name, "en") is not { Confidence: >= Sure } match || ids.Any(id => id == match.Id || Kin(id, match.Id)))
        {
            return null;
        }

        // "cream" and "crème fraîche", "cheese" and "gruyère": the general word is met.
        return Kinds.Any(k => words[^1] == k.Word && k.Kinds.Any(kind => listed.Contains(kind, StringComparison.Ordinal))) ? null : FoodTable.Default.Find(match.Id);
    }

    private static bool Held(string word, string listed)
    {
        string stem = word.EndsWith("ies", StringComparison.Ordinal) ? word[..^3] : word.EndsWith("oes", StringComparison.Ordinal) ? word[..^2] : word.TrimEnd('s');
        return listed.Contains(stem, StringComparison.Ordinal);
    }

    /// <summary>"coriander" and "coriander-leaf", "cheddar" and "cheddar-mature": one food in two rows.</summary>
    private static bool Kin(string a, string b) => a.Split('-').Intersect(b.Split('-'), StringComparer.Ordinal).Any(w => w.Length > 3 && w is not ("fresh" or "dried" or "whole" or "milk" or "seed" or "leaf" or "sauce" or "white" or "black" or "green"));

    /// <summary>The names behind the verbs that take: "beat the eggs and sugar, fold in the flour, carrots and walnuts".</summary>
    private static IEnumerable<string> Taken(string text)
    {
        bool taking = false;
        bool begins = true;
        List<string> name = [];
        for (int i = 0; i < text.Length;)
        {
            int end = Places.WordEnd(text, i);
            string word = Folding.Lower(text[i..end]);
            bool digit = char.IsAsciiDigit(text[i]);
            i = end;
            if (word == " ")
            {
                continue;
            }

            // "cream the butter" is work, "coconut cream" and "the cream" are none
            bool verb = Takes.Contains(word) && name.Count == 0 && (word != "cream" || begins);
            begins = word is "." or ";" or ":" or "then";
            bool parts = Parts.Contains(word);
            bool ends = verb || digit || word is "." or ";" or ":" or "(" or ")" or "–" or "-" or "/" || Stops.Contains(word) || Works.Contains(word) || (Steers.Contains(word) && name.Count > 0) || (Takes.Contains(word) && word != "cream");
            if (parts || ends)
            {
                if (taking && name.Count is > 0 and <= MostWords && !digit)
                {
                    yield return string.Join(' ', name);
                }

                name.Clear();
                // "in a bowl, beat": what stands behind a comma goes on being taken until another word ends it
                taking = verb || (taking && parts);
            }
            else if (taking && !Steers.Contains(word) && !States.Contains(word))
            {
                name.Add(word);
            }
            else if (taking && word is "into")
            {
                taking = false;
            }
        }

        if (taking && name.Count is > 0 and <= MostWords)
        {
            yield return string.Join(' ', name);
        }
    }
}
