using System.Globalization;
using System.Text.RegularExpressions;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Reference;
using Coulisse.Matter.Substance;
using Coulisse.Tests;

namespace Coulisse.Matter.Tests.Heat;

/// <summary>Tables of burners, surfaces, evaporation, dried layers, first terms, constituents, organisms and their limits, each read whole.</summary>
public sealed partial class EquipmentTablesPublished
{
    private static Temperature C(double t) => Temperature.FromCelsius(t);

    private static double D(string s) => double.Parse(s, NumberStyles.Float, CultureInfo.InvariantCulture);

    [Fact]
    public void First_terms_give_f_and_j_of_every_row()
    {
        // f = ln 10/ζ₁², j = C₁
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows = SharedData.Rows("data/heat/ball-fj.tsv");
        foreach (IReadOnlyDictionary<string, string> r in rows)
        {
            BodyShape shape = r["shape"] switch { "slab" => BodyShape.Slab, "cyl" => BodyShape.Cylinder, _ => BodyShape.Sphere };
            ConductionSeries s = ConductionSeries.For(shape, r["Bi"] == "inf" ? double.PositiveInfinity : r.N("Bi"));
            Assert.Equal(r.N("f_coef"), Math.Log(10) / (s.Roots[0] * s.Roots[0]), 6e-6);
            Assert.Equal(r.N("j"), s.Coefficients[0], 6e-6);
        }

        Assert.Equal(21, rows.Count);
    }

    [Fact]
    public void Every_burner_makes_its_steam_and_warms_its_litre()
    {
        // Steam tables 2257 kJ/kg, 334.9 kJ for a litre from 20 to 100 °C; the efficiencies are inside the product's ranges or above them by its own losses.
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows = SharedData.Rows("data/heat/boil-rates.tsv");
        foreach (IReadOnlyDictionary<string, string> r in rows)
        {
            Power net = Power.FromKilowatts(r.N("burner_kW") * r.N("efficiency"));
            Assert.Equal(r.N("steam_kg_h"), 60 / new Reduction(Mass.FromGrams(2000), Mass.FromGrams(1000)).Time(net).TotalMinutes, 0.0051);
            Assert.Equal(r.N("min_per_L_20_to_100"), new PanOnBurner(net, net, "").ToBoil(Mass.FromGrams(1000), C(20)).Item1!.Value.TotalMinutes, 0.0075 * r.N("min_per_L_20_to_100") + 0.05);
            PanOnBurner ours = PanOnBurner.Of(r["kind"].StartsWith("gas", StringComparison.Ordinal) ? "gas" : r["kind"] == "induction" ? "induction" : "plate", Power.FromKilowatts(r.N("burner_kW")));
            Assert.InRange(net.Watts, ours.Least.Watts, ours.Most.Watts + 101);
        }

        Assert.Equal(28, rows.Count);
    }

    [Fact]
    public void Water_below_the_boil_evaporates_as_reckoned_apart()
    {
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows = SharedData.Rows("data/heat/evaporation-below-boil.tsv");
        foreach (IReadOnlyDictionary<string, string> r in rows)
        {
            (double low, double high) = QuietEvaporation.PerHour(C(r.N("T_water_C")), C(25), Fraction.FromPercent(50));
            Assert.Equal(r.N("E_low_kg_m2h"), low, 0.01 * low + 0.005);
            Assert.Equal(r.N("E_high_kg_m2h"), high, 0.01 * high + 0.005);
            Assert.Equal(r.N("kg_h_from_24cm_pan"), high * Math.PI * 0.0144, 0.006);
            Assert.Equal(r.N("p_sat_kPa"), WetSurface.Saturation(r.N("T_water_C")), 0.01 * r.N("p_sat_kPa"));
        }

        Assert.Equal(8, rows.Count);
        Assert.Throws<ArgumentOutOfRangeException>(() => QuietEvaporation.PerHour(C(99), C(25), Fraction.FromPercent(50)));
    }

