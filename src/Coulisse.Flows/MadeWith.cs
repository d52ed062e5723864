using System.Collections.Immutable;
using System.Reflection;
using System.Security.Cryptography;
using System.Text;
using Coulisse.Formats.Travel;
using Coulisse.Kitchen.Occasions;
using Coulisse.Matter.Quantities;
using Coulisse.Solver;

namespace Coulisse.Flows;

/// <summary>What a plan was made with, so that what was shown can be proven later: the program, its tables, its solver, and each card as it was read.</summary>
public static class MadeWith
{
    private static readonly Lazy<string> TablesHash = new(() =>
    {
        Assembly matter = typeof(Mass).Assembly;
        using IncrementalHash all = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (string name in matter.GetManifestResourceNames().Order(StringComparer.Ordinal))
        {
            using Stream stream = matter.GetManifestResourceStream(name)!;
            byte[] bytes = new byte[stream.Length];
            stream.ReadExactly(bytes);
            all.AppendData(Encoding.UTF8.GetBytes(name + "\n"));
            all.AppendData(bytes);
        }

        return Convert.ToHexStringLower(all.GetHashAndReset())[..12];
    });

    /// <summary>Fingerprint of every table the program reckons with.</summary>
    public static string Tables => TablesHash.Value;

    /// <summary>Version of the program.</summary>
    public static string Engine { get; } = Plain(typeof(MadeWith).Assembly);

    /// <summary>Names and versions for a plan of this occasion.</summary>
    /// <param name="occasion">The occasion with its cards as they were read.</param>
    public static ImmutableDictionary<string, string> Of(Occasion occasion)
    {
        ImmutableDictionary<string, string>.Builder all = ImmutableDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        all["engine"] = Engine;
        all["solver"] = SolverVersion.Text;
        all["tables"] = Tables;
        foreach (OccasionDish dish in occasion.Dishes)
        {
            // what was read of the card, whatever file or store it came from
            all["card " + dish.Dish.Title] = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(TravelJson.Write(dish.Dish))))[..12];
        }

        if (!occasion.Learnt.IsEmpty || !occasion.LearntCards.IsEmpty)
        {
            all["learnt"] = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(TravelJson.Write(occasion.Learnt) + TravelJson.Write(occasion.LearntCards))))[..12];
        }

        return all.ToImmutable();
    }

    private static string Plain(Assembly assembly) => (assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? assembly.GetName().Version?.ToString() ?? "unknown").Split('+')[0];
}
