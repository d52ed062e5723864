using System.Globalization;
using System.Text.RegularExpressions;
using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Safety;
using Coulisse.Matter.Reference;
using Coulisse.Tests;

namespace Coulisse.Kitchen.Tests.Safety;

/// <summary>Tables of the codes of practice, each read whole against what the rules do with a card.</summary>
public sealed class RuleTablesPublished
{
    private static double D(string s) => double.Parse(s, NumberStyles.Float, CultureInfo.InvariantCulture);

    private static Findings Review(string card, string code) => CardReader.Read(new CardText(card, "card.md")).Match(d => SafetyReview.Review(Weighing.Weigh(d, null), code), p => throw new InvalidOperationException(string.Join("; ", p)));

    [Fact]
    public void Every_cell_of_acid_and_water_activity_decides_a_card_as_the_Food_Code_does()
    {
        // Table A: heated and packed, judged as a closed jar at room temperature (SAF031). Table B: not packed, judged as food kept out of the cold (SAF036).
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows = SharedData.Rows("data/heat/ph-aw-tables.tsv");
        foreach (IReadOnlyDictionary<string, string> r in rows)
        {
            (double aw, double ph) = (Inside(r["aw"], 0.02, 0.99), Inside(r["pH"], 0.2, 6.5));
            string says = string.Create(CultureInfo.InvariantCulture, $"Keeps 3 months at room temperature. pH {ph:0.0#}, water activity {aw:0.00#}.");
            string rule = r["table"] == "A" ? "SAF031" : "SAF036";
            string card = r["table"] == "A"
                ? $"# Relish card\n\n## Relish\n\n{says}\n\n- 700 g red pepper\n- 100 g water\n- 10 g fine sea salt\n\n1. Simmer 20 min.\n2. Fill hot into sterilised jars and close.\n"
                : $"# Relish card\n\n## Relish\n\n{says}\n\n- 700 g red pepper\n- 100 g whole milk\n- 10 g fine sea salt\n\n1. Simmer 20 min.\n2. Cool.\n";
            Assert.True((r["result"] == "non-TCS") == Review(card, "us").All.All(f => f.Rule != rule), $"{r["table"]} aw {aw} pH {ph}: {r["result"]}");
        }

        Assert.Equal(25, rows.Count);
    }

    // A figure inside a printed cell: "<0.88", "<=4.6", ">4.6-5.6", "4.2-4.6", ">5.6".
    private static double Inside(string cell, double step, double top)
    {
        double[] ends = [.. Regex.Matches(cell, @"\d+(\.\d+)?").Select(m => D(m.Value))];
        return ends.Length == 2 ? cell.StartsWith('>') ? ends[0] + (step / 4) : ends[0] : cell.StartsWith("<=", StringComparison.Ordinal) ? ends[0] : cell.StartsWith('<') ? ends[0] - step : Math.Min(top, ends[0] + step);
    }

    [Fact]
    public void Hours_and_degrees_against_parasites_are_those_of_the_codes()
    {
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows = SharedData.Rows("data/heat/parasite-freezing.tsv");
        Assert.Equal(7, rows.Count);
        string Raw(int hours, double celsius) => string.Create(CultureInfo.InvariantCulture, $"# Fish card\n\n## Crudo\n\nSame day only.\n\n- 200 g salmon\n- 10 g fine sea salt\n\n1. Freeze at {celsius:0} °C for {hours} h. Thaw in the fridge.\n2. Slice thinly and salt.\n");
        int judged = 0;
        foreach (IReadOnlyDictionary<string, string> r in rows.Where(r => r["T_C"] == "-20"))
        {
            judged++;
            string code = r["rule"].StartsWith("FDA", StringComparison.Ordinal) ? "us" : "eu";
            int hours = (int)D(r["hours"]);
            Assert.DoesNotContain(Review(Raw(hours, -20), code).All, f => f.Rule == "SAF021");
            Assert.Contains(Review(Raw(hours - 1, -20), code).All, f => f.Rule == "SAF021");
            Assert.Contains(Review(Raw(hours, -18), code).All, f => f.Rule == "SAF021");
        }

        // The shorter ways at -35 °C need a freezer that few kitchens have: never credited for less than the code's hours at -20, which is the cautious side.
        foreach (IReadOnlyDictionary<string, string> r in rows.Where(r => r["T_C"].StartsWith("-35", StringComparison.Ordinal)))
        {
            judged++;
            Assert.Contains(Review(Raw((int)D(r["hours"]) - 1, -35), r["rule"].StartsWith("FDA", StringComparison.Ordinal) ? "us" : "eu").All, f => f.Rule == "SAF021");
        }

        // Heat: from 60 °C in the middle it is no raw fish; a home freezer at -15 °C is not enough for any code.
        judged += rows.Count(r => r["T_C"] is "+60" or "-15");
        Assert.Contains(Review(Raw(96, -15), "uk").All, f => f.Rule == "SAF021");
        Assert.DoesNotContain(Review("# Fish card\n\n## Salmon\n\nSame day only.\n\n- 200 g salmon\n\n1. Bake at 120 °C to a core of 60 °C.\n", "eu").All, f => f.Rule == "SAF021");
        Assert.Equal(rows.Count, judged);
    }

