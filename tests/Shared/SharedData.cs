namespace Coulisse.Tests;

/// <summary>Outside data: what tests/Outside carries, else what is laid beside the repository; absent, a test skips with a clear line.</summary>
internal static class SharedData
{
    private static readonly string? Root = Find();

    public static bool Present => Root is not null;

    /// <summary>Full path of a file of the outside data; skips the running test when it is not there.</summary>
    public static string Path(string relative)
    {
        // figures that the tests carry themselves, so that a clone alone is checked too
        string own = System.IO.Path.Combine(Repository, "tests", "Outside", relative);
        if (File.Exists(own))
        {
            return own;
        }

        string? path = Root is null ? null : System.IO.Path.Combine(Root, relative);
        Assert.SkipUnless(path is not null && (File.Exists(path) || Directory.Exists(path)), $"outside data '{relative}' is not beside the repository");
        return path!;
    }

    /// <summary>Rows of a tab-separated file: comment lines skipped, first other line is the head.</summary>
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> Rows(string relative)
    {
        string[] lines = [.. File.ReadLines(Path(relative)).Where(l => l.Length > 0 && !l.StartsWith('#'))];
        string[] head = lines[0].Split('\t');
        return [.. lines.Skip(1).Select(l =>
        {
            string[] cells = l.Split('\t');
            return (IReadOnlyDictionary<string, string>)head.Select((h, i) => (h, i)).ToDictionary(x => x.h, x => x.i < cells.Length ? cells[x.i] : "");
        })];
    }

    /// <summary>The repository's own root.</summary>
    public static string Repository
    {
        get
        {
            DirectoryInfo? d = new(AppContext.BaseDirectory);
            while (d is not null && !File.Exists(System.IO.Path.Combine(d.FullName, "Coulisse.slnx")))
            {
                d = d.Parent;
            }

            return d?.FullName ?? throw new InvalidOperationException("the tests run outside the repository");
        }
    }

    private static string? Find()
    {
        string? named = Environment.GetEnvironmentVariable("COULISSE_SHARED");
        if (named is not null && Directory.Exists(named))
        {
            return named;
        }

        DirectoryInfo? d = new(AppContext.BaseDirectory);
        while (d is not null)
        {
            string candidate = System.IO.Path.Combine(d.FullName, "shared", "data");
            if (Directory.Exists(candidate))
            {
                return System.IO.Path.Combine(d.FullName, "shared");
            }

            d = d.Parent;
        }

        return null;
    }
}
