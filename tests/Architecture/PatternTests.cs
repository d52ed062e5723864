using System.Reflection;
using System.Text.RegularExpressions;

namespace Coulisse.Architecture.Tests;

/// <summary>Patterns are written out when the program is built, and none grows faster than the text it reads (decision 0220).</summary>
public sealed class PatternTests
{
    /// <summary>As long as a step is read (decision 0100).</summary>
    private const int Longest = 20_000;

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(2);

    private static readonly string[] Hostile = [" ", "1", "1,", "1.", "1 ", "a", "A", "A ", "(", "()", "\u00A0", "123 456 ", "12,5 g ", "1 g a", "keep 1 g ", "pH ", "aw  ", "(hands ", "1 min", "bag ", "on top of ", "<style>", "a:", ",;", "－", "half past "];

    private static IEnumerable<(string Where, Regex Pattern)> Patterns() => new[]
        {
            typeof(Coulisse.Matter.Quantities.Mass).Assembly, typeof(Coulisse.Cards.Dish).Assembly, typeof(Coulisse.Kitchen.Planning.Plan).Assembly,
            typeof(Coulisse.Views.Papers.Paper).Assembly, typeof(Coulisse.Papers.PaperPrinter).Assembly, typeof(Coulisse.Flows.PlanFlow).Assembly,
            typeof(Coulisse.Formats.Travel.TravelJson).Assembly, typeof(Coulisse.Store.KitchenStore).Assembly, Assembly.Load("Coulisse.Web"), Assembly.Load("coulisse"),
        }
        .SelectMany(a => a.GetTypes()).SelectMany(t => t.GetMethods(BindingFlags.Static | BindingFlags.NonPublic | BindingFlags.Public | BindingFlags.DeclaredOnly))
        .Where(m => m.GetCustomAttribute<GeneratedRegexAttribute>() is not null)
        .Select(m => ($"{m.DeclaringType!.Name}.{m.Name}", (Regex)m.Invoke(null, null)!));

    [Fact]
    public void There_are_patterns() => Assert.InRange(Patterns().Count(), 50, 1000);

    [Fact]
    public void No_pattern_is_put_together_when_the_program_runs()
        => Assert.Empty(Patterns().Where(p => p.Pattern.Options.HasFlag(RegexOptions.NonBacktracking) || p.Pattern.GetType() == typeof(Regex)).Select(p => p.Where));

    [Fact]
    public void No_pattern_takes_long_for_a_hostile_step()
        => Assert.Empty(Patterns().Where(p => Slow(p.Pattern)).Select(p => $"{p.Where}: {p.Pattern}"));

    [Fact]
    public void A_pattern_that_grows_too_fast_is_seen() => Assert.True(Slow(new Regex(@"pH\s*(value)?\s*(of)?\s*(is)?\s*\d")));

    // The generated form knows no time limit; the interpreted one goes the same way, only slower.
    private static bool Slow(Regex pattern)
    {
        Regex limited = new(pattern.ToString(), pattern.Options, Patience);
        foreach (string piece in Hostile.Concat(Words(pattern)))
        {
            string text = string.Concat(Enumerable.Repeat(piece, (Longest / piece.Length) + 1))[..Longest];
            try
            {
                _ = limited.Count(text) + limited.Count(Start(pattern) + text + "!");
            }
            catch (RegexMatchTimeoutException)
            {
                return true;
            }
        }

        return false;
    }

    // A pattern's own words are what it goes furthest with.
    private static IEnumerable<string> Words(Regex pattern) => Regex.Matches(pattern.ToString(), @"\w{2,}").Select(m => m.Value + " ").Distinct().Take(6);

    private static string Start(Regex pattern) => Regex.Match(pattern.ToString(), @"[A-Za-z][A-Za-z ]+").Value;
}
