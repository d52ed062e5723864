using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.AtHome;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Labels;
using Coulisse.Matter.Measures;
using Coulisse.Views.Web;

namespace Coulisse.Views.Papers;

/// <summary>The handout: the dish at home scale in household measures, tested before it is printed; a dish that fails gets a page that says why, and no recipe.</summary>
public static class HandoutPaper
{
    public const string Kind = "handout";

    private const double Large = 18;

    public static IEnumerable<Paper> Of(PaperBundle bundle)
    {
        foreach (Batch batch in bundle.Batches.Where(b => b.Components.Any(c => !c.Lines.IsEmpty) && !Alone(bundle, b)))
        {
            HomeRecipe home = HomeScaling.Of(batch, new HomeKit(bundle.HomeMeasures), bundle.Code);
            string title = bundle.TitleOf(batch);
            Paper one = home.Passed
                ? bundle.Sheet(Kind, title, [.. Recipe(bundle, batch, home)]) with { Id = $"{Kind}-{Slug.Of(title)}", Dish = title, TextSize = 11 }
                : bundle.Sheet(Kind, $"No handout yet: {title}", [.. Refused(home)]) with { Id = $"{Kind}-{Slug.Of(title)}", Dish = title, TextSize = 11 };
            yield return one;
            if (home.Passed)
            {
                yield return one with { Id = $"{Kind}-large-{Slug.Of(title)}", Title = title + ", large print", TextSize = Large, Blocks = [.. one.Blocks.SelectMany(Loose)] };
                yield return bundle.Sheet(Kind, $"How the handout was tested: {title}", [.. Tested(bundle, home)]) with { Id = $"{Kind}-tested-{Slug.Of(title)}", Dish = title };
            }
        }
    }

    // A part made for one guest is not handed out.
    private static bool Alone(PaperBundle bundle, Batch batch)
    {
        int i = Array.FindIndex([.. bundle.Batches], b => ReferenceEquals(b, batch));
        return bundle.Occasion is { } o && i >= 0 && i < o.Dishes.Length && MadeAlone.In(o.Dishes[i]) is not null;
    }

    private static IEnumerable<Block> Recipe(PaperBundle bundle, Batch batch, HomeRecipe home)
    {
        CultureInfo culture = bundle.Culture;
        Dish dish = batch.Weighed.Dish;
        double hands = home.Parts.Sum(p => p.Component.Component.Steps.Sum(s => s.HandsMinutes ?? 0) * Math.Min(1, Math.Max(p.Factor, 0.35)));
        double all = home.Parts.Sum(p => p.Component.Component.Steps.Sum(s => s.Times.Where(t => t.Kind != TimeKind.Limit).Sum(t => (t.MinutesMin ?? 0) * t.Repeats)));
        yield return new FactsBlock(
        [
            new("Makes", CardPaper.After("Makes", home.Serves)),
            new("Your hands, about", hands > 0 ? Figures.Lasting(Math.Ceiling(hands / 5) * 300, culture) : "not timed"),
            new("Waiting and cooking, in all", all > 0 ? Figures.Lasting(all * 60, culture) : "not timed"),
            new("Spoons and cups", Spoons(bundle.HomeMeasures, culture)),
            .. home.Parts.SelectMany(p => p.Component.Component.Steps).SelectMany(s => s.Kit).Distinct().Order(StringComparer.Ordinal).ToArray() is { Length: > 0 } kit ? [new Fact("Kit", string.Join(", ", kit))] : Array.Empty<Fact>(),
        ]);
        if (!home.Substitutes.IsEmpty)
        {
            yield return new HeadingBlock(1, "If you do not have it at home");
            yield return new ListBlock([.. home.Substitutes.Select(s => new ListEntry("–", $"{s.Kit.Trim()}: {s.AtHome}"))]);
        }

        if (!home.Pocket.IsEmpty)
        {
            yield return new CalloutBlock("You need a pocket scale that shows 0.1 g", $"It weighs {string.Join(", ", home.Pocket.Select(l => l.Line.Food.Food).Distinct())}: spoons and a kitchen scale of 5 g would shift the balance by more than 2 %.");
        }

        foreach (HomePart part in home.Parts)
        {
            foreach (Block block in Part(part, home.Parts.Length > 1, culture))
            {
                yield return block;
            }
        }

        Component[] plating = [.. dish.Components.Where(c => c.IsAssembly && !c.Steps.IsEmpty)];
        foreach (Component c in plating)
        {
            yield return new HeadingBlock(1, c.Name.Length > 0 ? c.Name : "To serve");
            yield return new ListBlock([.. c.Steps.Select((s, i) => new ListEntry((i + 1).ToString(CultureInfo.InvariantCulture), s.Text))]);
        }

        yield return new HeadingBlock(1, "Allergens");
        WeighedDish handed = batch.Weighed with { Components = [.. home.Parts.Select(p => p.Component)] };
        yield return new ParagraphBlock(AllergenWords.Sentence(Allergens.Of(handed, AllergenNames.RegimeOf(bundle.Code)).Dish), true);
        yield return new ParagraphBlock($"Weights are the chef’s, divided; spoons are worked out from what each food weighs in them. No ratio of two ingredients of a part moved by more than {Figures.Number(Math.Round(home.Parts.Max(p => p.RatioMoved) * 100, 1), culture)}\u202F%. {Kitchen.Safety.Findings.Caution}", Small: true);
    }