    [Fact]
    public void Every_row_of_holding_and_shelf_life_stands_in_a_code_or_a_rule()
    {
        ReferenceTable codes = ReferenceTable.Load("heat/codes.tsv");
        double Code(string code, string column) => D(codes.Rows.Single(r => r[codes.Column("code")] == code)[codes.Column(column)]);
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows = SharedData.Rows("data/heat/holding-and-shelf-life-rules.tsv");
        Dictionary<(string Topic, string Begins), Action<double[]>> checks = new()
        {
            [("hot hold", "FDA")] = n => Assert.Equal(n[0], Code("us", "hot")),
            [("hot hold", "UK")] = n => Assert.Equal(n[0], Code("uk", "hot")),
            [("hot hold", "FSANZ")] = n => Assert.Equal(n[0], Code("au", "hot")),
            [("hot hold", "NYC")] = n => Assert.True(n[0] >= Code("us", "hot")),                        // a city stricter than its model code
            [("cold hold", "FDA")] = n => Assert.Equal(n[0], Code("us", "cold")),
            [("cold hold", "UK")] = n => Assert.Equal(n[0], Code("uk", "cold")),
            [("cold hold", "FSANZ")] = n => Assert.Equal(n[0], Code("au", "cold")),
            [("time as control", "FDA")] = n => Assert.Equal(n[0], Code("us", "out")),
            [("time as control", "Australia")] = n => Assert.Contains(Code("au", "out"), n),
            [("egg dessert", "Japan")] = n => Assert.Contains($"{n[0]:0} °C for {n[1]:0.#} min", Egg("us").Remedy, StringComparison.Ordinal),
            [("raw egg dish", "Western")] = n => Assert.NotEmpty(Egg("au").Remedy),
            [("sous vide", "NSW")] = n => Assert.Contains(Review(Roast(54, 7), "au").All, f => f.Rule == "SAF012" && f.Severity == Severity.Stop),
            [("sous vide", "Victoria")] = n => Assert.Contains(Review(Roast(56, 7), "au").All, f => f.Rule == "SAF012" && f.Severity == Severity.Warn),
            [("sous vide", "Baldwin")] = n => { Assert.Contains(Review(Roast(53, 5), "au").All, f => f.Rule == "SAF012" && f.Severity == Severity.Stop); Assert.DoesNotContain(Review(Roast(53, 4), "au").All, f => f.Rule == "SAF012"); },
            [("ROP, no variance", "FDA")] = n => { Assert.Contains(Review(Sealed(31, "pH 4.5"), "us").All, f => f.Rule == "SAF025"); Assert.DoesNotContain(Review(Sealed(30, "pH 4.5"), "us").All, f => f.Rule == "SAF025"); },
            [("ROP cook-chill", "FDA Food Code 2009")] = n => Assert.True(Code("us", "days") <= 7),        // the older edition's 72 h is not the default of a current code
            [("ROP cook-chill", "FDA Food Code 2013")] = n => { Assert.Contains(Review(Sealed(8, ""), "us").All, f => f.Rule == "SAF025"); Assert.DoesNotContain(Review(Sealed(7, ""), "us").All, f => f.Rule == "SAF025"); },
            [("ROP", "UK FSA")] = n => { Assert.Equal(10, Code("uk", "days")); Assert.Contains(Review(Sealed(11, ""), "uk").All, f => f.Rule == "SAF025"); Assert.DoesNotContain(Review(Sealed(11, "pH 5.0"), "uk").All, f => f.Rule == "SAF025"); },
            [("ROP", "UK cook-chill")] = n => Assert.Equal(5, Code("uk", "life")),
            [("Listeria", "EU 2073/2005 footnote")] = n => { Assert.DoesNotContain(Review(Paste(12, "pH 4.4"), "eu").All, f => f.Rule == "SAF039"); Assert.Contains(Review(Paste(12, "pH 4.6"), "eu").All, f => f.Rule == "SAF039"); Assert.DoesNotContain(Review(Paste(12, "pH 5.0, water activity 0.94"), "eu").All, f => f.Rule == "SAF039"); },
            [("Listeria", "EU 2073/2005")] = n => Assert.Contains(Review(Paste(12, ""), "eu").All, f => f.Rule == "SAF039"),
            [("bivalves", "EU")] = n => Assert.Contains($"{n[0]:0} °C for {n[1]:0} s", Review("# Mussel card\n\n## Mussels\n\nSame day only.\n\n- 500 g mussels\n\n1. Warm the mussels in a water bath at 70 °C for 5 min.\n", "eu").All.Single(f => f.Rule == "SAF022").Limit, StringComparison.Ordinal),
            [("garlic or herbs", "US")] = n => { Assert.Contains(Review(Oil(5), "us").All, f => f.Rule == "SAF024"); Assert.DoesNotContain(Review(Oil(4), "us").All, f => f.Rule == "SAF024"); },
            [("drying meat", "USDA")] = n => Assert.Contains(Review("# Jerky card\n\n## Jerky\n\nSame day only.\n\n- 500 g chicken breast\n- 10 g fine sea salt\n\n1. Dry at 57 °C for 6 h.\n", "us").All, f => f.Rule is "SAF035" or "SAF033"),
            [("HACCP", "Codex")] = n => Assert.All(Review(Roast(60, 5).Replace("for 5 h", "for 5 h. Centre at 58 °C or more for 10 min", StringComparison.Ordinal), "au").ControlPoints, p => Assert.True(p.Hazard.Length > 0 && p.Limit.Length > 0 && p.Monitoring.Length > 0 && p.Action.Length > 0 && p.Record.Length > 0)),
        };
        int done = 0;
        foreach (IReadOnlyDictionary<string, string> r in rows)
        {
            double[] numbers = [.. Regex.Matches(r["limits"], @"\d+(\.\d+)?").Select(m => D(m.Value))];
            (string Topic, string Begins)[] mine = [.. checks.Keys.Where(k => r["topic"].StartsWith(k.Topic, StringComparison.Ordinal) && r["rule"].StartsWith(k.Begins, StringComparison.Ordinal)).OrderByDescending(k => k.Topic.Length + k.Begins.Length)];
            Assert.True(mine.Length > 0, $"no check for {r["topic"]}: {r["rule"]}");
            checks[mine[0]](numbers);
            done++;
        }

        Assert.Equal(25, done);
    }

