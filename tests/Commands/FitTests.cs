using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using System.Xml.Linq;
using Coulisse.Cards;
using Coulisse.Flows.Fits;
using Coulisse.Matter.Shapes;

namespace Coulisse.Commands.Tests;

/// <summary>Every fit: its example works, its neighbours really come out even when they are asked, its drawing is a drawing, and what cannot be is refused in words.</summary>
public sealed class FitTests
{
    public static TheoryData<string> Kinds => new(FitFlow.Kinds.Select(k => k.Name));

    private static FitAnswer Answer(FitKind kind, ImmutableDictionary<string, string> given) => Assert.IsType<Parsed<FitAnswer>.Ok>(FitFlow.Of(kind, given)).Value;

    private static FitAnswer Answer(string kind, params (string Key, string Value)[] given) => Answer(FitFlow.Find(kind)!, given.ToImmutableDictionary(g => g.Key, g => g.Value));

    [Theory]
    [MemberData(nameof(Kinds))]
    public void The_example_is_answered_with_sentences_an_even_neighbour_and_a_drawing(string name)
    {
        FitKind kind = FitFlow.Find(name)!;
        FitAnswer answer = Answer(kind, kind.ExampleValues);

        Assert.NotEmpty(answer.Says);
        Assert.NotEmpty(answer.Even);
        Assert.All(answer.Even, e => Assert.True(e.Even.Smaller is not null || e.Even.Larger is not null, e.Says));
        XDocument svg = XDocument.Parse(SvgDrawing.Write(answer.Drawing));
        Assert.True(svg.Root!.Elements().Count() > 2);
        Assert.Equal(answer.Drawing.Width + 4, double.Parse(svg.Root.Attribute("width")!.Value.Replace("mm", "", StringComparison.Ordinal), CultureInfo.InvariantCulture), 0.01); // millimetres, with a margin of two
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Asked_again_each_neighbour_comes_out_even(string name)
    {
        FitKind kind = FitFlow.Find(name)!;
        FitAnswer answer = Answer(kind, kind.ExampleValues);
        int asked = 0;
        foreach (FitEven row in answer.Even)
        {
            if (FieldOf(kind, row) is not { } field)
            {
                continue;
            }

            foreach (EvenAmount even in new[] { row.Even.Smaller, row.Even.Larger }.OfType<EvenAmount>())
            {
                double amount = even.Amount / (kind.Name == "piped" && field == "have" ? 1 - (6 / 100.0) : 1); // what comes out of the bag, back to what goes in
                string text = kind.Fields.First(f => f.Name == field).Input == FitInput.Sizes ? string.Join('x', FitValues.Sizes(kind.ExampleValues[field]).Select((s, i) => (i == 0 ? amount : s).ToString("R", CultureInfo.InvariantCulture))) : amount.ToString("R", CultureInfo.InvariantCulture);
                FitEven again = Answer(kind, kind.ExampleValues.SetItem(field, text)).Even.First(e => e.Of == row.Of);
                Assert.True(again.Even.Exactly is { } exactly && exactly.Units == even.Units, $"{row.Of} {text}: {again.Says}");
                asked++;
            }
        }

        Assert.True(asked > 0);
    }

    // The field whose value the row speaks of; null where a row has none of its own (the weight of a piece that uses the filling up).
    private static string? FieldOf(FitKind kind, FitEven row) => row.Of switch
    {
        "Diameter" => kind.Name == "tray" ? "piece" : "round",
        "Strip width" => "width",
        "Strip length" => "strip",
        "Piece length" => "strip",
        "Sheet length" => "length",
        "A piece of" => null,
        "g ready to use" => "ready",
        "g" or "g of filling" or "g out of the bag" => "have",
        _ => "count",
    };

    [Fact]
    public void A_piece_that_uses_the_filling_up_does()
    {
        FitAnswer fold = Answer("fold", ("disc", "60"), ("mouth", "6"), ("reach", "18"), ("density", "1.02"), ("have", "510"), ("count", "265"));
        ComesOutEven pieces = fold.Even.Single(e => e.Of == "A piece of").Even;

        // 510 g in pieces of 1.795 g: 284 use it up a little fuller, 285 a little emptier (expected.json P11: 1.79 g a piece)
        Assert.Equal((285, 284), (pieces.Smaller!.Value.Units, pieces.Larger!.Value.Units));
        Assert.Equal(510, pieces.Larger.Value.Units * pieces.Larger.Value.Amount, 1e-9);
    }

    [Fact]
    public void P3_plates_boxes_and_slots_with_what_comes_out_even()
    {
        FitAnswer plates = Answer("tray", ("tray", "530x325"), ("piece", "160"), ("count", "52"), ("slots", "12"));
        ComesOutEven whole = plates.Even.Single(e => e.Of == "plates").Even;

        Assert.Equal((48.0, 54.0), (whole.Smaller!.Value.Amount, whole.Larger!.Value.Amount));
        Assert.Equal(9, whole.Taken);
        Assert.Equal(162.5, plates.Even.Single(e => e.Of == "Diameter").Even.Larger!.Value.Amount, 1e-4); // two rows in 325 mm
        Assert.Equal(26, Answer("tray", ("tray", "530x325"), ("piece", "240"), ("count", "52")).Even.Single(e => e.Of == "plates").Even.Taken);
        Assert.Equal(4, Answer("tray", ("tray", "530x325"), ("piece", "120x90"), ("count", "48")).Even.Single(e => e.Of == "boxes").Even.Taken);
    }

    [Fact]
    public void P4_P12_discs_on_trays_and_cloths()
    {
        Assert.Equal(4, Answer("rounds", ("tray", "330x300"), ("round", "50"), ("gap", "5"), ("count", "120")).Even.Single(e => e.Of == "rounds").Even.Taken);
        Assert.Equal(6, Answer("rounds", ("tray", "530x325"), ("round", "60"), ("gap", "1"), ("count", "280")).Even.Single(e => e.Of == "rounds").Even.Taken);
        Assert.Equal(7, Answer("rounds", ("tray", "530x325"), ("round", "60"), ("gap", "2"), ("count", "280")).Even.Single(e => e.Of == "rounds").Even.Taken);
    }

    [Fact]
    public void P10_bulbs_on_either_side_of_the_discs() // seven give 273, eight 312
    {
        ComesOutEven bulbs = Answer("root", ("root", "92x80"), ("piece", "60"), ("slice", "1.2"), ("peel", "3"), ("count", "280")).Even.Single().Even;

        Assert.Equal((273.0, 312.0), (bulbs.Smaller!.Value.Amount, bulbs.Larger!.Value.Amount));
    }

    [Fact]
    public void P13_P14_packs_on_either_side_of_the_need()
    {
        FitAnswer beet = Answer("buy", ("ready", "710"), ("share", "72"), ("pack", "1000"));
        Assert.Contains(beet.Says, s => s.Contains("986.1 g to buy", StringComparison.Ordinal) && s.Contains("1.4 % over: little to spare", StringComparison.Ordinal));
        Assert.Equal(720, beet.Even.Single().Even.Larger!.Value.Amount, 1e-9);
        Assert.Contains(Answer("buy", ("ready", "1997.6"), ("pack", "500")).Says, s => s.Contains("; 5 of 500 g", StringComparison.Ordinal)); // four would leave 0.1 %
    }

    [Fact]
    public void Another_tin_says_what_the_depth_does_to_the_heating()
    {
        FitAnswer tin = Answer("tin", ("tin", "200x80"), ("fill", "50"), ("to", "160x80"));

        // the same 40 mm in a tin of 0.64 of the area stand 62.5 mm deep
        Assert.Contains(tin.Says, s => s.Contains("62.5 mm deep", StringComparison.Ordinal) && s.Contains("By conduction alone", StringComparison.Ordinal));
        JsonElement batter = JsonDocument.Parse(JsonSerializer.Serialize(tin.Figures.Single(f => f.Key == "sameBatter").Value)).RootElement;
        double factor = batter.GetProperty("conductionFactor").GetDouble();
        Assert.InRange(factor, 62.5 / 40, 62.5 / 40 * 62.5 / 40); // between the depth and its square: a face that resists, conduction that governs
        Assert.DoesNotContain(Answer("tin", ("tin", "200x80"), ("fill", "50"), ("to", "205x80")).Says, s => s.Contains("conduction", StringComparison.Ordinal)); // 38 mm for 40: no warning
    }

    [Fact]
    public void Batter_by_depth_and_by_its_rise() // by hand: 200 mm across, 30 mm deep holds 942.5 mL; batter that doubles fills half of 50 mm
    {
        Assert.Equal(942.5, Grams(("tin", "200x50"), ("depth", "30")), 0.05);
        Assert.Equal(Math.PI * 100 * 100 * 25 / 1000, Grams(("tin", "200x50"), ("rise", "100")), 1e-6);
        Assert.Equal(Math.PI * 100 * 100 * 50 * 0.6 / 1000, Grams(("tin", "200x50"), ("fill", "0.6")), 1e-6);

        static double Grams(params (string, string)[] given) => (double)Answer("tin", given).Figures.Single(f => f.Key == "grams").Value!;
    }

    [Theory]
    [InlineData("tin", "tin=200x50,depth=60", "FIT002", "50 mm deep")]
    [InlineData("grid", "block=330,piece=40x30", "FIT001", "Block")]
    [InlineData("grid", "block=330x220,piece=0x30", "FIT001", "Piece")]
    [InlineData("grid", "block=330x220,piece=400x300", "FIT002", "Not one piece")]
    [InlineData("grid", "block=330x220,piece=40x30,edge=200", "FIT002", "twice the edge")]
    [InlineData("grid", "block=5000x5000,piece=1x1", "FIT002", "more than the 10,000")]
    [InlineData("strips", "block=380x280,width=300", "FIT002", "wider than the sheet")]
    [InlineData("roll", "hole=14,thickness=0", "FIT001", "Thickness")]
    [InlineData("roll", "hole=0,thickness=1.2", "FIT002", "A rod measures more")]
    [InlineData("fold", "disc=60,mouth=90", "FIT002", "opens at most")]
    [InlineData("dumpling", "disc=60,thickness=2,seam=40", "FIT002", "A seam")]
    [InlineData("root", "root=92x80,piece=120", "FIT002", "Not one good piece")]
    [InlineData("root", "root=92x80,piece=60,lost=100", "FIT001", "Lost")]
    [InlineData("peel", "root=60x100,thickness=1,core=70", "FIT002", "The core")]
    [InlineData("tin", "tin=big round one", "FIT002", "is no tin")]
    [InlineData("tin", "tin=dome 70x50", "FIT002", "A dome")]
    [InlineData("ring", "ring=80,round=-3", "FIT001", "Diameter")]
    [InlineData("tray", "tray=530x325,piece=600", "FIT002", "Not one goes in")]
    [InlineData("buy", "ready=710,share=120", "FIT002", "100 per cent")]
    [InlineData("piped", "shape=line,size=8x35x2", "FIT002", "Give line")]
    public void What_cannot_be_is_refused_with_what_would_be_right(string kind, string given, string code, string says)
    {
        Problem problem = Assert.Single(Assert.IsType<Parsed<FitAnswer>.Failed>(FitFlow.Of(FitFlow.Find(kind)!, given.Split(',').Select(g => g.Split('=')).ToImmutableDictionary(g => g[0], g => g[1]))).Problems);

        Assert.Equal(code, problem.Code);
        Assert.Contains(says, problem.Message, StringComparison.Ordinal);
        Assert.NotEmpty(problem.Hint);
    }

    [Fact]
    public void The_command_says_it_writes_it_and_draws_it()
    {
        Ran said = Bench.Run("fit", "tray", "530x325", "160", "--count", "52", "--slots", "12");
        Assert.Equal(0, said.Exit);
        Assert.Contains("52 plates take 9 trays, 2 over. Next smaller that comes out even: 48 (8 trays); next larger: 54 (9 trays).", said.Out, StringComparison.Ordinal);
        JsonElement even = Bench.Run("fit", "tray", "530x325", "160", "--count", "52", "--json").Json.GetProperty("comesOutEven").EnumerateArray().Last();
        Assert.Equal((48, 54, 9), (even.GetProperty("smaller").GetProperty("amount").GetInt32(), even.GetProperty("larger").GetProperty("amount").GetInt32(), even.GetProperty("larger").GetProperty("units").GetInt32()));
        Assert.Equal("svg", XDocument.Parse(Bench.Run("fit", "tin", "GN", "1/2", "65", "--svg").Out).Root!.Name.LocalName);
        Ran wrong = Bench.Run("fit", "grid", "330", "40x30");
        Assert.Equal((2, ""), (wrong.Exit, wrong.Out));
        Assert.Contains("Write 2 to 3 in millimetres", wrong.Error, StringComparison.Ordinal);
        Assert.Equal(1, Bench.Run("fit", "grid", "330x220", "400x300").Exit);
    }

    [Fact]
    public void Every_kind_stands_in_the_help_and_in_the_table_of_commands()
    {
        string help = Bench.Run("fit", "--help").Out;
        string page = File.ReadAllText(Path.Combine(Coulisse.Tests.SharedData.Repository, "docs", "commands.md"));
        Assert.All(FitFlow.Kinds, k =>
        {
            Assert.Contains("coulisse " + k.Example, help, StringComparison.Ordinal);
            Assert.Contains("fit " + k.Name, page, StringComparison.Ordinal);
        });
    }
}
