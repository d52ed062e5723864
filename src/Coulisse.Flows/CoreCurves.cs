using System.Globalization;
using Coulisse.Cards;
using Coulisse.Formats.In;
using Coulisse.Kitchen.Trials;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Flows;

/// <summary>Lays a prediction over each core curve of a trial and writes down the h that fits.</summary>
public static class CoreCurves
{
    /// <summary>Farthest a fit may lie off, K root mean square, and still say something of the bath: beyond it shape, size or start are not what was written. Common practice, no source.</summary>
    public const double MostMisfit = 2;

    // As of the probe command: a moist food. A faster food than it was fits a slower face, so the h that is learnt errs low.
    private const double MoistDiffusivity = 1.4e-7;
    private const double MoistConductivity = 0.48;
    private const double LeastWatts = 3;
    private const double MostWatts = 3000;

    /// <summary>The trial with h of every curve whose file can be found; what cannot be fitted says why and teaches nothing.</summary>
    /// <param name="trial">As read from its sheet.</param>
    /// <param name="file">Readings of a file by its name; null when there is none.</param>
    public static Trial Fitted(Trial trial, Func<string, ProbeRun?> file)
    {
        ArgumentNullException.ThrowIfNull(trial);
        ArgumentNullException.ThrowIfNull(file);
        return trial.Cores.IsEmpty ? trial : trial with { Cores = [.. trial.Cores.Select(c => c.Watts is not null || c.File.Length == 0 ? c : Fit(c, file(c.File)))] };
    }

    /// <summary>Readings of a probe's file; null when it does not read.</summary>
    public static ProbeRun? Read(byte[] bytes) => TextBytes.Read(bytes).Match(ProbeFile.Read, p => new Parsed<ProbeRun>.Failed(p)) is Parsed<ProbeRun>.Ok(var run) ? run : null;

    private static TrialCore Fit(TrialCore core, ProbeRun? run)
    {
        if (run is null)
        {
            return core with { Why = $"{core.File} is not beside the trial." };
        }

        ProbeChannel middle = run.Channels[0];
        bool set = double.TryParse(core.Medium.Replace(',', '.'), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out double celsius) && celsius is >= -40 and <= 300;
        if ((!set && run.Find(core.Medium) is null) || !Enum.TryParse(core.Shape, ignoreCase: true, out SolidShape shape) || core.Millimetres.IsEmpty)
        {
            return core with { Why = $"What it lay in is not known: “{core.Medium}” is neither degrees nor one of the channels {string.Join(", ", run.Channels.Select(c => c.Name))}." };
        }

        // A channel of the bath may stand first in the file: the middle is the other one.
        ProbeChannel? around = set ? null : run.Find(core.Medium);
        middle = around == middle ? run.Channels.FirstOrDefault(c => c != around) ?? middle : middle;
        Medium medium = around is null ? Medium.Constant(Temperature.FromCelsius(celsius)) : Medium.Through([.. around.Readings.Select(r => (Duration.FromMinutes(r.Minute), r.At))]);
        HeatMaterial food = HeatMaterial.Constant(Conductivity.FromWattsPerMetreKelvin(MoistConductivity), Diffusivity.FromSquareMetresPerSecond(MoistDiffusivity));
        try
        {
            ProbeFit fit = ProbeFit.Of(middle, h => HeatBody.Piece(shape, [.. core.Millimetres.Select(Length.FromMillimetres)], food, new BodyFace(HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(h), medium), core.Millimetres.Length > 1 ? 8 : 16), LeastWatts, MostWatts);
            return fit.Misfit > MostMisfit
                ? core with { Misfit = fit.Misfit, Why = string.Create(CultureInfo.InvariantCulture, $"The best h lies {fit.Misfit:0.#} K off the curve; look at shape, size and when it went in.") }
                : core with { Watts = fit.Value, WattsLeast = fit.Low, WattsMost = fit.High, Misfit = fit.Misfit };
        }
        catch (ArgumentException e)
        {
            return core with { Why = e.Message.Split(" (Parameter", StringSplitOptions.None)[0] };
        }
    }
}