    private static Finding Egg(string code) => Review("# Aioli card\n\n## Aioli\n\nSame day only.\n\n- 40 g egg yolk\n- 200 g olive oil\n\n1. Whisk.\n", code).All.Single(f => f.Rule == "SAF020");

    private static string Roast(int celsius, int hours) => $"# Beef card\n\n## Beef\n\nMakes 800 g.\n\n- 800 g beef sirloin\n- 8 g fine sea salt\n\n1. Water bath at {celsius} °C for {hours} h.\n";

    private static string Sealed(int days, string says) => $"# Carrot card\n\n## Carrots\n\nKeeps {days} days at 5 °C{(says.Length > 0 ? ", " + says : "")}.\n\n- 800 g carrot\n- 40 g butter\n\n1. Seal in a vacuum pouch.\n2. Water bath at 84 °C for 60 min.\n";

    private static string Paste(int days, string says) => $"# Paste card\n\n## Carrot paste\n\nKeeps {days} days at 4 °C{(says.Length > 0 ? ", " + says : "")}.\n\n- 500 g carrot\n- 60 g butter\n- 100 g whole milk\n\n1. Blend.\n";

    private static string Oil(int days) => $"# Oil card\n\n## Garlic oil\n\nKeeps {days} days at 4 °C.\n\n- 50 g garlic\n- 300 g olive oil\n\n1. Warm the garlic in the oil at 90 °C for 60 min.\n";
}
