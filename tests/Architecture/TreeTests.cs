using System.Text.RegularExpressions;
using Coulisse.Tests;

namespace Coulisse.Architecture.Tests;

/// <summary>What the source tree itself must keep: sizes, no demo names in the product, no machine paths, every problem code explained.</summary>
public sealed partial class TreeTests
{
    /// <summary>Files that may be longer, each with its reason.</summary>
    private static readonly Dictionary<string, string> Longer = new(StringComparer.Ordinal)
    {
    };

    // Names of the demo occasion's people, places and dishes: the product must not know them.
    private static readonly string[] DemoNames = ["Ilse", "Bram", "Noor", "Petra", "Tomasz", "Tarnhithe", "Saltbox", "royale", "half-moon"];

    [Fact]
    public void No_source_file_is_longer_than_400_lines_and_no_page_longer_than_150()
        => Assert.Empty(Sources("*.cs", "*.razor").Where(f => File.ReadLines(f).Count() > (f.EndsWith(".razor", StringComparison.Ordinal) ? 150 : 400))
            .Select(Relative).Where(f => !Longer.ContainsKey(f)));

    [Fact]
    public void Nothing_in_the_product_names_the_demo()
        => Assert.Empty(Sources("*.cs", "*.razor", "*.js").SelectMany(f => DemoWords(File.ReadAllText(f)).Select(w => $"{Relative(f)}: {w}")));

    [Fact]
    public void A_planted_demo_name_is_seen() => Assert.Single(DemoWords("if (name == \"Ilse\")"));

    [Fact]
    public void A_number_is_one_decision_and_stands_at_its_head()
    {
        string[] files = Directory.GetFiles(Path.Combine(SharedData.Repository, "docs", "decisions"), "*.md");
        Assert.True(files.Length > 30);
        Assert.Empty(files.Select(f => Path.GetFileName(f)[..4]).GroupBy(n => n).Where(g => g.Count() > 1).Select(g => g.Key));
        Assert.Empty(files.Where(f => !File.ReadLines(f).First().StartsWith("# " + Path.GetFileName(f)[..4], StringComparison.Ordinal)).Select(Path.GetFileName));
    }

    [Fact]
    public void No_file_names_a_machine_path()
        => Assert.Empty(Files().Where(f => MachinePath().IsMatch(File.ReadAllText(f))).Select(Relative));

    [Fact]
    public void A_planted_machine_path_is_seen() => Assert.Matches(MachinePath(), "see /wor" + "k/x");

    [Fact]
    public void Every_problem_code_is_explained_in_docs_problems()
    {
        string explained = File.ReadAllText(Path.Combine(SharedData.Repository, "docs", "problems.md"));
        string[] codes = [.. Sources("*.cs").SelectMany(f => ProblemCode().Matches(File.ReadAllText(f)).Select(m => m.Groups[1].Value)).Distinct().Order(StringComparer.Ordinal)];
        Assert.NotEmpty(codes);
        Assert.Empty(codes.Where(c => !explained.Contains(c, StringComparison.Ordinal)));
    }

    private static IEnumerable<string> DemoWords(string text) => DemoNames.Where(n => Regex.IsMatch(text, $@"\b{n}\b", RegexOptions.IgnoreCase));

    private static IEnumerable<string> Sources(params string[] patterns) => patterns
        .SelectMany(p => Directory.EnumerateFiles(Path.Combine(SharedData.Repository, "src"), p, SearchOption.AllDirectories))
        .Where(f => !f.Contains("/obj/", StringComparison.Ordinal) && !f.Contains("/bin/", StringComparison.Ordinal) && !f.Contains("/wwwroot/lib/", StringComparison.Ordinal));

    private static IEnumerable<string> Files() => new[] { "src", "tests", "gauge", "docs", "data", "examples", "tools" }
        .Select(d => Path.Combine(SharedData.Repository, d)).Where(Directory.Exists)
        .SelectMany(d => Directory.EnumerateFiles(d, "*", SearchOption.AllDirectories))
        .Where(f => f.EndsWith(".cs", StringComparison.Ordinal) || f.EndsWith(".md", StringComparison.Ordinal) || f.EndsWith(".razor", StringComparison.Ordinal) || f.EndsWith(".js", StringComparison.Ordinal) || f.EndsWith(".py", StringComparison.Ordinal) || f.EndsWith(".tsv", StringComparison.Ordinal) || f.EndsWith(".css", StringComparison.Ordinal));

    private static string Relative(string file) => Path.GetRelativePath(SharedData.Repository, file).Replace('\\', '/');

    [GeneratedRegex(@"(?<![\w.])/(work|root|home/\w+)/")]
    private static partial Regex MachinePath();

    [GeneratedRegex("\"((?:TXT|OCC|WGH|SAF|PLN|SHP|NED|PAP|STO|HEA|MIX|FMT|LIV|PRB|FIT|TRI|REC|PRI|ORD)\\d{3})\"")]
    private static partial Regex ProblemCode();
}
