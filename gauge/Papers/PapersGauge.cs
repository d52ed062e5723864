using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using Coulisse.Flows;
using Coulisse.Kitchen.Needs;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Papers;
using Coulisse.Papers.Pages;
using Coulisse.Papers.Pdf;
using Coulisse.Views.Papers;
using NodaTime;

namespace Coulisse.Gauge.Papers;

/// <summary>gauge papers: the whole bundle of the example, a thousand helper briefs, memory.</summary>
internal static class PapersGauge
{
    public static int Run()
    {
        string? root = Root();
        if (root is null)
        {
            Console.Error.WriteLine("gauge papers: the examples folder is not here; run it from the project's folder.");
            return 2;
        }

        PaperBundle bundle = Bundle(root);
        long planned = Peak();
        ImmutableArray<Paper> papers = PaperShelf.Papers(bundle);
        Console.WriteLine("| what | figure | limit |");
        Console.WriteLine("|---|---|---|");

        // Warm: fonts are read and code is compiled in the first rounds, which do not count.
        WrittenPdf pdf = PaperPrinter.PrintOne(papers, PaperChoice.All);
        double[] wall = new double[9];
        double[] own = new double[9];
        for (int i = 0; i < wall.Length; i++)
        {
            (wall[i], own[i]) = Timed(() => pdf = PaperPrinter.PrintOne(PaperShelf.Papers(bundle), PaperChoice.All));
        }

        (double median, double processor) = (wall.Order().ElementAt(4), own.Order().ElementAt(4));
        Row(string.Create(CultureInfo.InvariantCulture, $"whole bundle, {papers.Length} sheets, {pdf.Pages} pages, in one file"), string.Create(CultureInfo.InvariantCulture, $"{median:0} ms (processor {processor:0} ms)"), "1500 ms for about 30 pages");
        Row("the same, milliseconds a page", string.Create(CultureInfo.InvariantCulture, $"{median / pdf.Pages:0.0} ms (processor {processor / pdf.Pages:0.0} ms)"), "50 ms");
        Row("size of the file", string.Create(CultureInfo.InvariantCulture, $"{pdf.Bytes.Length / 1024.0 / 1024:0.00} MB"), "3 MB");
        (double words, double wordsOwn) = Timed(() => papers = PaperShelf.Papers(bundle));
        ImmutableArray<PagePlan> laid = [];
        (double layout, double layoutOwn) = Timed(() => laid = [.. papers.Select(p => PagePlan.Of(p, PageFormat.A4))]);
        (double written, double writtenOwn) = Timed(() => PdfWriter.Write([.. laid]));
        Row("of which words, layout, writing", string.Create(CultureInfo.InvariantCulture, $"{words:0}, {layout:0}, {written:0} ms (processor {wordsOwn:0}, {layoutOwn:0}, {writtenOwn:0} ms)"), "");
        Row("memory at its peak after planning, after the bundle", string.Create(CultureInfo.InvariantCulture, $"{Megabytes(planned):0}, {Megabytes(Peak()):0} MB; held after it {Megabytes(GC.GetTotalMemory(true)):0} MB"), "300 MB");
        (double apart, double apartOwn) = Timed(() => PaperPrinter.Print(papers, PaperChoice.All));
        Row("the same as one file a sheet", string.Create(CultureInfo.InvariantCulture, $"{apart:0} ms (processor {apartOwn:0} ms), {PaperPrinter.Print(papers, PaperChoice.All).Sum(p => p.Pdf.Bytes.Length) / 1024.0 / 1024:0.00} MB"), "");

        Paper[] briefs = [.. papers.Where(p => p.Kind == HelperPaper.Kind)];
        Paper[] thousand = [.. Enumerable.Range(0, 1000).Select(i => briefs[i % briefs.Length] with { Id = $"brief-{i}" })];
        int pages = 0;
        (double many, double manyOwn) = Timed(() => pages = thousand.Sum(p => PdfWriter.Write(PagePlan.Of(p, PageFormat.A4)).Pages));
        Row(string.Create(CultureInfo.InvariantCulture, $"1,000 helper briefs, {pages} pages"), string.Create(CultureInfo.InvariantCulture, $"{many / 1000:0.0} s (processor {manyOwn / 1000:0.0} s)"), "20 s");
        Row("memory of the process at its peak, planning included", string.Create(CultureInfo.InvariantCulture, $"{Megabytes(Peak()):0} MB"), "300 MB");
        return 0;
    }

    private static long Peak()
    {
        using Process me = Process.GetCurrentProcess();
        return me.PeakWorkingSet64;
    }

    private static double Megabytes(long bytes) => bytes / 1024.0 / 1024;

    private static PaperBundle Bundle(string root)
    {
        Occasion occasion = OccasionFiles.Load(Path.Combine(root, "examples", "demo", "occasion.md"), new LocalDate(2026, 10, 1)).Match(o => o, p => throw new InvalidOperationException(p[0].Message));
        PriceList prices = PriceList.Read(File.ReadAllText(Path.Combine(root, "examples", "demo", "prices.csv"))).Match(l => l, p => throw new InvalidOperationException(p[0].Message));
        PlannedOccasion planned = PlanFlow.Plan(occasion, new PlanOptions(6), "au").Match(p => p, p => throw new InvalidOperationException(p[0].Message));
        return planned.Outcome is Plan ? PrintFlow.Bundle(planned, new LocalDateTime(2026, 10, 7, 18, 20), new PrintWish { Prices = prices }) : throw new InvalidOperationException("No plan in six seconds; run it again on a quieter machine.");
    }

    private static (double Wall, double Processor) Timed(Action work)
    {
        using Process me = Process.GetCurrentProcess();
        TimeSpan before = me.TotalProcessorTime;
        long start = Stopwatch.GetTimestamp();
        work();
        double wall = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        me.Refresh();
        return (wall, (me.TotalProcessorTime - before).TotalMilliseconds);
    }

    public static string? Root()
    {
        for (DirectoryInfo? d = new(Directory.GetCurrentDirectory()); d is not null; d = d.Parent)
        {
            if (File.Exists(Path.Combine(d.FullName, "examples", "demo", "occasion.md")))
            {
                return d.FullName;
            }
        }

        return null;
    }

    private static void Row(string what, string figure, string limit) => Console.WriteLine($"| {what} | {figure} | {limit} |");
}
