using System.Text.RegularExpressions;
using System.Xml.Linq;
using Coulisse.Tests;

namespace Coulisse.Architecture.Tests;

/// <summary>The references between projects are the arrows of docs/architecture.md and nothing else.</summary>
public sealed class ProjectGraphTests
{
    private static readonly Dictionary<string, string[]> Arrows = new(StringComparer.Ordinal)
    {
        ["Matter"] = [],
        ["Cards"] = ["Matter"],
        ["Kitchen"] = ["Cards"],
        ["Solver"] = ["Kitchen"],
        ["Formats"] = ["Kitchen"],
        ["Views"] = ["Kitchen"],
        ["Store"] = ["Kitchen"],
        ["Papers"] = ["Views"],
        ["Flows"] = ["Formats", "Papers", "Solver", "Store", "Views"],
        ["Web"] = ["Flows", "Views"],
        // The command line starts the bench ("serve"), so it sees the web project too: decision 0004.
        ["Cli"] = ["Flows", "Views", "Web"],
    };

    [Fact]
    public void Projects_refer_to_each_other_as_the_architecture_says()
    {
        Assert.Equal(Arrows.Keys.Order(StringComparer.Ordinal), Directory.GetDirectories(Path.Combine(SharedData.Repository, "src")).Select(d => Path.GetFileName(d).Replace("Coulisse.", "", StringComparison.Ordinal)).Order(StringComparer.Ordinal));
        foreach ((string project, string[] expected) in Arrows)
        {
            Assert.Equal(expected, References(File.ReadAllText(Path.Combine(SharedData.Repository, "src", $"Coulisse.{project}", $"Coulisse.{project}.csproj"))));
        }
    }

    [Fact]
    public void A_planted_reference_is_seen()
        => Assert.NotEqual(Arrows["Matter"], References("<Project><ItemGroup><ProjectReference Include=\"../Coulisse.Kitchen/Coulisse.Kitchen.csproj\" /></ItemGroup></Project>"));

    private static string[] References(string xml) => [.. XDocument.Parse(xml).Descendants("ProjectReference")
        .Select(r => Regex.Match(r.Attribute("Include")!.Value, @"Coulisse\.(\w+)\.csproj").Groups[1].Value)
        .Order(StringComparer.Ordinal)];
}