    private static IEnumerable<Block> Part(HomePart part, bool several, CultureInfo culture)
    {
        Component c = part.Component.Component;
        if (several)
        {
            yield return new HeadingBlock(1, c.Name);
        }

        string over = part.Factor > part.Needed * 1.25 ? $"The smallest batch that works; you need about {Figures.Number(Math.Round(part.Needed / part.Factor * 100), culture)}\u202F% of it." : "";
        string keeps = string.Join("; ", c.Keeps.Select(k => CardPaper.After("Keeps", k.Text)));
        string ahead = c.Keeps.Any(k => !k.Quality && !k.SameDay && k.Hours is >= 24) ? "Can be made ahead." : "";
        string[] said = [over, ahead, keeps.Length > 0 ? $"Keeps: {keeps}." : ""];
        if (said.Any(s => s.Length > 0))
        {
            yield return new ParagraphBlock(string.Join(' ', said.Where(s => s.Length > 0)));
        }

        yield return new TableBlock([new("", Side.Right, Strong: true), new("")], [.. part.Lines.Select(l => PaperRow.Of(Amount(l, culture), Food(l)))]);
        if (!part.Steps.IsEmpty)
        {
            yield return new ListBlock([.. part.Steps.Select((s, i) => new ListEntry((i + 1).ToString(CultureInfo.InvariantCulture), s.Text))]);
            if (Math.Abs(part.Factor - 1) > 0.1)
            {
                yield return new ParagraphBlock($"Counts, sizes of vessels and numbers of loads in these steps are the chef’s; your batch is {part.Factor.ToString("0.##", culture)} of it.", Small: true);
            }
        }
    }

    /// <summary>"250 g", or "2½ tsp (12 g)": weight first where it is weighed, beside the spoon where it is not.</summary>
    internal static string Amount(HomeLine l, CultureInfo culture) => l.Measure switch
    {
        { Pocket: true } m => m.Text + " (pocket scale)",
        { BySpoon: true } m => $"{m.Text} ({Figures.Grams(m.Grams, culture)})",
        { } m => m.Text,
        _ => l.Line.Grade == WeightGrade.Unknown ? "" : "a pinch",
    };

    private static string Food(HomeLine l)
    {
        FoodAmount f = l.Line.Food;
        string name = f.Food.Length > 0 ? f.Food : l.Line.Source.Text;
        return name + CountsInWords.Behind(f, name, l.Line.Grams > 0 ? l.Exact / l.Line.Grams : 1) + (f.Optional ? ", may be left out" : "");
    }

    private static string Spoons(string system, CultureInfo culture)
        => string.Join(", ", new[] { "tsp", "tbsp", "cup" }.Select(u => (u, Size: Household.SizeOf(u, system))).Where(x => x.Size is not null).Select(x => $"{x.u} {Figures.Number(Math.Round(x.Size!.Value.Size.Millilitres, 1), culture)}\u202FmL"));

    private static IEnumerable<Block> Refused(HomeRecipe home)
    {
        yield return new ParagraphBlock("This dish was scaled for home and tested on a 5 g scale and in a watched pan. It is not handed out as it is, for these reasons:");
        foreach (HomeRefusal r in home.Refusals)
        {
            yield return new CalloutBlock($"{(r.Part.Length > 0 ? r.Part + ": " : "")}{r.Why}", r.Remedy);
        }

        yield return new ParagraphBlock("Change the card, or print it without this dish. " + Kitchen.Safety.Findings.Caution, Small: true);
    }

    private static IEnumerable<Block> Tested(PaperBundle bundle, HomeRecipe home)
    {
        CultureInfo culture = bundle.Culture;
        yield return new ParagraphBlock("For the chef, not for the audience. The handout went through the same weighing, heat and safety rules as the dish, with a scale of 5 g, a pan that swings by 3 °C and household spoons.");
        foreach (string changed in home.Changed)
        {
            yield return new CalloutBlock("Changed for home; cook it once before handing out", changed);
        }

        foreach (Kitchen.Safety.Finding f in home.Findings.All)
        {
            yield return new CalloutBlock($"{f.Severity}: {(f.Component.Length > 0 ? f.Component + ". " : "")}{f.What}", f.Remedy);
        }

        ImmutableArray<PaperRow>.Builder rows = ImmutableArray.CreateBuilder<PaperRow>();
        foreach (HomePart p in home.Parts)
        {
            rows.Add(PaperRow.Group($"{p.Component.Component.Name}: × {p.Factor.ToString("0.####", culture)} of the card, needed × {p.Needed.ToString("0.####", culture)}; largest move of a ratio {Figures.Number(Math.Round(p.RatioMoved * 100, 2), culture)} %"));
            rows.AddRange(p.Lines.Select(l => PaperRow.Of(l.Line.Food.Food, Figures.Grams(l.Exact, culture), Amount(l, culture), l.Measure is { } m ? Figures.Grams(m.Grams, culture) : "", l.Measure is { } s ? (s.Shift >= 0 ? "+" : "") + Figures.Number(Math.Round(s.Shift * 100, 2), culture) + "\u202F%" : "outside the ratios")));
        }

        yield return new TableBlock([new("Ingredient"), new("Exact", Side.Right), new("Handout", Side.Right), new("That is", Side.Right), new("Moved", Side.Right)], rows.ToImmutable());
    }

    // Large print has no table: each amount stands before its food on a line of its own.
    private static IEnumerable<Block> Loose(Block block) => block is TableBlock t ? t.Rows.Select(r => (Block)new ParagraphBlock(string.Join("  ", r.Cells.Select(c => c.Text).Where(c => c.Length > 0)))) : [block];
}
