using System.Globalization;
using System.Text;
using Coulisse.Flows;
using Coulisse.Views.Papers;

namespace Coulisse.Cli;

/// <summary>What print says when it is done.</summary>
internal static class PrintReport
{
    public static int Say(PaperBundle bundle, PrintedSet printed, bool json)
    {
        if (json)
        {
            return Input.Json(new
            {
                schema = "coulisse/print/1", title = bundle.Title, version = bundle.Mark.Version, code = bundle.Code, stale = printed.Stale, gone = printed.Gone,
                papers = printed.Files.Select(w => new { id = w.Id, kind = w.Kind, title = w.Title, file = w.File, pages = w.Pages == 0 ? null : (int?)w.Pages, content = w.Content, remarks = w.Remarks }),
            });
        }

        Console.OutputEncoding = new UTF8Encoding(false);
        foreach (PrintedFile f in printed.Files)
        {
            Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{f.File}  {f.Title}{(f.Pages > 0 ? f.Pages == 1 ? ", 1 page" : $", {f.Pages} pages" : "")}"));
            foreach (string remark in f.Remarks)
            {
                Console.Error.WriteLine("coulisse: " + remark);
            }
        }

        if (printed.OnlyStale)
        {
            Console.Out.WriteLine(printed.Stale.IsEmpty ? "No sheet says anything else than the one that hangs." : "Take down: " + string.Join(", ", printed.Stale));
        }

        foreach (string gone in printed.Gone)
        {
            Console.Out.WriteLine($"Take down, nothing prints it any more: {gone}");
        }

        return Exit.Done;
    }
}
