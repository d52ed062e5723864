using System.Collections.Immutable;
using Coulisse.Kitchen.Planning;
using Coulisse.Papers.Pages;
using Coulisse.Tests;
using Coulisse.Views.Papers;
using NodaTime;

namespace Coulisse.Papers.Tests;

/// <summary>Occasions drawn by chance print without overflow, overlap or lost row: thirty here, a thousand in the long run.</summary>
public sealed class ByChanceTests
{
    private static readonly string[] Foods = ["whole milk", "plain flour", "caster sugar", "butter", "egg yolk", "rye bread", "żółtko", "黄身", "walnut pieces", "cold-pressed rapeseed oil", "zorbleflakes", "fine sea salt", "Γάλα"];
    private static readonly string[] Works = ["Whisk", "Bake 20 min at 170 °C", "Chill 3 h", "Cut into 7 × 4", "Blend 2 min and pass", "Simmer 25 min, then leave it alone until it has gone quite cold and firm to the touch all over"];
    private static readonly string[] Names = ["Ada", "Bo", "Maximiliane-Theodora", "李", "Åse"];

    [Fact]
    public void Occasions_by_chance_print_lawfully()
    {
        for (int seed = 1; seed <= (LongRun.On ? 1000 : 30); seed++)
        {
            Random chance = new(seed);
            PaperBundle bundle = Draw(chance);
            PageFormat format = seed % 2 == 0 ? PageFormat.A4 : PageFormat.Letter;
            foreach (Paper paper in PaperShelf.Papers(bundle).Where(p => p.Kind != LabelPaper.Kind))
            {
                try
                {
                    GeometryTests.Lawful(paper, format, pdf: LongRun.On || seed % 10 == 1);
                }
                catch (Xunit.Sdk.XunitException e)
                {
                    Assert.Fail($"seed {seed}, {paper.Id} on {format.Name}: {e.Message}");
                }
            }
        }
    }

    private static PaperBundle Draw(Random chance)
    {
        string Line() => $"- {chance.Next(1, 900)} g {Foods[chance.Next(Foods.Length)]}{(chance.Next(4) == 0 ? ", cut as fine as patience allows" : "")}";
        string Part(int n) => $"## Part {n} {new string((char)('a' + chance.Next(26)), chance.Next(1, 30))}\n\n{string.Join('\n', Enumerable.Range(0, chance.Next(1, 25)).Select(_ => Line()))}\n\n{string.Join('\n', Enumerable.Range(1, chance.Next(1, 8)).Select(i => $"{i}. {Works[chance.Next(Works.Length)]}."))}\n\n";
        string card = $"# Dish {chance.Next(1000)}\n\nServes {chance.Next(2, 90)}.\n\n" + string.Concat(Enumerable.Range(1, chance.Next(1, 7)).Select(Part));
        LocalDateTime at = new(2026, 10, 9, 8, 0);
        ImmutableArray<PlannedTask> tasks = [.. Enumerable.Range(0, chance.Next(1, 70)).Select(i => new PlannedTask
        {
            Id = $"t{i}", Text = Works[chance.Next(Works.Length)], Kind = (TaskKind)chance.Next(9), Start = at.PlusMinutes(i * 9), End = at.PlusMinutes((i * 9) + chance.Next(1, 200)), People = [.. Names.OrderBy(_ => chance.Next()).Take(chance.Next(0, 3))],
            Kit = [.. Enumerable.Range(0, chance.Next(3)).Select(k => $"K{k}")], Grams = chance.Next(3) == 0 ? chance.Next(1, 5000) / 3.0 : null, Slack = Duration.FromMinutes(chance.Next(200)), Component = $"Part {chance.Next(1, 5)}",
        })];
        int start = 0;
        ImmutableArray<RunSegment> run = [.. Enumerable.Range(1, chance.Next(1, 20)).Select(n =>
        {
            int seconds = chance.Next(10, 400);
            start += seconds;
            return new RunSegment { Number = n, StartSecond = start - seconds, Seconds = seconds, Show = Works[chance.Next(Works.Length)], Who = Names.Take(chance.Next(1, 6)).ToImmutableSortedDictionary(p => p, _ => Works[chance.Next(Works.Length)]), Gate = chance.Next(3) == 0, Silence = chance.Next(4) == 0, DroppableSeconds = chance.Next(2) * 30, DropRank = n };
        })];
        ImmutableArray<Twin> twins = [.. Enumerable.Range(1, chance.Next(0, 12)).Select(n => new Twin { Number = n, Component = $"Part {chance.Next(1, 5)}", State = Works[chance.Next(Works.Length)], ReadyBy = at.PlusHours(n), BroughtBy = Names[chance.Next(Names.Length)], CueSecond = n * 40, Place = "shelf", Holds = "5 °C or less", Afterwards = "bin" })];
        return new PaperBundle
        {
            Mark = Bundles.Mark, Batches = [.. Enumerable.Range(0, chance.Next(1, 3)).Select(_ => Bundles.Card(card))],
            Plan = new Plan { Title = "By chance", SlotStart = new LocalDateTime(2026, 10, 10, 14, 0), SlotLength = Duration.FromMinutes(25), Tasks = tasks, RunSheet = run, Twins = twins },
            IfThens = [.. Enumerable.Range(0, chance.Next(0, 12)).Select(i => new IfThen(i % 3 == 0 ? "kit" : i % 3 == 1 ? "person" : "delay", $"K{i} fails", Works[chance.Next(Works.Length)], [.. Names.Take(i % 4).Select(p => p + ": " + Works[0])]))],
        };
    }
}
