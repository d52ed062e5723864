using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Matter.Reference;

namespace Coulisse.Matter.Substance;

/// <summary>How a dose of a setting agent stands against its use levels.</summary>
/// <param name="FoodId">The agent.</param>
/// <param name="Percent">Share of the batch, percent.</param>
/// <param name="Verdict">"below", "within" or "above" the usual levels.</param>
/// <param name="Remarks">What of the batch works against it, and what it needs.</param>
public sealed record AgentVerdict(string FoodId, double Percent, string Verdict, ImmutableArray<string> Remarks);

/// <summary>A setting or thickening agent with its usual share of a batch.</summary>
/// <param name="FoodId">Our food.</param>
/// <param name="Low">Least usual share, percent.</param>
/// <param name="High">Greatest usual share, percent.</param>
/// <param name="AlcoholLimit">Percent by volume above which it is unsure; null when not held.</param>
/// <param name="Boil">True when it must boil to work.</param>
/// <param name="Blocked">Raw foods that keep it from setting, in words.</param>
/// <param name="Note">What the levels give.</param>
public sealed record SettingAgent(string FoodId, double Low, double High, double? AlcoholLimit, bool Boil, string Blocked, string Note)
{
    private static readonly Lazy<Dictionary<string, SettingAgent>> Table = new(() =>
    {
        ReferenceTable t = ReferenceTable.Load("measures/setting-agents.tsv");
        return t.Rows.ToDictionary(r => r[0], r => new SettingAgent(r[0], ReferenceTable.Number(r[1])!.Value, ReferenceTable.Number(r[2])!.Value, ReferenceTable.Number(r[t.Column("alcohol")]), r[t.Column("boil")] == "yes", r[t.Column("blocked")], r[t.Column("note")]), StringComparer.Ordinal);
    });

    /// <summary>The agent of a food; null when it sets nothing.</summary>
    public static SettingAgent? Find(string foodId) => Table.Value.GetValueOrDefault(foodId);

    /// <summary>Judges a dose; the levels are rough, so a tenth beyond them is still within.</summary>
    /// <param name="grams">Grams of the agent.</param>
    /// <param name="batchGrams">Grams of the whole batch, agent included.</param>
    /// <param name="alcoholPercent">Alcohol of the batch, percent by mass.</param>
    /// <param name="foods">Ids of the other foods.</param>
    public AgentVerdict Judge(double grams, double batchGrams, double alcoholPercent, IEnumerable<string> foods)
    {
        if (!(grams >= 0 && batchGrams > 0 && grams <= batchGrams))
        {
            throw new ArgumentOutOfRangeException(nameof(batchGrams), batchGrams, "The agent is a part of the batch, and the batch is above 0 g.");
        }

        double percent = 100 * grams / batchGrams;
        List<string> remarks = [];
        if (AlcoholLimit is { } limit && alcoholPercent / Spirit.EthanolDensity > limit)
        {
            remarks.Add(string.Create(CultureInfo.InvariantCulture, $"alcohol is above {limit:0} % by volume: the set is unsure"));
        }

        string[] raw = [.. foods.Where(f => Blocked.Split([", ", " "], StringSplitOptions.RemoveEmptyEntries).Contains(f, StringComparer.Ordinal))];
        if (raw.Length > 0)
        {
            remarks.Add($"raw {string.Join(", ", raw)} keeps it from setting; boil it first");
        }

        return new AgentVerdict(FoodId, percent, percent < 0.9 * Low ? "below" : percent > 1.1 * High ? "above" : "within", [.. remarks, .. Note.Length > 0 ? [Note] : ImmutableArray<string>.Empty]);
    }
}
