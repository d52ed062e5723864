namespace Coulisse.Matter.Foods;

/// <summary>Words that look like a name of ours and mean no food, or two: dough is no pasta, "Paprika" a spice and a fruit, coffee to grind none to drink, "pimento" allspice to the trade and a sweet pepper to a kitchen.</summary>
internal static class UnsureNames
{
    private static readonly WordSet English = new("ground coffee;roasted coffee;freshly ground coffee;fresh ground coffee;hot dog;pimento;pimentos;frozen yoghurt;frozen yogurt".Split(';'));
    private static readonly WordSet French = new(["pate", "cafe moulu"]);
    private static readonly WordSet German = new(["paprika", "gemahlener kaffee"]);
    private static readonly WordSet Spanish = new(["cafe molido", "lomo de bacalao", "lomos de bacalao"]);
    private static readonly WordSet Italian = new(["caffe macinato"]);

    /// <summary>True for such a word.</summary>
    /// <param name="folded">Folded name.</param>
    /// <param name="language">ISO 639-1 code of the card.</param>
    public static bool Has(ReadOnlySpan<char> folded, string language) => language switch
    {
        "en" => English.Contains(folded),
        "fr" => French.Contains(folded),
        "de" => German.Contains(folded),
        "es" => Spanish.Contains(folded),
        "it" => Italian.Contains(folded),
        _ => false,
    };
}
