using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Kitchen.Needs;
using Coulisse.Matter.Shapes;
using NodaTime;

namespace Coulisse.Views.Papers;

/// <summary>A day's load as a chart: hours along, load up, the limit as a heavy line.</summary>
internal static class LoadDrawing
{
    private const double Wide = 168;
    private const double High = 26;
    private const double Left = 8;

    /// <summary>Draws the stretches of one day.</summary>
    public static Drawing Of(LoadProfile day)
    {
        int from = day.Stretches[0].Start.Hour;
        LocalDateTime start = day.Stretches[0].Start.Date.At(new LocalTime(from, 0));
        double hours = Math.Max(1, Math.Ceiling(Period.Between(start, day.Stretches[^1].End, PeriodUnits.Minutes).Minutes / 60.0));
        double X(LocalDateTime t) => Left + (Period.Between(start, t, PeriodUnits.Seconds).Seconds / 3600.0 / hours * Wide);
        double most = Math.Max(day.Limit, day.Peak?.Amount ?? 0) is > 0 and var m ? m : 1;
        double Y(double amount) => 4 + High - (amount / most * High);
        ImmutableArray<Mark>.Builder marks = ImmutableArray.CreateBuilder<Mark>();
        for (int h = 0; h <= hours; h++)
        {
            double x = Left + (h / hours * Wide);
            marks.Add(new LineMark(x, 4, x, 4 + High, Ink.Guide));
            marks.Add(new TextMark(x, 4 + High + 4, ((from + h) % 24).ToString(CultureInfo.InvariantCulture), 2.8, Ink.Guide));
        }

        marks.AddRange(day.Stretches.Where(s => s.Amount > 0).Select(s => new RectMark(X(s.Start), Y(s.Amount), X(s.End) - X(s.Start), 4 + High - Y(s.Amount), s.Amount > day.Limit + 1e-9 ? Ink.PieceTwo : Ink.Piece)));
        marks.Add(new LineMark(Left, 4 + High, Left + Wide, 4 + High, Ink.Outline));
        marks.Add(new LineMark(Left, Y(day.Limit), Left + Wide, Y(day.Limit), Ink.Outline));
        marks.Add(new TextMark(Left / 2, Y(day.Limit) + 1, day.Limit.ToString("0.##", CultureInfo.InvariantCulture), 2.8, Ink.Guide));
        return new Drawing(day.Title, Left + Wide + 2, High + 10, marks.ToImmutable());
    }
}
