using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Coulisse.Matter.Foods;

namespace Coulisse.Kitchen.Needs;

/// <summary>What a price row's note says about its food: usable share, weight of a piece, what a piece yields. Anything else in it is for people.</summary>
/// <param name="Share">Usable share; 1 when the note gives none.</param>
/// <param name="ShareWhen">Words of which one must stand in the line for the share to count; empty when it always counts.</param>
/// <param name="GramsEach">Weight of a piece.</param>
/// <param name="DiscsEach">Discs from a piece, with their diameter, mm.</param>
/// <param name="Parts">Parts of one piece sold together, with grams of each ("5 g zest each; 48 g juice").</param>
internal sealed partial record PriceNote(double Share, ImmutableHashSet<string> ShareWhen, double? GramsEach, ImmutableArray<CutNeed> DiscsEach, ImmutableDictionary<string, double> Parts)
{
    public static PriceNote Of(PriceRow row)
    {
        string note = row.Note;
        double share = 1;
        ImmutableHashSet<string> when = [];
        if (UsableShare().Match(note) is { Success: true } s && Number(s.Groups["x"].Value) is > 0 and <= 1 and var x)
        {
            share = x;

            // "drained for the curd: usable share 0.88" speaks of one use only; "peeled and cored: usable share 0.78" of the food.
            string before = s.Groups["when"].Value;
            when = Scope().IsMatch(before) ? [.. PriceMatch.Words(before).Where(w => w.Length > 3)] : when;
        }

        ImmutableDictionary<string, double>.Builder parts = ImmutableDictionary.CreateBuilder<string, double>(StringComparer.Ordinal);
        double? each = null;
        if (row.Unit == "each")
        {
            foreach (Match m in PartGrams().Matches(note))
            {
                parts[FoodName.Singular(m.Groups["part"].Value)] = Number(m.Groups["g"].Value);
            }

            each = PieceGrams().Match(note) is { Success: true } g ? Number(g.Groups["g"].Value) : null;
        }

        return new(share, when, each is > 0 ? each : null, [.. Discs().Matches(note).Select(m => new CutNeed(Number(m.Groups["n"].Value), Number(m.Groups["d"].Value)))], parts.ToImmutable());
    }

    /// <summary>Share that counts for a need.</summary>
    public double ShareFor(Need need) => need.UsableShare is > 0 and <= 1 and var stated ? stated
        : Share < 1 && (ShareWhen.IsEmpty || ShareWhen.Overlaps(PriceMatch.Words(need.As))) ? Share
        : need.StatedShare ?? 1;

    /// <summary>The part of a piece that is meant ("zest" of "lemon zest"), or null.</summary>
    public string? PartOf(Need need) => Parts.Keys.FirstOrDefault(p => PriceMatch.Words(need.Food).Contains(p));

    /// <summary>Discs "280 of them", "in discs of 60 mm", "120 discs of 50 mm" in a line.</summary>
    public static CutNeed? CutIn(string line)
    {
        Match of = DiscsIn().Match(line);
        if (!of.Success)
        {
            return null;
        }

        string count = of.Groups["n"].Success ? of.Groups["n"].Value : OfThem().Match(line) is { Success: true } t ? t.Groups["n"].Value : "";
        return count.Length > 0 ? new CutNeed(Number(count), Number(of.Groups["d"].Value)) : null;
    }

    private static double Number(string text) => double.TryParse(text.Replace(",", "", StringComparison.Ordinal), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double v) ? v : 0;

    [GeneratedRegex(@"(?<![^:;])(?<when>[^:;]*):?\s{0,9}usable share (?<x>[01]?\.?\d+)", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex UsableShare();

    [GeneratedRegex(@"\bfor\b", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex Scope();

    [GeneratedRegex(@"(?<!\d)(?<g>\d+(\.\d+)?) g (?<part>[a-z]+) (each|counted)", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex PartGrams();

    [GeneratedRegex(@"^(about )?(?<g>\d+(\.\d+)?) g( each)?\s*(,|;|$)", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex PieceGrams();

    [GeneratedRegex(@"(?<!\d)(?<n>\d+) discs of (?<d>\d+(\.\d+)?) mm", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex Discs();

    [GeneratedRegex(@"((?<!\d)(?<n>\d[\d,]{0,14}) )?discs of (?<d>\d+(\.\d+)?) mm", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex DiscsIn();

    [GeneratedRegex(@"(?<!\d)(?<n>\d[\d,]{0,14}) of them", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex OfThem();
}
