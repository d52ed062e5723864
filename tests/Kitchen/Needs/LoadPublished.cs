using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Needs;
using Coulisse.Kitchen.Planning;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Shapes;
using CsCheck;
using NodaTime;

namespace Coulisse.Kitchen.Tests.Needs;

/// <summary>Worked answers of the demo occasion: expected.json P2, P3, P23.</summary>
public sealed class LoadPublished
{
    private static readonly LocalDateTime Nine = new(2026, 10, 10, 9, 50);

    [Theory] // three together 3.8 kW over 3.68; any two are allowed: 2.6, 3.2, 1.8
    [InlineData("SH2 VM BL", 3.8, true)]
    [InlineData("SH2 VM", 2.6, false)]
    [InlineData("SH2 BL", 3.2, false)]
    [InlineData("VM BL", 1.8, false)]
    public void Kit_on_one_circuit_adds_up_P2(string together, double kilowatts, bool over)
    {
        LoadProfile load = Circuit([.. together.Split(' ').Select(k => Task(k, 0, 16))]);

        Assert.Equal(kilowatts, load.Peak!.Amount, 1e-9);
        Assert.Equal(over, !load.Over.IsEmpty);
    }

    [Fact]
    public void Kit_that_starts_as_another_stops_does_not_add_up_and_a_moment_counts_once()
    {
        LoadProfile load = Circuit([Task("SH2", 0, 16), Task("BL", 10, 11), Task("VM", 11, 12), Task("BL", 10, 11)]);

        Assert.Equal(3.2, load.Peak!.Amount, 1e-9);
        Assert.Empty(load.Over);
    }

    [Fact]
    public void Plates_of_160_mm_fill_the_fridge_and_of_240_mm_never_fit_P3()
    {
        Assert.Equal((2, 26), OnTrays(240));
        Assert.Equal((6, 9), OnTrays(160));
        Assert.Equal(12, Load(("plates", 9), ("spares", 1), ("tins", 2)).Peak!.Amount);
        int boxes = BoxesOnTray.Fit(Mm(530), Mm(325), Mm(120), Mm(90)).PerTray;
        Assert.Equal(4, (48 + boxes - 1) / boxes);
    }

    [Fact]
    public void Six_cloths_fit_the_fridge_and_seven_do_not_P23()
    {
        Assert.Empty(Load(("tins", 2), ("cloths", 6), ("bars", 1), ("diet parts", 1), ("bottles", 1), ("tubs", 1)).Over);
        LoadStretch over = Assert.Single(Load(("tins", 2), ("cloths", 7), ("bars", 1), ("diet parts", 1), ("bottles", 1), ("tubs", 1)).Over);
        Assert.Equal(13, over.Amount);
    }

    [Fact]
    public void Load_over_time_is_the_sum_of_its_pieces()
        => Gen.Select(Gen.Int[0, 50], Gen.Int[1, 50], Gen.Int[1, 9]).Array[1, 12].Sample(pieces =>
        {
            LoadProfile load = LoadProfile.Of("x", "slots", 5, pieces.Select((p, i) => new LoadPiece($"{i}", p.Item3, Nine.PlusMinutes(p.Item1), Nine.PlusMinutes(p.Item1 + p.Item2))));
            return Enumerable.Range(0, 101).All(m => load.At(Nine.PlusMinutes(m)) == pieces.Where(p => p.Item1 <= m && m < p.Item1 + p.Item2).Sum(p => p.Item3));
        });

    [Fact]
    public void The_drawing_shows_the_limit_and_marks_what_is_over_it()
    {
        Drawing drawing = Load(("a", 9), ("b", 4)).Draw();

        Assert.Contains(drawing.Marks, m => m is RectMark { Ink: Ink.Trim });
        Assert.DoesNotContain(Load(("a", 9)).Draw().Marks, m => m is RectMark { Ink: Ink.Trim });
        Assert.All(drawing.Marks.OfType<RectMark>(), r => Assert.True(r.Y >= 0 && r.Y + r.Height <= drawing.Height));
    }

    private static (int PerTray, int Trays) OnTrays(double plate)
    {
        int held = RoundsOnTray.Fit(Mm(530), Mm(325), Mm(plate), Mm(0)).Count;
        return (held, (52 + held - 1) / held);
    }

    private static LoadProfile Load(params (string What, int Slots)[] items) => LoadProfile.Of("F1", "slots", 12, items.Select(i => new LoadPiece(i.What, i.Slots, Nine, Nine.PlusHours(1))));

    private static LoadProfile Circuit(PlannedTask[] tasks)
    {
        Plan plan = new() { Title = "x", SlotStart = Nine, SlotLength = Duration.FromMinutes(25), Tasks = [.. tasks] };
        return LoadProfile.Circuits(plan, Demo.Occasion.Kit, Demo.Occasion.Circuits).Single(c => c.Title == "Circuit K3");
    }

    private static PlannedTask Task(string kit, int from, int to) => new() { Id = $"{kit}{from}", Text = kit, Kind = TaskKind.Work, Start = Nine.PlusMinutes(from), End = Nine.PlusMinutes(to), Kit = [kit] };

    private static Length Mm(double mm) => Length.FromMillimetres(mm);
}
