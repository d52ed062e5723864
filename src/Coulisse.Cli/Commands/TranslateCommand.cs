using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.Text;
using Coulisse.Cards;
using Coulisse.Flows;
using Coulisse.Kitchen.Occasions;
using Coulisse.Views.Papers;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse translate OCCASION --language pl: files to write the steps into another language once, for the briefs of helpers who read it.</summary>
internal static class TranslateCommand
{
    public static Command Create()
    {
        Argument<string> sheet = new("OCCASION") { Description = "Occasion sheet" };
        Option<string> language = new("--language") { Description = "Language: " + string.Join(", ", BriefPhrases.Languages), Required = true };
        language.AcceptOnlyFromAmong([.. BriefPhrases.Languages]);
        Option<bool> json = new("--json") { Description = "One JSON document on standard output" };
        Command command = new("translate", "Writes a file beside each card, and one beside the sheet, with every step once and a line for its translation; what was translated before stays. Briefs then print it.\nExample: coulisse translate examples/demo/occasion.md --language pl") { sheet, language, json };
        command.SetAction(parsed =>
        {
            string path = parsed.GetRequiredValue(sheet);
            if (path == "-")
            {
                return Input.Fail(Exit.Usage, "files are written beside the sheet, so it must be a file.");
            }

            if (PlanCommand.Load([path], null, out int exit) is not { } occasion)
            {
                return exit;
            }

            try
            {
                string to = parsed.GetRequiredValue(language);
                ImmutableArray<(string Path, int Sentences, int Missing)> files = TranslationFiles.Write(path, occasion, to);
                ImmutableArray<Problem> problems = TranslationFiles.Of(path, occasion, to).Problems;
                Say(to, files, parsed.GetValue(json));
                return problems.IsEmpty ? Exit.Done : Input.Fail(path, problems);
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                return Input.Fail(Exit.Storage, $"the translations cannot be read or written: {e.Message}");
            }
        });
        return command;
    }

    /// <summary>What is stored beside a sheet and its cards; none for a sheet that is no file.</summary>
    public static ImmutableArray<StepTranslations> Stored(string path, Occasion occasion)
    {
        try
        {
            return path == "-" ? [] : TranslationFiles.Of(path, occasion);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            Console.Error.WriteLine($"coulisse: stored translations cannot be read, so the briefs are printed without: {e.Message}");
            return [];
        }
    }

    private static void Say(string language, ImmutableArray<(string Path, int Sentences, int Missing)> files, bool json)
    {
        if (json)
        {
            Input.Json(new { schema = "coulisse/translate/1", language, files = files.Select(f => new { file = f.Path, sentences = f.Sentences, missing = f.Missing }) });
            return;
        }

        Console.OutputEncoding = new UTF8Encoding(false);
        foreach ((string path, int sentences, int missing) in files)
        {
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{path}  {sentences} sentences, {missing} to translate"));
        }
    }
}
