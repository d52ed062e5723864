using Coulisse.Cards.Reading;

namespace Coulisse.Cards.Tests;

/// <summary>A text read as a card, and what the card says, a line a row.</summary>
internal static class Told
{
    /// <summary>The dish; fails where the reader refuses.</summary>
    public static Dish Read(string text) => Assert.IsType<Parsed<Dish>.Ok>(CardReader.Read(new CardText(text))).Value;

    /// <summary>"component: words" of each step.</summary>
    public static string[] Steps(Dish d) => [.. d.Components.SelectMany(c => c.Steps.Select(s => $"{c.Name}: {s.Text}"))];

    /// <summary>"component: amount unit food" of each food of each line.</summary>
    public static string[] Lines(Dish d) => [.. d.Components.SelectMany(c => c.Ingredients.SelectMany(l => l.Foods).Select(f => FormattableString.Invariant($"{c.Name}: {f.Amount} {f.Unit} {f.Food}")))];
}
