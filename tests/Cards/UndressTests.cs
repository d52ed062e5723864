using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>What paper puts around the lines: boxes, stamps, tags, outlines, arrows, cells one under the other; each beside what looks like it and stays as it is. Our own cards; readings as a cook gives them: common practice, no source.</summary>
public sealed class UndressTests
{
    [Fact]
    public void A_box_is_no_table()
    {
        Dish d = Read("+------------------------+\n|  CIDER SOUR            |\n+------------------------+\n|  50 ml   cider brandy  |\n|  20 ml   lemon juice   |\n+------------------------+\n|  BAY SYRUP             |\n|  600 g   sugar         |\n|  500 ml  water         |\n|  Bring to 90 C, infuse 30 min. |\n+------------------------+\n");

        Assert.Equal(["CIDER SOUR: 50 ml cider brandy", "CIDER SOUR: 20 ml lemon juice", "BAY SYRUP: 600 g sugar", "BAY SYRUP: 500 ml water"], Lines(d).Select(l => l.StartsWith(": ", StringComparison.Ordinal) ? "CIDER SOUR" + l : l));
        Assert.Single(Steps(d));
    }

    [Fact]
    public void A_table_in_strokes_stays_a_table() =>
        Assert.Equal([": 200 g flour", ": 100 g butter"], Lines(Read("+--------+-------+\n| flour  | 200 g |\n| butter | 100 g |\n+--------+-------+\n")).Select(l => l[l.IndexOf(':', StringComparison.Ordinal)..]));

    [Fact]
    public void Messages_are_read_without_their_stamps_and_keep_them_as_remarks()
    {
        Dish d = Read("[21:14] Ines: note the cheesecake\n[21:14] Ines: 1 kg cream cheese\n[21:15] Ines: 7 eggs\n[21:15] Ines: 400 g sugar\n[21:18] Ines: whisk it all and bake 40 min at 210 C.\n");

        Assert.Equal(["1 kg cream cheese", "7 piece eggs", "400 g sugar"], Lines(d).Select(l => l[(l.IndexOf(": ", StringComparison.Ordinal) + 2)..]));
        Assert.Contains("Ines", string.Join(' ', d.Notes.Select(n => n.Text).Concat(d.Components.SelectMany(c => c.Notes).Select(n => n.Text))), StringComparison.Ordinal);
    }

    [Fact]
    public void A_single_hour_before_a_line_is_part_of_it() =>
        Assert.Contains(Steps(Read("Rye\n\n500 g rye flour\n400 g water\n\n08:00 - mix 6 min and rest.\nShape and prove 2 hours.\nBake 45 min at 230 C.\n")), s => s.Contains("08:00", StringComparison.Ordinal));

    [Fact]
    public void Tags_before_lines_are_parts()
    {
        Dish d = Read("SHOULDER, 10 covers\n\n[lamb] 60 g anchovies\n[lamb] 1 l chicken stock\n[beans] 600 g haricot beans\n\n[lamb] Roast 7 hours at 120 C, covered.\n[beans] Soak 12 hours, then simmer.\n");

        Assert.Equal(["lamb: 60 g anchovies", "lamb: 1 l chicken stock", "beans: 600 g haricot beans"], Lines(d));
        Assert.Equal(["lamb: Roast 7 hours at 120 C, covered.", "beans: Soak 12 hours, then simmer."], Steps(d));
    }

    [Fact]
    public void Boxes_to_tick_are_no_tags() =>
        Assert.Equal([": 60 g anchovies", ": 1 l chicken stock", ": 600 g haricot beans"], Lines(Read("# Shoulder\n\n[ ] 60 g anchovies\n[x] 1 l chicken stock\n[ ] 600 g haricot beans\n")));

    [Fact]
    public void Cells_one_under_the_other_are_lines()
    {
        Dish d = Read("Dumplings\nIngredients\n150\ng\nself-raising flour\n75\ng\nbeef suet\n7\neggs\nMethod\nMix and roll, cook for 20 minutes.\n");

        Assert.Equal([": 150 g self-raising flour", ": 75 g beef suet", ": 7 piece eggs"], Lines(d));
    }

    [Fact]
    public void An_outline_has_its_parts()
    {
        Dish d = Read("Roast squash\n\nI.   Squash\n     a. Crown squash, 1.6 kg\n     b. Olive oil, 40 g\nII.  Gnocchi\n     a. Floury potatoes, 1 kg\n     b. Egg yolks, 3\nIII. Method\n     a. Roast the squash 50 min at 190 C.\n     b. Poach the gnocchi 3 min.\n");

        Assert.Equal(["Squash: 1.6 kg Crown squash", "Squash: 40 g Olive oil", "Gnocchi: 1 kg Floury potatoes", "Gnocchi: 3 piece Egg yolks"], Lines(d));
        Assert.Equal(2, Steps(d).Length);
    }

    [Fact]
    public void A_chain_of_arrows_is_a_step_with_its_amounts()
    {
        Dish d = Read("BARLEY\nshallot 80g + butter 50g → sweat 6 min\n→ + pearl barley 400g → toast 3 min\n→ + veg stock 1.2l → simmer 35 min\n");

        Assert.Equal(["80 g shallot", "50 g butter", "400 g pearl barley", "1.2 l veg stock"], Lines(d).Select(l => l[(l.IndexOf(": ", StringComparison.Ordinal) + 2)..]));
        Assert.Equal([6, 3, 35], d.Components.SelectMany(c => c.Steps).SelectMany(s => s.Times).Select(t => t.MinutesMin));
    }

    [Fact]
    public void An_order_over_its_list_names_no_part() =>
        Assert.Equal([": 1 cup buckwheat flour", ": 2 tsp baking powder", ": 2 piece eggs", ": 1.5 cup buttermilk"], Lines(Read("Pancakes\n\nWhisk together:\n     1 cup buckwheat flour\n     2 teaspoons baking powder\nIn another bowl beat:\n     2 eggs\n     1 1/2 cups buttermilk\nLet stand 10 minutes.\n")));

    [Fact]
    public void A_name_over_its_list_names_one_though_it_is_also_work() =>
        Assert.Equal(["Glaze: 100 g icing sugar", "Glaze: 20 g lemon juice"], Lines(Read("Cake\n\nFlour mix:\n200 g flour\n2 eggs\n\nGlaze:\n100 g icing sugar\n20 g lemon juice\n"))[2..]);

    [Fact]
    public void Sentences_of_a_notebook_name_their_parts() =>
        Assert.Equal(["masa: 3 piece huevos", "masa: 200 g azúcar", "masa: 0.5 kg harina", "almíbar: 150 g azúcar", "almíbar: 2 tbsp anís"], Lines(Read("Rosquillas\n\nPara la masa se ponen tres huevos, doscientos gramos de azúcar y medio kilo de harina.\nPara el almíbar, ciento cincuenta gramos de azúcar y dos cucharadas de anís.\n\nSe fríen a 175 ºC, tres minutos por lado.\n")));
}
