using Coulisse.Cards.Words;

namespace Coulisse.Cards.Checks;

/// <summary>Liquid to solid where the method fixes what comes of it: doughs that are kneaded, sponges and cakes that are baked, rice boiled in what is listed.</summary>
/// <remarks>Limits are common practice without a source, set wide: a kneaded dough has 20 to 150 g of moist foods to 100 g of flour (bread 50 to 100, pasta 50 to 60, short pastry mostly fat); a sponge at most 300 g of liquid (most hold under 150); rice at least 80 g to 100 g and at most 2,000.</remarks>
internal static class Wetness
{
    private const double LeastDough = 0.2;
    private const double MostDough = 1.5;
    private const double MostSponge = 3;
    private const double LeastRice = 0.8;
    private const double MostRice = 20;

    private static readonly string[] Flours = ["flour", "farine", "mehl", "harina", "farina", "semolina", "wholemeal", "Weizenmehl", "Roggenmehl", "Dinkelmehl"];
    private static readonly string[] Liquids = ["water", "milk", "buttermilk", "beer", "stock", "broth", "juice", "wine", "cream", "eau", "lait", "wasser", "milch", "agua", "leche", "acqua", "latte", "brodo", "bouillon", "Brühe", "caldo"];
    private static readonly string[] Dry = ["salt", "sel", "salz", "sal", "sale", "sugar", "sucre", "zucker", "azúcar", "zucchero", "yeast", "levure", "hefe", "levadura", "lievito", "baking", "powder", "seeds", "nuts"];
    private static readonly string[] Knead = ["knead", "kneading", "pétrir", "pétrissez", "kneten", "verkneten", "amasar", "impastare", "impasta"];
    private static readonly string[] Sponges = ["sponge", "génoise", "genoise", "muffins", "muffin", "scones", "biscuit", "rührteig", "bizcocho", "pan di spagna", "cupcakes", "cake"];
    private static readonly string[] Wetted = ["soak", "syrup", "custard", "ganache", "pour over", "cheesecake", "pudding", "milk bath", "tres leches", "glaze", "frosting", "filling", "sauce", "simmer", "boil", "ice cream", "imbiber", "tränken"];
    private static readonly string[] Stages = ["biga", "poolish", "levain", "starter", "preferment", "pre-ferment", "sourdough", "Vorteig", "Sauerteig", "masa madre", "pasta madre", "lievito madre", "tangzhong"];
    private static readonly string[] Boiled = ["risotto", "pilaf", "pilau", "paella", "absorbed", "absorbs", "ladle", "al dente", "simmer", "boil", "mijoter", "absorption", "köcheln", "cocer"];

    public static IEnumerable<Remark> Of(Dish dish) => dish.Components.SelectMany(c => Part(c, dish));

    private static IEnumerable<Remark> Part(Component c, Dish dish)
    {
        FoodAmount[] foods = [.. c.Ingredients.Where(l => l.Kind == LineKind.Ingredient).SelectMany(l => l.Foods)];
        string method = string.Join('\n', c.Steps.Select(s => s.Text));
        // A stage that goes into this dough brings flour and water of its own.
        if (Places.HasAny(method, Stages) || dish.Components.Any(o => !ReferenceEquals(o, c) && o.Name.Length > 2 && Places.HasAny(method, o.Name)))
        {
            yield break;
        }

        // Sizes side by side, foods of other parts and ranges leave the ratio open.
        if (method.Length == 0 || foods.Length < 2 || foods.Any(f => f.FromComponent is not null || f.AmountMax is not null))
        {
            yield break;
        }

        int line = c.Ingredients[0].Span.Line;
        double flour = foods.Where(f => Places.HasAny(f.Food, Flours) && !Places.HasAny(f.Food, "cornflour", "corn flour")).Sum(f => Weight(f) ?? 0);
        bool known = foods.All(f => Weight(f) is not null || Places.HasAny(f.Food, Dry));
        double liquid = foods.Where(Liquid).Sum(f => Weight(f) ?? 0);
        string name = $"{c.Name} {(dish.Components.Length == 1 ? dish.Title : "")}";
        if (flour > 0 && Places.HasAny(method, Knead))
        {
            double moist = foods.Where(f => !Places.HasAny(f.Food, Flours) && !Places.HasAny(f.Food, Dry)).Sum(f => Weight(f) ?? 0);
            if (liquid > MostDough * flour)
            {
                yield return Said(Wettest(c), liquid, "liquid", flour, "flour; a dough that is kneaded takes 50 to 100, hardly more than 150", name);
            }
            else if (known && moist < LeastDough * flour && !Places.HasAny(method, Liquids.Where(l => !foods.Any(f => Places.HasAny(f.Food, l))).ToArray()))
            {
                yield return Said(line, moist, "moist foods", flour, "flour; a dough that is kneaded takes 50 and more, hardly less than 20", name);
            }
        }
        else if (flour > 0 && liquid > MostSponge * flour && Places.HasAny(name, Sponges) && c.Steps.Any(s => s.Operations.Contains("bake")) && !Places.HasAny(method + "\n" + name, Wetted))
        {
            yield return Said(Wettest(c), liquid, "liquid", flour, "flour; a cake that is baked holds less than 150, hardly more than 300", name);
        }

        double rice = foods.Where(f => Places.HasAny(f.Food, "rice", "riz", "reis", "arroz", "riso") && !Places.HasAny(f.Food, "cooked", "flour", "vinegar", "wine", "paper", "noodles", "puffed", "milk")).Sum(f => Weight(f) ?? 0);
        if (rice > 0 && flour == 0 && liquid > 0 && Places.HasAny($"{name} {method}", Boiled) && foods.Where(Liquid).All(f => Weight(f) is not null) && !Places.HasAny(method, "cooked rice", "drain")
            && !(Places.HasAny(method, "water") && !foods.Any(f => Places.HasAny(f.Food, "water"))) && !foods.Any(f => Places.HasAny(f.Food, "tomatoes", "passata", "coconut milk") && liquid < rice))
        {
            if (liquid < LeastRice * rice || liquid > MostRice * rice)
            {
                yield return Said(Wettest(c), liquid, "liquid", rice, "rice; rice boiled in it takes 120 to 400, hardly less than 80", name);
            }
        }
    }

    private static int Wettest(Component c) => c.Ingredients.Where(l => l.Foods.Any(Liquid)).MaxBy(l => l.Foods.Where(Liquid).Sum(f => Weight(f) ?? 0))!.Span.Line;

    private static bool Liquid(FoodAmount f) => Places.HasAny(f.Food, Liquids) && !Places.HasAny(f.Food, "powder", "cheese", "chocolate", "clotted", "dried", "condensed", "sugar", "chestnut", "rice", "roll", "bread") && f.Use is null;

    private static double? Weight(FoodAmount f) => f.Grams ?? Volumes.Of(f) ?? (f is { Amount: { } n, Unit: "piece", FoodId: { } id } && id.StartsWith("egg", StringComparison.Ordinal) ? n * 50 : null);

    private static Remark Said(int line, double wet, string what, double dry, string usual, string name) =>
        new(line, "implausible", System.FormattableString.Invariant($"{wet:0} g of {what} to {dry:0} g, {wet / dry * 100:0} to 100 of {usual}{(name.Trim().Length > 0 ? $": “{name.Trim()}”" : "")}."));
}