    [Fact]
    public void Coefficients_of_every_surface_that_the_product_works_with_lie_in_the_usual_range()
    {
        Dictionary<string, (double Low, double High)> rows = SharedData.Rows("data/heat/heat-transfer-coefficients.tsv").ToDictionary(r => r["situation"], r => (r.N("low"), r.N("high")));
        Assert.Equal(21, rows.Count);
        Assert.All(rows.Values, r => Assert.True(r.Low > 0 && r.Low <= r.High));
        (double Low, double High) Row(string begins) => rows.Single(r => r.Key.StartsWith(begins, StringComparison.Ordinal)).Value;
        double Air(double speed, double celsius, double warmer) => AirFlow.Over(speed, Length.FromMillimetres(300), C(celsius), TemperatureDelta.FromKelvin(warmer)).Best.WattsPerSquareMetreKelvin;
        Assert.InRange(Air(0, 4, 20), Row("still-air fridge").Low, Row("still-air fridge").High);
        Assert.InRange(Air(1.5, 4, 20), Row("fan fridge").Low, Row("fan fridge").High);
        Assert.InRange(Air(4.5, 2, 20), Row("blast chiller").Low, Row("blast chiller").High);
        Assert.InRange(Air(0, -18, 20), Row("freezer still air").Low, Row("freezer still air").High);
        Assert.Equal(95, FlatBag.Cautious.Surface!.Value.WattsPerSquareMetreKelvin);
        Assert.Equal((95, 95), Row("stirred water bath, vacuum bag"));
        Assert.Equal(Row("stirred water bath, measured").High, UncertainCore.Ranges([Length.FromMillimetres(20)], C(5), C(60), Moist).Single(r => r.What == "h").High);

        // ε·σ·(Tw² + Ts²)(Tw + Ts), 0.9: the two rows of oven walls
        double Walls(double wall) => 0.9 * 5.67e-8 * (Math.Pow(wall + 273.15, 2) + Math.Pow(373.15, 2)) * (wall + 273.15 + 373.15);
        Assert.InRange(Walls(180), Row("radiation in an oven").Low, Row("radiation in an oven").High);
        Assert.InRange(Walls(230), Row("radiation: walls 230").Low, Row("radiation: walls 230").High);

        // the bounds for ovens hold the range of baking ovens between them, walls and moving air together above it
        OvenPiece oven = new(FlatBag.Cautious, C(180), Covered: true);
        Assert.True(oven.AtLeast(Length.FromMillimetres(60), C(5), C(60)) < SolidBody.Of(SolidShape.Sphere, [Length.FromMillimetres(60)], Diffusivity.FromSquareMetresPerSecond(1.5e-7), Conductivity.FromWattsPerMetreKelvin(0.55), HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(Row("static or fan baking oven").High)).TimeTo(C(5), C(180), C(60)));
    }

    private static HeatCase Moist { get; } = new(Diffusivity.FromSquareMetresPerSecond(1.4e-7), Diffusivity.FromSquareMetresPerSecond(1e-7), Conductivity.FromWattsPerMetreKelvin(0.5), Conductivity.FromWattsPerMetreKelvin(0.4), null, HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(95));

    [Fact]
    public void Coefficients_of_every_constituent_are_those_of_the_polynomials()
    {
        // The diffusivities are fits of their own, up to 4 % off k/(ρ·c), which is what the product takes.
        ReferenceTable t = ReferenceTable.Load("heat/constituents.tsv");
        double[]? Ours(string property, string of, bool below) => t.Rows.Where(r => r[t.Column("property")] == property && r[t.Column("constituent")] == of && (of != "water" || below == (r[t.Column("least")] == "-40")))
            .Select(r => new[] { "a", "b", "c" }.Select(c => D(r[t.Column(c)])).ToArray()).SingleOrDefault();
        int read = 0;
        foreach (IReadOnlyDictionary<string, string> r in SharedData.Rows("data/heat/choi-okos.tsv"))
        {
            read++;
            string of = r["component"];
            double At(double[] c, double celsius) => c[0] + (c[1] * celsius) + (c[2] * celsius * celsius);
            double[] printed = [r.N("a"), r.N("b"), r.N("c")];
            if (r["property"] != "alpha")
            {
                Assert.True(printed.SequenceEqual(Ours(r["property"], of == "water_below_0" ? "water" : of, of == "water_below_0")!), r["property"] + " " + of);
                continue;
            }

            foreach (double celsius in of == "ice" ? (double[])[-30, -20, -5] : [5, 20, 40, 60])
            {
                double own = At(Ours("k", of, false)!, celsius) / (At(Ours("rho", of, false)!, celsius) * At(Ours("cp", of, false)!, celsius) * 1000);
                Assert.Equal(At(printed, celsius), own, 0.045 * own);
            }
        }

        Assert.Equal(29, read);
    }

