using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Matter.Reference;

namespace Coulisse.Matter.Substance;

/// <summary>What an agent is put into.</summary>
/// <param name="BatchGrams">Grams of the whole batch, agent included.</param>
public sealed record AgentSetting(double BatchGrams)
{
    /// <summary>Alcohol, percent by volume.</summary>
    public double AlcoholPercentVolume { get; init; }

    /// <summary>Salt, percent of the batch.</summary>
    public double SaltPercent { get; init; }

    /// <summary>Organic acid, percent of the batch.</summary>
    public double AcidPercent { get; init; }

    /// <summary>pH, as a person measured and wrote it; null when nobody did. It cannot be worked out from the parts.</summary>
    public double? Ph { get; init; }

    /// <summary>Soluble solids, percent of the water phase; null when not known.</summary>
    public double? SolubleSolids { get; init; }

    /// <summary>Hottest the method says it gets, °C, boiling counted as 100; null when the method says nothing about heat.</summary>
    public double? Hottest { get; init; }

    /// <summary>Ids of foods that go in raw.</summary>
    public ImmutableArray<string> Raw { get; init; } = [];

    /// <summary>Bloom of gelatine; null when it is not said.</summary>
    public double? Bloom { get; init; }
}

/// <summary>How a dose of a setting agent stands against its use levels.</summary>
/// <param name="FoodId">The agent.</param>
/// <param name="Percent">Share of the batch, percent.</param>
/// <param name="Verdict">"below", "within" or "above" the usual levels.</param>
/// <param name="Remarks">What of the batch works against it, and what it needs.</param>
public sealed record AgentVerdict(string FoodId, double Percent, string Verdict, ImmutableArray<string> Remarks);

/// <summary>A setting or thickening agent with its usual share of a batch and what works against it.</summary>
/// <param name="FoodId">Our food.</param>
/// <param name="Low">Least usual share, percent.</param>
/// <param name="High">Greatest usual share, percent.</param>
public sealed record SettingAgent(string FoodId, double Low, double High)
{
    /// <summary>Bloom that the levels of gelatine are given at.</summary>
    public const double LevelBloom = 200;

    // Half a percent of acid is about the sourness of a fruit juice, pH 3 to 4: the least at which an unmeasured pH is worth a word (common practice).
    private const double SourPercent = 0.5;

    private static readonly Lazy<Dictionary<string, SettingAgent>> Table = new(() =>
    {
        ReferenceTable t = ReferenceTable.Load("measures/setting-agents.tsv");
        return t.Rows.ToDictionary(r => r[0], r =>
        {
            double? N(string column) => ReferenceTable.Number(r[t.Column(column)].TrimEnd('m', '*'));
            return new SettingAgent(r[0], N("low")!.Value, N("high")!.Value)
            {
                PhLow = N("phlow"), PhHigh = N("phhigh"), AlcoholLimit = N("alcohol"), SaltLimit = N("salt"), Needs = N("needs"), Boil = r[t.Column("boil")] == "yes", SolidsLeast = N("solids"),
                Blocked = [.. r[t.Column("blocked")].Split(' ', StringSplitOptions.RemoveEmptyEntries)], Note = r[t.Column("note")],
            };
        }, StringComparer.Ordinal);
    });

    /// <summary>Least pH at which it works; null when not held.</summary>
    public double? PhLow { get; init; }

    /// <summary>Greatest pH.</summary>
    public double? PhHigh { get; init; }

    /// <summary>Percent by volume above which it is unsure.</summary>
    public double? AlcoholLimit { get; init; }

    /// <summary>Percent of salt above which it weakens.</summary>
    public double? SaltLimit { get; init; }

    /// <summary>Temperature it must see, °C.</summary>
    public double? Needs { get; init; }

    /// <summary>True when it must boil.</summary>
    public bool Boil { get; init; }

    /// <summary>Least share of soluble solids, percent.</summary>
    public double? SolidsLeast { get; init; }

