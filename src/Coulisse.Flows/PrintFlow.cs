using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using Coulisse.Formats.Travel;
using Coulisse.Kitchen.Planning;
using Coulisse.Papers;
using Coulisse.Views.Papers;
using NodaTime;

namespace Coulisse.Flows;

/// <summary>Prints the papers of a planned occasion into a folder.</summary>
public static class PrintFlow
{
    /// <summary>One version of the truth for every sheet.</summary>
    /// <param name="planned">The planned occasion.</param>
    /// <param name="now">Moment of printing, local.</param>
    public static PaperBundle Bundle(PlannedOccasion planned, LocalDateTime now) => new()
    {
        Mark = new PaperMark(Version(planned), now.ToString("d MMM uuuu, HH:mm", System.Globalization.CultureInfo.InvariantCulture)),
        Occasion = planned.Occasion,
        Plan = planned.Outcome as Plan,
        Batches = planned.Batches,
        Findings = planned.Findings,
    };

    /// <summary>Writes each sheet as a PDF file; nothing is left half-written.</summary>
    /// <returns>File names in the order of the shelf.</returns>
    /// <exception cref="IOException">The folder cannot be written.</exception>
    public static ImmutableArray<string> Write(PaperBundle bundle, PaperChoice choice, string folder)
    {
        ImmutableArray<PrintedPaper> printed = PaperPrinter.Print(bundle, choice);
        Directory.CreateDirectory(folder);
        ImmutableArray<string>.Builder names = ImmutableArray.CreateBuilder<string>();
        foreach (PrintedPaper paper in printed)
        {
            string name = FileName(paper.Paper.Id) + ".pdf";
            string part = Path.Combine(folder, name + ".part");
            File.WriteAllBytes(part, paper.Pdf.Bytes);
            File.Move(part, Path.Combine(folder, name), true);
            names.Add(name);
        }

        return names.ToImmutable();
    }

    /// <summary>A short mark that changes whenever anything a sheet is made of changes.</summary>
    public static string Version(PlannedOccasion planned)
    {
        string all = TravelJson.Write(planned.Batches) + (planned.Outcome is Plan plan ? TravelJson.Write(plan) : "");
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(all)))[..8];
    }

    private static string FileName(string id) => string.Concat(id.Select(c => char.IsLetterOrDigit(c) || c is '-' or '_' ? c : '-'));
}