    [Fact]
    public void Stages_of_boiled_sugar_are_those_of_the_printed_table()
    {
        // A: McGee 2004; B: a list of common practice. Our stages lie within the two together and overlap both.
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows = SharedData.Rows("data/heat/sugar-stages.tsv");
        Assert.Equal(11, rows.Count);
        int named = 0;
        foreach (IReadOnlyDictionary<string, string> r in rows)
        {
            (double low, double high) = (Math.Min(r.N("A_from_C"), double.IsNaN(r.N("B_from_C")) ? 999 : r.N("B_from_C")), Math.Max(r.N("A_to_C"), double.IsNaN(r.N("B_to_C")) ? 0 : r.N("B_to_C")));
            double[] ours = [.. Enumerable.Range(0, 1100).Select(i => 100 + (i / 10.0)).Where(c => Syrup.Stage(c) == r["stage"])];
            if (ours.Length > 0)
            {
                named++;
                Assert.InRange(ours[0], low - 0.11, high);
                Assert.InRange(ours[^1], low, high + 0.11);
                Assert.True(ours[0] <= r.N("A_to_C") && ours[^1] >= r.N("A_from_C"));
            }
            else
            {
                Assert.True(r.N("A_from_C") >= 160 || r.N("B_from_C") >= 160, r["stage"]);   // caramels are told by colour
            }
        }

        Assert.Equal(6, named);
    }

    [Fact]
    public void What_is_left_of_alcohol_is_every_row_of_the_retention_table()
    {
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows = SharedData.Rows("data/heat/alcohol-retention.tsv");
        Assert.Equal(10, rows.Count);
        foreach (IReadOnlyDictionary<string, string> r in rows.Where(r => r["method"].StartsWith("stirred in", StringComparison.Ordinal)))
        {
            Assert.Equal(r.N("retained_pct") / 100, Spirit.LeftAfter(r.N("minutes")).Best, 1e-9);
        }

        ReferenceTable ours = ReferenceTable.Load("measures/alcohol-left.tsv");
        Assert.Equal(rows.Select(r => (r["minutes"], r["retained_pct"])).Select(r => (r.Item1 == "0" ? "" : r.Item1, r.Item2)).Order(), ours.Rows.Select(r => (r[ours.Column("minutes")], r[ours.Column("percent")])).Select(r => (r.Item1, r.Item2)).Order());
        Assert.Equal(0.85, Spirit.LeftAfter(0).Best, 1e-9);
    }

    [Fact]
    public void Dried_layers_keep_the_diffusivities_of_their_papers()
    {
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows = SharedData.Rows("data/heat/drying.tsv");
        Assert.Equal(11, rows.Count);
        int shipped = 0;
        foreach (IReadOnlyDictionary<string, string> r in rows)
        {
            DryingFood? ours = DryingFood.Find(r["food"].Split(' ')[0]);
            Match span = Span().Match(r["values"]);
            if (ours is null || !span.Success || r["food"].Contains("3-7 mm", StringComparison.Ordinal))
            {
                continue;   // leaves and slices whose thickness differs by orders between papers are not shipped
            }

            shipped++;
            string power = span.Groups["f"].Value;
            Assert.Equal(D(span.Groups["a"].Value + (span.Groups["e"].Value is { Length: > 0 } own ? own : power)), ours.Slow, 1e-13);
            Assert.Equal(D(span.Groups["b"].Value + power), ours.Fast, 1e-13);
            double[] air = [.. Regex.Match(r["conditions"] + r["food"], @"(\d+)-(\d+) C").Groups.Values.Skip(1).Select(g => D(g.Value))];
            Assert.Equal((air[0], air[1]), (ours.Coolest.Celsius, ours.Hottest.Celsius));
        }

        Assert.Equal(4, shipped);
    }

    [GeneratedRegex(@"(?<a>\d+\.\d+)(?<e>e-\d+)?(-| to )(?<b>\d+\.\d+)(?<f>e-\d+)", RegexOptions.ExplicitCapture)]
    private static partial Regex Span();
}
