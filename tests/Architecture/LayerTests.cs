using ArchUnitNET.Domain;
using ArchUnitNET.Loader;

namespace Coulisse.Architecture.Tests;

/// <summary>Inside Matter and Kitchen each folder uses only folders above it in the list.</summary>
public sealed class LayerTests
{
    private static readonly string[] Matter = ["Quantities", "Reference", "Foods", "Measures", "Shapes", "Substance", "Heat"];
    private static readonly string[] Kitchen = ["Occasions", "Formulas", "Method", "Safety", "Labels", "Planning", "Plating", "Needs", "AtHome", "Trials"];

    private static readonly ArchUnitNET.Domain.Architecture Loaded = new ArchLoader().LoadAssemblies(
        typeof(Coulisse.Matter.Quantities.Mass).Assembly,
        typeof(Coulisse.Kitchen.Planning.Plan).Assembly,
        typeof(LayerTests).Assembly).Build();

    [Fact]
    public void Matter_flows_one_way() => Assert.Empty(Violations("Coulisse.Matter", Matter));

    [Fact]
    public void Kitchen_flows_one_way() => Assert.Empty(Violations("Coulisse.Kitchen", Kitchen));

    [Fact]
    public void Every_folder_is_in_the_list()
    {
        Assert.Empty(Folders("Coulisse.Matter").Except(Matter));
        Assert.Empty(Folders("Coulisse.Kitchen").Except(Kitchen));
    }

    [Fact]
    public void A_planted_upward_use_is_seen()
    {
        string violation = Assert.Single(Violations("Coulisse.Architecture.Tests.Planted", ["Lower", "Upper"]));
        Assert.Contains("Low", violation);
    }

    private static string[] Folders(string root) => [.. Loaded.Types
        .Select(t => Folder(t, root)).OfType<string>().Distinct().Order(StringComparer.Ordinal)];

    private static string? Folder(IType type, string root)
    {
        // a type parameter has no namespace
        string? name = type.Namespace?.FullName;
        return name is not null && name.StartsWith(root + ".", StringComparison.Ordinal) ? name[(root.Length + 1)..].Split('.')[0] : null;
    }

    private static List<string> Violations(string root, string[] order)
    {
        List<string> found = [];
        foreach (IType type in Loaded.Types)
        {
            if (Folder(type, root) is not { } mine)
            {
                continue;
            }

            foreach (IType target in type.Dependencies.Select(d => d.Target).Distinct())
            {
                if (Folder(target, root) is { } theirs && Array.IndexOf(order, theirs) > Array.IndexOf(order, mine))
                {
                    found.Add($"{type.FullName} uses {target.FullName}");
                }
            }
        }

        return found;
    }
}
