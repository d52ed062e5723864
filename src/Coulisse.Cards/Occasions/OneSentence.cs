using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;
using NodaTime;

namespace Coulisse.Cards.Occasions;

/// <summary>Reads an occasion told in one sentence: how many, when, how long, who. Each word is somebody's, a figure's, or said not to be understood.</summary>
internal sealed class OneSentence
{
    private const double LongestSlot = 7 * 24 * 60;
    private readonly string _s;
    private readonly bool[] _read;
    private readonly LocalDate _today;
    private readonly List<Problem> _problems;
    private readonly List<string> _assumed = [];

    private OneSentence(string sentence, LocalDate today, List<Problem> problems) => (_s, _read, _today, _problems) = (sentence, new bool[sentence.Length], today, problems);

    /// <summary>The occasion of a sentence.</summary>
    /// <param name="sentence">The sentence.</param>
    /// <param name="today">Day from which a weekday is counted.</param>
    /// <param name="problems">Where what cannot be goes.</param>
    public static OccasionSheet Read(string sentence, LocalDate today, List<Problem> problems) => new OneSentence(sentence, today, problems).Read();

    private OccasionSheet Read()
    {
        Counted many = SheetCounts.Of(_s, 1, _problems);
        many.Read.ToList().ForEach(r => Take(r.Start, r.End));
        _assumed.AddRange(many.Assumed);
        LocalDate day = Day();
        List<ClockTime> times = [.. ClockTimes.All(_s).Where(t => t.Time is not null)];
        times.ForEach(t => Take(t.Start, t.End));
        Duration? length = Length();
        LocalDateTime? start = times.Count > 0 ? day.At(times[0].Time!.Value) : null;
        length = times.Count > 1 && times[1].Time > times[0].Time ? Period.Between(times[0].Time!.Value, times[1].Time!.Value).ToDuration() : length;
        OccasionSheet sheet = new()
        {
            Title = "Untitled occasion", SlotStart = start, SlotLength = length == Duration.Zero ? null : length, SlotPlace = Place(), PlatedLive = many.Live,
            Guests = many.Guests ?? many.Plates, Over = many.Over ?? (many.Guests is { } g && many.Plates > g ? many.Plates - g : many.Guests is null && many.Plates is not null ? 0 : null),
            Notes = [new Note(_s, new Span(0, _s.Length, 1))],
        };
        if (start is not { } at)
        {
            _assumed.Add("service: no start time is written");
            return sheet with { Assumed = [.. _assumed] };
        }

        if (sheet.SlotLength is null)
        {
            _assumed.Add(string.Create(CultureInfo.InvariantCulture, $"slot: {(length is null ? "no length is written" : "0 minutes are written")}, so everything is served at {at:HH:mm} and nothing is made before the guests; write for example “25 minutes” for what is shown"));
        }

        ImmutableArray<SheetWindow> windows = Windows(at);
        _assumed.Add("prep windows: two days before 13:00 to 17:00, the day before 08:00 to 17:00, the day itself from 08:00");
        LocalDateTime end = at + Period.FromTicks(((sheet.SlotLength ?? Duration.Zero) + Duration.FromMinutes(25)).BclCompatibleTicks);
        SentencePeople who = SentencePeople.Of(_s, _read, many.Guests is not null || many.Plates is not null, _problems);
        if ((sheet.Guests ?? who.Guests) is null && who.Unread.FirstOrDefault(w => char.IsAsciiDigit(w[0])) is { } bare)
        {
            // One plate is no guess at what a figure may have counted.
            _problems.Add(new Problem("OCC007", 1, $"“{bare}” is a number of nothing, and no guests or plates are written.", "Write what it counts, for example 24 guests or 24 plates."));
        }

        ImmutableArray<SheetWindow> hours = [.. windows, new SheetWindow(at, end, 0)];
        ImmutableArray<SheetPerson> people = [.. who.Names.Select((name, i) => new SheetPerson(name, "", i == 0 ? sheet.SlotPlace ?? "stage" : "back", hours, ["all"], [], ["English"], "", 0))];
        _assumed.Add(who.Named ? "people: all skills, there in every window and until the clear-down" : "people: nobody is named, so one chef was taken, all skills, there in every window and until the clear-down");
        return sheet with
        {
            Guests = sheet.Guests ?? who.Guests, Windows = windows, People = people, Assumed = [.. _assumed],
            Remarks = [.. who.Unread.Select(w => new Remark(1, "not understood", $"“{w}” was not understood."))],
        };
    }

