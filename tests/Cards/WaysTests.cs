using System.Globalization;
using Coulisse.Cards.Reading;
using Coulisse.Tests;

namespace Coulisse.Cards.Tests;

/// <summary>Ways people write a line or a step, one kind a row, in six languages: invented, with the reading a cook would give.</summary>
public sealed class WaysTests
{
    private static IEnumerable<string[]> Rows(string kind) => File.ReadLines(Path.Combine(SharedData.Repository, "tests/Cards/ways.tsv")).Where(l => l.Length > 0 && l[0] != '#').Select(l => l.Split('\t')).Where(r => r[1] == kind);

    [Fact]
    public void Every_line_is_read_as_a_cook_would()
    {
        string[][] rows = [.. Rows("line")];
        Assert.True(rows.Length > 200);
        Assert.Equal(rows.Select(r => $"{r[2]} = {r[3]}"), rows.Select(r => $"{r[2]} = {string.Join(" + ", CardReader.ReadLine(r[2], r[0]).Foods.Select(Said))}"));
    }

    [Fact]
    public void Every_step_has_its_minutes_and_degrees()
    {
        string[][] rows = [.. Rows("step")];
        Assert.True(rows.Length > 90);
        Assert.Equal(rows.Select(r => $"{r[2]} = {r[3]} | {r[4]}"), rows.Select(r =>
        {
            Step s = CardReader.ReadStep(r[2], r[0]);
            string times = string.Join(' ', s.Times.Select(t => string.Create(CultureInfo.InvariantCulture, $"{t.MinutesMin:0.##}-{t.MinutesMax:0.##}")));
            return $"{r[2]} = {times} | {string.Join(' ', s.Temperatures.Select(t => t.Celsius.ToString("0.##", CultureInfo.InvariantCulture)))}";
        }));
    }

    private static string Said(FoodAmount f) => string.Create(CultureInfo.InvariantCulture, $"{f.Amount:0.###}{(f.AmountMax is { } m ? string.Create(CultureInfo.InvariantCulture, $"-{m:0.###}") : "")} {f.Unit} {f.Food}").Trim();
}
