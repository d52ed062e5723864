namespace Coulisse.Cards.Reading;

/// <summary>"(enough for 5kg thigh)", "reicht für 2 l Fond": what a part is made for, weighed, feeds nobody; "enough for 2 trays" makes trays.</summary>
internal static class EnoughFor
{
    /// <summary>True where words of being enough stand before a weight or a volume: no yield.</summary>
    public static bool Feeds(string opener, CardYield told) => opener is "enough for" or "reicht für" or "is for" or "are for" or "da para" or "starter for" or "main for" && told.Unit is "g" or "kg" or "mg" or "l" or "ml" or "cl" or "dl" or "lb" or "oz";

    /// <summary>True where words of being enough count tins, trays or pieces and no guests.</summary>
    public static bool Made(string opener, string noun) => opener is "enough for" && YieldWords.Form(noun);
}