    private static ImmutableArray<SheetWindow> Windows(LocalDateTime start)
    {
        List<SheetWindow> windows = [];
        foreach ((int back, int from, int to) in (ReadOnlySpan<(int, int, int)>)[(2, 13, 17), (1, 8, 17)])
        {
            windows.Add(new SheetWindow(start.Date.PlusDays(-back).At(new LocalTime(from, 0)), start.Date.PlusDays(-back).At(new LocalTime(to, 0)), 0));
        }

        if (start.Hour > 8)
        {
            windows.Add(new SheetWindow(start.Date.At(new LocalTime(8, 0)), start, 0));
        }

        return [.. windows];
    }

    private LocalDate Day()
    {
        SheetDate? date = SheetDates.First(_s, _today);
        if (date is { } written)
        {
            Take(written.Start, written.End);
        }

        int weekday = 0;
        for (int i = 0; i < _s.Length; i++)
        {
            if (SheetTime.DayOfWeek(_s, i, out int end) is var d and > 0)
            {
                weekday = weekday == 0 ? d : weekday;
                Take(i, end);
            }
        }

        foreach ((string word, int days) in (ReadOnlySpan<(string, int)>)[("today", 0), ("tonight", 0), ("tomorrow", 1)])
        {
            if (Places.FindWord(_s, word) is var at and >= 0)
            {
                Take(at, at + word.Length);
                date ??= new SheetDate(_today.PlusDays(days), at, at, true);
            }
        }

        LocalDate day = date?.Date ?? (weekday == 0 ? _today : _today.PlusDays((weekday - (int)_today.DayOfWeek + 7) % 7));
        if (date is not { HasYear: true })
        {
            _assumed.Add(FormattableString.Invariant($"day: {day:yyyy-MM-dd}, as no {(date is null ? "date" : "year")} is written"));
        }

        return day;
    }

    private Duration? Length()
    {
        for (int i = 0; i < _s.Length; i++)
        {
            if (!_read[i] && char.IsLetterOrDigit(_s[i]) && (i == 0 || !(char.IsLetterOrDigit(_s[i - 1]) || _s[i - 1] is '.' or ':' or ',' or '-' or '/')) && Clock.At(_s, i, "en") is { Max: < LongestSlot } t)
            {
                Take(i, t.End);
                if (t.Max > t.Min)
                {
                    _assumed.Add(string.Create(CultureInfo.InvariantCulture, $"slot: {_s[i..t.End].Trim()} is written, {t.Max:0.##} min taken"));
                }

                return Duration.FromMinutes(t.Max);
            }
        }

        return null;
    }

    // "on stage", "in the hall": one word, and nobody's
    private string? Place()
    {
        foreach (string before in (ReadOnlySpan<string>)["on", "in", "at"])
        {
            for (int at = Places.FindWord(_s, before); at >= 0; at = Places.FindWord(_s, before, at + 1))
            {
                int i = Places.Skip(_s, at + before.Length);
                i = Places.WordAt(_s, i, "the") ? Places.Skip(_s, i + 3) : i;
                int end = i < _s.Length ? Places.WordEnd(_s, i) : i;
                if (i < _s.Length && char.IsAsciiLetterLower(_s[i]) && !_read[i] && !SentencePeople.Nobodys(_s[i..end]))
                {
                    Take(at, end);
                    return _s[i..end];
                }
            }
        }

        return null;
    }

    private void Take(int start, int end) => Array.Fill(_read, true, start, Math.Min(end, _read.Length) - start);
}
