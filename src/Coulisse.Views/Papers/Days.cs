using System.Globalization;
using NodaTime;

namespace Coulisse.Views.Papers;

/// <summary>Days and hours as the papers set them.</summary>
public static class Days
{
    /// <summary>"Friday 9 October 2026".</summary>
    public static string Long(LocalDate day, CultureInfo culture) => day.ToString("dddd d MMMM uuuu", culture);

    /// <summary>"Fri 9 Oct".</summary>
    public static string Short(LocalDate day, CultureInfo culture) => day.ToString("ddd d MMM", culture);

    /// <summary>"13:05", with seconds only where they are not nought.</summary>
    public static string Hour(LocalTime time) => time.ToString(time.Second == 0 ? "HH:mm" : "HH:mm:ss", CultureInfo.InvariantCulture);

    /// <summary>"Fri 9 Oct 13:05".</summary>
    public static string Moment(LocalDateTime when, CultureInfo culture) => Short(when.Date, culture) + " " + Hour(when.TimeOfDay);

    /// <summary>"13:05" on the day itself, else with its day.</summary>
    public static string Until(LocalDateTime when, LocalDate day, CultureInfo culture) => when.Date == day ? Hour(when.TimeOfDay) : Moment(when, culture);
}
