using Coulisse.Cards;
using Coulisse.Formats.In;
using Coulisse.Matter.Heat;
using Coulisse.Tests;

namespace Coulisse.Papers.Tests.FormatsIn;

/// <summary>Files as loggers write them: one curve in every form reads the same.</summary>
public sealed class ProbeFileTests
{
    private const string Plain = "Time,Core\n2026-10-10T13:58:00,5.0\n2026-10-10T14:00:00,12.5\n2026-10-10T14:02:30,20.25\n";

    public static TheoryData<string> SameCurve() =>
    [
        Plain,
        "Logger 7\r\nSerial;0042\r\n\r\nDatum;Uhrzeit;Kern °C\r\n10.10.2026;13:58:00;5,0\r\n10.10.2026;14:00:00;12,5\r\n10.10.2026;14:02:30;20,25\r\n",
        "No.\tDate Time\tCore (°F)\n1\t10/10/2026 1:58:00 PM\t41\n2\t10/10/2026 2:00:00 PM\t54.5\n3\t10/10/2026 2:02:30 PM\t68.45\n",
        "time;core\n13:58:00;5,0\n14:00:00;12,5\n14:02:30;20,25\n",
        "elapsed (s),core\n0,5.0\n120,12.5\n270,20.25\n",
        "minutes|core\n0|5.0\n2|12.5\n4.5|20.25\n",
        "t (sec),core,humidity %RH\n0,5.0,45\n120,12.5,44\n270,20.25,43\n",
        "epoch,core\n1791640680,5.0\n1791640800,12.5\n1791640950,20.25\n",
        "\"Date\",\"Core\"\n\"10-Oct-2026 13:58:00\",\"5,0\"\n\"10-Oct-2026 14:00:00\",\"12,5\"\n\"10-Oct-2026 14:02:30\",\"20,25\"\n",
        "when,core\n2026-10-10T13:58:00Z,5.0\n2026-10-10T14:00:00Z,12.5\n2026-10-10T14:02:30Z,20.25\n",
        "h:mm:ss;core\n0:00:00;5,0\n0:02:00;12,5\n0:04:30;20,25\n",
        "Time;Core\nhh:mm:ss;°C\n13:58:00;5,0\n14:00:00;12,5\n14:02:30;20,25\n",
    ];

    [Theory]
    [MemberData(nameof(SameCurve))]
    public void Every_form_of_one_curve_reads_the_same(string text)
    {
        ProbeRun run = Ok(text);
        ProbeChannel core = Assert.Single(run.Channels);
        Assert.Equal([0, 2, 4.5], core.Readings.Select(r => Math.Round(r.Minute, 6)));
        Assert.Equal([5, 12.5, 20.25], core.Readings.Select(r => Math.Round(r.At.Celsius, 6)));
    }

    [Fact]
    public void Several_channels_keep_their_names_and_their_gaps_are_counted()
    {
        ProbeRun run = Ok("Zeit;Kern;Bad;Feuchte %\n14:00;5,0;60,0;40\n14:01;n/a;59,8;40\n14:02;7,5;59,9;41\n14:03;9,0;60,0;41\n");
        Assert.Equal(["Kern", "Bad"], run.Channels.Select(c => c.Name));
        Assert.Equal(3, run.Find("Kern")!.Readings.Length);
        Assert.Equal(4, run.Find("2")!.Readings.Length);
        Assert.Contains(run.Remarks, r => r.Contains("Kern: 1 of 4", StringComparison.Ordinal));
    }

    [Fact]
    public void A_time_of_day_goes_on_past_midnight()
        => Assert.Equal([0, 4, 9], Ok("time;a\n23:58;5\n00:02;6\n00:07;7\n").Channels[0].Readings.Select(r => r.Minute));

