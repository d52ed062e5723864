using System.Text.Json;

namespace Coulisse.Commands.Tests;

/// <summary>The keys of docs/commands.md that tools rely on are in what each command prints.</summary>
public sealed class KeysTests(PlannedDemo demo) : IClassFixture<PlannedDemo>
{
    public static TheoryData<string, string> Promised => new()
    {
        { "read {cards}/starter.md", "title yields components.name components.makes components.keeps components.ingredients.line components.ingredients.text components.ingredients.kind components.ingredients.foods.food components.ingredients.foods.foodId components.ingredients.foods.amount components.ingredients.foods.amountMax components.ingredients.foods.unit components.ingredients.foods.preparation components.ingredients.foods.optional components.ingredients.foods.grams components.ingredients.foods.gramsMax components.ingredients.foods.secondMeasure components.ingredients.foods.alternative components.ingredients.foods.state components.steps.line components.steps.text components.steps.anchor components.steps.operation components.steps.times components.steps.temperatures components.steps.kit components.steps.people components.steps.tending components.steps.tendAt components.steps.storage components.steps.until doubts remarks unread" },
        { "weigh {cards}/starter.md", "components.name components.grams components.lines.line components.lines.text components.lines.food components.lines.grams components.lines.low components.lines.high components.lines.grade components.lines.why" },
        { "scale {cards}/starter.md --covers 40", "factor components.batches components.lines.asWritten components.lines.rounded components.lines.roundingPercent components.steps.minutesAsWritten components.steps.minutes components.steps.why" },
        { "mixture {cards}/starter.md", "components.name components.grams components.water components.fat components.protein components.carbohydrate components.sugars components.fibre components.salt components.alcohol components.ash components.energyKj components.waterActivity.low components.waterActivity.high components.brix components.freezingPoint components.agents" },
        { "diets {demo}/occasion.md", "seats.seats seats.declared seats.plates.dish seats.plates.found.name seats.plates.crossContact batches.component batches.needed batches.makes batches.batches batches.allergens.name twins.number twins.component twins.of twins.allergens.name" },
        { "reach {cards}/starter.md --component C6 --target fat=25", "reached targets.property targets.wanted targets.before targets.after lines.food lines.asWritten lines.grams stoppedBy moves.components moves.allergensIn moves.ingredientsAfter" },
        { "substitute {cards}/starter.md --component C3 --line xanthan --with agar", "out.grams in.food in.grams notes moves.components.name moves.components.figures.before moves.components.figures.after moves.components.set moves.allergensIn moves.allergensOut moves.panel" },
        { "safety {cards}/royale-draft.md", "findings.severity findings.component findings.step findings.rule findings.source findings.value findings.limit findings.margin findings.what findings.remedy controlPoints" },
        { "label {cards}/starter.md", "allergens.name allergens.status allergens.because ingredientList panel" },
        { "heat core --shape slab --size 20mm --start 5 --medium 82 --minutes 45 --organism salmonella", "minutesToTarget curve.minute curve.core curve.surface lethality.organism lethality.log10.best lethality.log10.cautious assumptions validity" },
        { "heat hold --organism listeria-meat --log 6 --size 20mm --start 5 --medium 60 --minutes 90", "equivalents.celsius equivalents.minutes.cautious minutesInBath.cautious minutesInBath.off thickestMillimetres comeUpCounted assumptions" },
        { "heat core --shape slab --size 20mm --start 5 --medium 65 --minutes 60 --layer film:0.1mm --organism listeria-meat", "lethality.log10.cautious lethality.worst lethality.offNominal lethality.matters.what" },
        { "heat core --shape slab --size 20mm --start 5 --medium 82 --until 80", "minutesToTarget.best minutesToTarget.cautious" },
        { "fit grid 330x220x18 40x30 --edge 5 --density 1.03", "count grams trimGrams nextFewer.count nextMore.count" },
        { "fit tray 530x325 160 --count 52", "count perTray trays freePercent comesOutEven.of comesOutEven.asked comesOutEven.exactly comesOutEven.smaller.units comesOutEven.smaller.amount comesOutEven.larger.units comesOutEven.larger.amount comesOutEven.says" },
        { "cost {demo}/occasion.md --prices {demo}/prices.csv", "parts dishes total twins currency" },
        { "prices {demo}/prices.csv {cards}/starter.md --change swede=+10%", "currency on packs.item packs.price packs.since history changed.item changed.before changed.after changed.percent dishes.title dishes.eachBefore dishes.eachAfter dishes.percent dishes.because.item dishes.because.adds" },
        { "balance {demo}/occasion.md", "covers rule parts.part parts.made parts.needed parts.over parts.verdict parts.factor parts.lossPercent parts.plateWithout parts.twins scales.leastGrams tooFine least.part least.grams least.because least.kit least.source" },
        { "order {demo}/occasion.md --prices {demo}/prices.csv", "packs suppliers margins warnings total" },
    };

    [Theory]
    [MemberData(nameof(Promised))]
    public void Each_command_prints_the_keys_it_promises(string command, string promised)
    {
        Ran ran = Bench.Run([.. command.Replace("{cards}", Bench.Demo("cards"), StringComparison.Ordinal).Replace("{demo}", Path.GetDirectoryName(Bench.Demo("x"))!, StringComparison.Ordinal).Split(' '), "--json"]);
        Assert.True(ran.Out.StartsWith('{'), ran.Error);
        HashSet<string> keys = [];
        Collect(ran.Json, "", keys);
        Assert.Empty(promised.Split(' ').Where(k => !keys.Contains(k)));
        Assert.Matches("^coulisse/[a-z-]+/[0-9]+$", ran.Json.GetProperty("schema").GetString());
    }

    [Fact]
    public void The_plan_prints_the_keys_it_promises()
    {
        HashSet<string> keys = [];
        Collect(demo.Json, "", keys);
        Assert.Empty("schema status objective.level objective.value objective.bound objective.proven tasks.id tasks.component tasks.step tasks.start tasks.end tasks.people tasks.kit tasks.celsius tasks.slackMinutes tasks.because twins.id twins.component twins.stage twins.grams twins.readyBy twins.keeps twins.place twins.cue twins.afterwards runSheet.start runSheet.seconds runSheet.show runSheet.who conflicts remedies risk".Split(' ').Where(k => !keys.Contains(k)));
    }

    private static void Collect(JsonElement at, string path, HashSet<string> keys)
    {
        switch (at.ValueKind)
        {
            case JsonValueKind.Object:
                foreach (JsonProperty p in at.EnumerateObject())
                {
                    keys.Add(path + p.Name);
                    Collect(p.Value, path + p.Name + ".", keys);
                }

                break;
            case JsonValueKind.Array:
                foreach (JsonElement e in at.EnumerateArray())
                {
                    Collect(e, path, keys);
                }

                break;
        }
    }
}
