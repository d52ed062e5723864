using Coulisse.Matter.Foods;
using Coulisse.Matter.Reference;

namespace Coulisse.Matter.Tests.Foods;

/// <summary>The names of a table of foods, said plainly and slowly: what <see cref="FoodTable.Match"/> must come to for a whole name.</summary>
internal sealed class PlainNames
{
    public static readonly string[] Languages = ["en", "fr", "de", "es", "it", "ja"];

    private static readonly HashSet<string> Unsure =
    [
        "fr pate", "fr cafe moulu", "de paprika", "de gemahlener kaffee", "es cafe molido", "es lomo de bacalao", "es lomos de bacalao", "it caffe macinato",
        "en ground coffee", "en roasted coffee", "en freshly ground coffee", "en fresh ground coffee", "en hot dog", "en pimento", "en pimentos", "en frozen yoghurt", "en frozen yogurt",
    ];

    private readonly ILookup<string, Name> _byKey;
    private readonly ILookup<(string Language, string Form), Name> _byForm;

    public PlainNames(ReferenceTable table)
    {
        Name[] names = [.. table.Rows.SelectMany(r => Languages.SelectMany(l => r[table.Column(l)].Split(';', StringSplitOptions.RemoveEmptyEntries).Select(a => new Name(r[table.Column("id")], l, a, PlainRule.Fold(a), true))))];
        Name[] singulars = [.. names.Where(n => PlainRule.Singular(n.Key) != n.Key).Select(n => n with { Key = PlainRule.Singular(n.Key), Plain = false })];
        Aliases = [.. names.Select(n => n.Alias).Distinct()];
        _byKey = names.Concat(singulars).ToLookup(n => n.Key);
        _byForm = names.ToLookup(n => (n.Language, PlainRule.Form(n.Key, n.Language)));
    }

    public IReadOnlyList<string> Aliases { get; }

    public static bool IsUnsure(string folded, string language) => Unsure.Contains($"{language} {folded}");

    /// <summary>The food of a whole folded name.</summary>
    public FoodMatch? Named(string folded, string language, double exact, double one, double form)
    {
        string singular = PlainRule.Singular(folded);
        return Own(folded, language, exact) ?? Own(singular, language, one) ?? Formed(folded, language, form) ?? Foreign(folded, language, exact) ?? Foreign(singular, language, one);
    }

    private FoodMatch? Own(string key, string language, double confidence) =>
        Best(_byKey[key].Where(n => n.Language == language), language) is { } n ? new FoodMatch(n.Id, confidence, n.Alias) : null;

    private FoodMatch? Foreign(string key, string language, double confidence) =>
        _byKey[key].Select(n => n.Id).Distinct().Count() == 1 ? new FoodMatch(_byKey[key].First().Id, confidence * 0.9, Best(_byKey[key], language)!.Alias) : null;

    private FoodMatch? Formed(string folded, string language, double confidence)
    {
        Name[] names = language == "en" ? [] : [.. _byForm[(language, PlainRule.Form(folded, language))]];
        return names.Select(n => n.Id).Distinct().Count() == 1 ? new FoodMatch(names[0].Id, confidence, names[^1].Alias) : null;
    }

    private static Name? Best(IEnumerable<Name> names, string language) => names
        .OrderBy(n => n.Language == language ? 0 : n.Language == "en" ? 1 : 2)
        .ThenBy(n => n.Plain ? 0 : 1)
        .FirstOrDefault();

    private sealed record Name(string Id, string Language, string Alias, string Key, bool Plain);
}