    [Fact]
    public void A_day_above_twelve_settles_which_comes_first()
    {
        Assert.Equal(new NodaTime.LocalDateTime(2026, 10, 13, 23, 59), Ok("time,a\n10/13/2026 23:59,5\n10/14/2026 00:01,6\n").Began);
        Assert.Equal(new NodaTime.LocalDateTime(2026, 10, 13, 23, 59), Ok("time,a\n13/10/2026 23:59,5\n14/10/2026 00:01,6\n").Began);
        ProbeRun either = Ok("time,a\n10/11/2026 12:00,5\n10/11/2026 12:01,6\n");
        Assert.Equal(new NodaTime.LocalDateTime(2026, 11, 10, 12, 0), either.Began);
        Assert.Single(either.Remarks);
    }

    [Theory]
    [InlineData("", "PRB001")]
    [InlineData("hello\nworld\n", "PRB001")]
    [InlineData("a,b\n1,2\n3,4\n", "PRB002")]
    [InlineData("time,status\n14:00,2 alarms\n14:01,3 alarms\n", "PRB003")]
    [InlineData("time,a\n14:10,5\n14:05,6\n14:20,7\n", "PRB004")]
    [InlineData("time,core\n14:00,54,3\n14:01,54,9\n", "PRB005")]
    public void What_cannot_be_read_is_refused_with_its_code(string text, string code)
    {
        Parsed<ProbeRun>.Failed failed = Assert.IsType<Parsed<ProbeRun>.Failed>(ProbeFile.Read(text));
        Assert.Equal(code, Assert.Single(failed.Problems).Code);
    }

    [Fact]
    public void A_day_of_readings_each_second_is_read()
    {
        System.Text.StringBuilder b = new("seconds;core;bath\n");
        for (int i = 0; i < 86_400; i++)
        {
            b.Append(System.Globalization.CultureInfo.InvariantCulture, $"{i};{5 + (i / 2000.0):0.00};60,1\n");
        }

        Assert.Equal(86_400, Ok(b.ToString()).Channels[0].Readings.Length);
    }

    [Theory]
    [InlineData(20261010)]
    [InlineData(19)]
    public void No_mutated_file_makes_the_reader_throw_and_what_it_reads_has_rising_minutes(int seed)
    {
        string[] corpus = [.. SameCurve().Select(r => r.Data)];
        string[] pieces = [";", ",", "\t", "|", "\n", "\r\n", "\"", "-", "−", "1e308", "999999999999999999999", "31/12/2026", "00/00/0000", "25:61:61", "PM", "°F", "NaN", "\u0000", "\uFEFF", "14:00", "%", "T", "Z", "+02:00", "99999:00", "12.13.14"];
        Random random = new(seed);
        int count = LongRun.On ? 2_000_000 : 20_000;
        int read = 0;
        for (int i = 0; i < count; i++)
        {
            string text = corpus[random.Next(corpus.Length)];
            for (int m = random.Next(1, 6); m > 0; m--)
            {
                int at = random.Next(text.Length + 1);
                text = random.Next(3) switch
                {
                    0 => text.Insert(at, pieces[random.Next(pieces.Length)]),
                    1 when text.Length > 0 => text.Remove(Math.Min(at, text.Length - 1), 1),
                    _ => at < text.Length ? string.Concat(text.AsSpan(0, at), ((char)random.Next(32, 127)).ToString(), text.AsSpan(Math.Min(text.Length, at + 1))) : text,
                };
            }

            if (ProbeFile.Read(text) is Parsed<ProbeRun>.Ok(var run))
            {
                read++;
                Assert.All(run.Channels, c => Assert.True(c.Readings.Zip(c.Readings.Skip(1)).All(p => p.First.Minute < p.Second.Minute), text));
            }
        }

        Assert.True(read > count / 10, $"only {read} of {count} were read at all");
    }

    private static ProbeRun Ok(string text) => Assert.IsType<Parsed<ProbeRun>.Ok>(ProbeFile.Read(text)).Value;
}