    /// <summary>Raw foods whose enzymes keep it from setting.</summary>
    public ImmutableArray<string> Blocked { get; init; } = [];

    /// <summary>What the levels give.</summary>
    public string Note { get; init; } = "";

    /// <summary>The agent of a food; null when it sets nothing.</summary>
    public static SettingAgent? Find(string foodId) => Table.Value.GetValueOrDefault(foodId);

    /// <summary>Judges a dose; the levels are rough, so a tenth beyond them is still within.</summary>
    /// <param name="grams">Grams of the agent.</param>
    /// <param name="into">What it is put into.</param>
    /// <exception cref="ArgumentOutOfRangeException">The agent is more than the batch, or the batch is nothing.</exception>
    public AgentVerdict Judge(double grams, AgentSetting into)
    {
        ArgumentNullException.ThrowIfNull(into);
        if (!(grams >= 0 && into.BatchGrams > 0 && grams <= into.BatchGrams))
        {
            throw new ArgumentOutOfRangeException(nameof(into), into.BatchGrams, "The agent is a part of the batch, and the batch is above 0 g.");
        }

        double percent = 100 * grams / into.BatchGrams;
        double judged = percent;
        List<string> remarks = [];
        if (FoodId == "gelatine" && into.Bloom is >= 50 and <= 300 and var bloom && Math.Abs(bloom - LevelBloom) > 1)
        {
            // Doses are judged by the square root, as gels are measured to behave; packs are cut by the straight rule, so both are said.
            GelatineStrength same = GelatineStrength.Convert(Quantities.Mass.FromGrams(grams), bloom, LevelBloom);
            judged = 100 * same.SquareRoot.Grams / into.BatchGrams;
            remarks.Add(Say($"{grams:0.##} g of {bloom:0} bloom set as {same.SquareRoot.Grams:0.##} g of 200 bloom by √bloom, {same.Linear.Grams:0.##} g by bloom{(same.Wide ? "; the rules part here, try 100 g first" : "")}"));
        }

        remarks.AddRange(Against(into));
        return new AgentVerdict(FoodId, percent, judged < 0.9 * Low ? "below" : judged > 1.1 * High ? "above" : "within", [.. remarks, .. Note.Length > 0 ? [Note] : ImmutableArray<string>.Empty]);
    }

    private IEnumerable<string> Against(AgentSetting into)
    {
        if (AlcoholLimit is { } strong && into.AlcoholPercentVolume > strong)
        {
            yield return Say($"alcohol is {into.AlcoholPercentVolume:0} % by volume, above {strong:0}: the set is unsure");
        }

        if (SaltLimit is { } salty && into.SaltPercent > salty)
        {
            yield return Say($"salt is {into.SaltPercent:0.#} %, above {salty:0.#}: it sets weaker");
        }

        if (into.Ph is { } ph && (ph < PhLow || ph > PhHigh))
        {
            yield return Say($"pH {ph:0.0} is outside {PhLow:0.#} to {PhHigh:0.#}: it sets weaker or not at all");
        }
        else if (into.Ph is null && PhLow >= 3.5 && into.AcidPercent >= SourPercent)
        {
            yield return Say($"acid is {into.AcidPercent:0.#} % of the batch: measure the pH, below {PhLow:0.#} it sets weaker");
        }

        if (SolidsLeast is { } solids && into.SolubleSolids is { } held && held < solids)
        {
            yield return Say($"soluble solids are {held:0} % as mixed, and it needs {solids:0} at the set: reduce, or take another agent");
        }

        if (into.Hottest is { } hottest && (Boil ? hottest < 95 : Needs is { } needs && hottest < needs))
        {
            yield return Boil ? Say($"it must boil, and the method says no more than {hottest:0} °C") : Say($"it dissolves from {Needs:0} °C, and the method says no more than {hottest:0} °C");
        }

        string[] raw = [.. into.Raw.Where(f => Blocked.Contains(f))];
        if (raw.Length > 0)
        {
            yield return $"raw {string.Join(", ", raw)} keeps it from setting; boil it first";
        }
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
