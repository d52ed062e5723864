using Coulisse.Cards.Reading;

namespace Coulisse.Cards.Tests;

/// <summary>Numbers of steps whose stop was left out, at the head of a card or behind its list: counts of something that is no food before.</summary>
public sealed class NumberedWorkKindTests
{
    [Theory]
    [InlineData("1\tSweat the onions for 20 min\n2\tAdd the tomatoes, simmer 90 min\n3\tBlend with the basil\n", 3, 0)]
    [InlineData("Tomato base\n\n500 g tomatoes\n2 onions\n\n1 Sweat the onions for 20 min\n2 Add the tomatoes, simmer 90 min\n3 Blend with the basil\n", 3, 2)]
    [InlineData("Sauce\n\n500 g de tomates\n2 oignons\n\n1 Faire suer les oignons 20 min\n2 Ajouter les tomates, cuire 1 h\n3 Mixer\n", 3, 2)]
    [InlineData("Soße\n\n500 g Tomaten\n2 Zwiebeln\n\n1\tZwiebeln 20 Minuten anschwitzen\n2\tTomaten zugeben und 90 Minuten köcheln\n3\tMixen\n", 3, 2)]
    [InlineData("Salsa\n\n500 g de tomates\n2 cebollas\n\n1 Pochar las cebollas 20 minutos\n2 Añadir los tomates y cocer 1 hora\n3 Triturar\n", 3, 2)]
    [InlineData("Salsa\n\n500 g di pomodori\n2 cipolle\n\n1 Soffriggere le cipolle per 20 minuti\n2 Unire i pomodori e cuocere per 1 ora\n3 Frullare\n", 3, 2)]
    public void Are_steps(string text, int steps, int lines)
    {
        Dish d = Read(text);

        Assert.Equal((steps, lines), (d.Components.Sum(c => c.Steps.Length), d.Components.Sum(c => c.Ingredients.Length)));
    }

    [Theory]
    [InlineData("1 onion\n2 carrots\n3 eggs\n", 3)]
    [InlineData("Salad\n\n1 onion, fried for 5 minutes\n2 carrots, boiled\n3 eggs, boiled for 8 minutes\n", 3)]
    [InlineData("Stew\n\n1 chicken\n2 leeks\n3 bay leaves\n\nRoast the chicken for 60 minutes.\n", 3)]
    [InlineData("Dip\n\n1 cup yoghurt\n2 cucumbers\n\nChill for 2 hours.\n", 2)]
    public void Counts_of_foods_are_counts(string text, int lines) => Assert.Equal(lines, Read(text).Components.Sum(c => c.Ingredients.Length));

    private static Dish Read(string text) => Assert.IsType<Parsed<Dish>.Ok>(CardReader.Read(new CardText(text))).Value;
}
