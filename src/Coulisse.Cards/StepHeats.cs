namespace Coulisse.Cards;

/// <summary>Which heat of a step holds while one of its times runs: "15 min at 220 °C, turn down to 180 °C, 20 min" is two ovens.</summary>
public static class StepHeats
{
    private const int Aside = 14;

    /// <summary>The heat of a kind at a time of the step; the first of them where nothing tells more; null for none.</summary>
    /// <param name="step">The step.</param>
    /// <param name="time">One of its times.</param>
    /// <param name="of">What the heat is of.</param>
    public static StepTemperature? At(Step step, StepTime time, TemperatureOf of)
    {
        ArgumentNullException.ThrowIfNull(step);
        (int At, StepTemperature Heat)[] set = Settings(step, of);
        if (set.Length < 2)
        {
            return set.Length == 0 ? null : set[0].Heat;
        }

        (int from, int to) = Stretch(step, time, out int opens);
        if (set[0].At > opens)
        {
            // "15 min at 220, 20 min at 180": each heat stands behind its time.
            (int At, StepTemperature Heat)[] own = [.. set.Where(s => s.At >= from && s.At < to)];
            return own.Length > 0 ? own[0].Heat : set.LastOrDefault(s => s.At < from).Heat ?? set[0].Heat;
        }

        return set.LastOrDefault(s => s.At < from).Heat ?? set[0].Heat;
    }

    /// <summary>The heats as set one after the other; what is told beside another ("200 °C, fan 180 °C") is the same setting.</summary>
    private static (int At, StepTemperature Heat)[] Settings(Step step, TemperatureOf of)
    {
        List<(int At, StepTemperature Heat)> set = [];
        int end = 0;
        foreach (StepTemperature t in step.Temperatures)
        {
            if (t.Of != of || t.Bound != Bound.At)
            {
                continue;
            }

            int at = t.Words.Length == 0 ? -1 : step.Text.IndexOf(t.Words, Math.Min(end, step.Text.Length), StringComparison.Ordinal);
            bool beside = set.Count > 0 && at >= end && at - end <= Aside && step.Text[end..at] is var between && (between.AsSpan().IndexOfAny('/', '(') >= 0 || t.Fan is not null && set[^1].Heat.Fan != t.Fan) && !between.Contains("then", StringComparison.Ordinal);
            end = at >= 0 ? at + t.Words.Length : end;
            if (!beside)
            {
                set.Add((at, t));
            }
        }

        return [.. set];
    }

    /// <summary>From where a time stands to where the next one does.</summary>
    private static (int From, int To) Stretch(Step step, StepTime time, out int opens)
    {
        int cursor = 0;
        int from = -1;
        opens = step.Text.Length;
        foreach (StepTime t in step.Times)
        {
            int at = step.Text.IndexOf(t.Words, cursor, StringComparison.Ordinal);
            if (at < 0)
            {
                continue;
            }

            opens = Math.Min(opens, at);
            cursor = at + t.Words.Length;
            if (from >= 0)
            {
                return (from, at);
            }

            from = ReferenceEquals(t, time) ? at : -1;
        }

        return (Math.Max(from, 0), step.Text.Length);
    }
}
