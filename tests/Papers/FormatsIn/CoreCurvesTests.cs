using System.Globalization;
using System.Text;
using Coulisse.Cards;
using Coulisse.Flows;
using Coulisse.Formats.Travel;
using Coulisse.Kitchen.Trials;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using Coulisse.Store;
using NodaTime;

namespace Coulisse.Papers.Tests.FormatsIn;

/// <summary>Probe files beside a trial are fitted to the h of their bath; curves are made by the exact series, which the fit's own grid does not use.</summary>
public sealed class CoreCurvesTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("coulisse-curves").FullName;

    public void Dispose() => Directory.Delete(_folder, true);

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private static byte[] Curve(double h, double mm = 20, double bath = 60, bool channel = false)
    {
        SolidBody body = SolidBody.Of(SolidShape.Slab, [Length.FromMillimetres(mm)], Diffusivity.FromSquareMetresPerSecond(1.4e-7), Conductivity.FromWattsPerMetreKelvin(0.48), HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(h));
        StringBuilder b = new(channel ? "minutes,core,bath\n" : "minutes,core\n");
        for (int i = 0; i <= 60; i++)
        {
            double at = body.CoreAfter(Temperature.FromCelsius(5), Temperature.FromCelsius(bath), Duration.FromMinutes(i)).Celsius;
            b.Append(CultureInfo.InvariantCulture, $"{i},{at:0.00}{(channel ? FormattableString.Invariant($",{bath:0.0}") : "")}\n");
        }

        return Encoding.UTF8.GetBytes(b.ToString());
    }

    private static string Sheet(string file = "run.csv", string medium = "60", string size = "20") => $"# Trial of Egg bag\n\nMade on 2026-03-01 by Ada. Good run.\n\n## Core\n| Part | Step | File | Shape | Size, mm | Medium, °C | h, W/(m²·K) |\n|---|---|---|---|---|---|---|\n| | Bath 60 min at 60 °C. | {file} | slab | {size} | {medium} | |\n";

    private static TrialCore Fit(string sheet, byte[] bytes) => Assert.Single(CoreCurves.Fitted(TrialSheet.Read(sheet).Match(t => t, p => throw new InvalidOperationException(string.Join("; ", p))), name => name == "run.csv" ? CoreCurves.Read(bytes) : null).Cores);

    [Theory]
    [InlineData(40)]
    [InlineData(95)]
    [InlineData(150)]
    public void The_h_that_made_a_curve_is_found_within_a_tenth_and_lies_in_its_range(double h)
    {
        TrialCore core = Fit(Sheet(), Curve(h));
        Assert.InRange(core.Watts!.Value, 0.9 * h, 1.1 * h);
        Assert.True(core.WattsLeast <= h && (core.WattsMost is null || core.WattsMost >= h), $"{core.WattsLeast} to {core.WattsMost}");
        Assert.Equal(core.Watts.Value, Fit(Sheet(medium: "bath"), Curve(h, channel: true)).Watts!.Value, 0.05 * h);
    }

    [Fact]
    public void A_piece_of_another_size_than_was_written_teaches_nothing_and_says_so()
    {
        TrialCore core = Fit(Sheet(size: "60"), Curve(95));
        Assert.Null(core.Watts);
        Assert.Contains("K off the curve", core.Why, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("other.csv", "60", "not beside the trial")]
    [InlineData("run.csv", "pool", "neither degrees nor one of the channels core")]
    public void What_cannot_be_laid_over_says_why(string file, string medium, string why)
    {
        TrialCore core = Fit(Sheet(file, medium), Curve(95));
        Assert.Null(core.Watts);
        Assert.Contains(why, core.Why, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_that_is_put_beside_a_kept_sheet_is_fitted_and_the_sheet_stays_as_it_was_written()
    {
        await using KitchenStore store = await KitchenStore.OpenAsync(_folder, TimeProvider.System, cancel: Cancel);
        string card = Assert.IsType<SaveOutcome.Saved>(await store.SaveAsync(DocumentKind.Card, null, 0, "Egg bag", "# Egg bag\n\n- 600 g egg yolk\n\n1. Bath 60 min at 60 °C.\n", "w", "", Cancel)).Id;
        TrialShelf shelf = new(store);
        string trial = Assert.IsType<Parsed<string>.Ok>(await shelf.KeepAsync(null, card, Sheet(), "Ada", Cancel)).Value;
        Assert.Null(Assert.Single(TravelJson.Read<Trial>((await store.TrialAsync(trial, Cancel))!.Json).Cores).Watts);
        Assert.IsType<Parsed<string>.Ok>(await shelf.ProbeAsync(trial, "run.csv", Curve(95), Cancel));
        Assert.InRange(Assert.Single(TravelJson.Read<Trial>((await store.TrialAsync(trial, Cancel))!.Json).Cores).Watts!.Value, 85, 105);
        Assert.Single(await store.VersionsAsync(trial, Cancel));
        Assert.Equal(Sheet(), (await store.OpenDocumentAsync(trial, Cancel))!.Text);
    }
}
