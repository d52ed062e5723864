using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"same oven 4 min", "à la même température", "同じ温度で": the step goes on with the heat told last. "The same oven dish" tells none.</summary>
internal static class SameHeat
{
    private static readonly string[] Heats = ["same temperature", "same temp", "same heat", "same setting", "même température", "même chaleur", "misma temperatura", "stessa temperatura", "gleicher Temperatur", "gleiche Temperatur", "derselben Temperatur", "selber Temperatur", "gleicher Hitze", "同じ温度"];
    private static readonly string[] Ovens = ["same oven", "même four", "mismo horno", "stesso forno", "selben Ofen", "gleichen Ofen", "同じオーブン"];
    private static readonly Beginnings First = new([.. Heats, .. Ovens]);
    private static readonly string[] Things = ["dish", "tray", "tin", "pan", "rack", "shelf", "glove", "gloves", "cloth"];

    /// <summary>The heat a step takes over; null when it names one of its own or leans on none.</summary>
    /// <param name="step">As read alone.</param>
    /// <param name="before">The heat of an oven, a bath or a pan told last.</param>
    public static StepTemperature? Of(Step step, StepTemperature? before)
    {
        if (before is null || !step.Temperatures.IsEmpty || !First.MayIn(step.Text))
        {
            return null;
        }

        return Places.HasAny(step.Text, Heats) || before.Of == TemperatureOf.Oven && Oven(step.Text) ? new StepTemperature(before.Of, before.Celsius, "") { Fan = before.Fan, Inherited = true } : null;
    }

    /// <summary>True for a heat that a later step may go on with: what a food is brought to is none.</summary>
    public static bool Lasts(StepTemperature t) => t.Of is TemperatureOf.Oven or TemperatureOf.Bath or TemperatureOf.Pan or TemperatureOf.Dryer;

    private static bool Oven(string s)
    {
        foreach (string w in Ovens)
        {
            int at = Places.FindWord(s, w);
            if (at < 0)
            {
                continue;
            }

            int next = Places.Skip(s, at + w.Length);
            foreach (string thing in Things)
            {
                if (Places.WordAt(s, next, thing))
                {
                    return false;
                }
            }

            return true;
        }

        return false;
    }
}
