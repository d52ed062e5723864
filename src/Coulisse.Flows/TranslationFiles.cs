using System.Collections.Immutable;
using System.Text;
using Coulisse.Cards;
using Coulisse.Kitchen.Occasions;
using Coulisse.Views.Papers;

namespace Coulisse.Flows;

/// <summary>Translations of steps as plain files: "starter.pl.txt" beside "starter.md", "occasion.pl.txt" beside the occasion's sheet for roles and diets.</summary>
public static class TranslationFiles
{
    /// <summary>What is stored for the languages of an occasion's people.</summary>
    /// <param name="sheetPath">Occasion sheet.</param>
    /// <param name="occasion">The occasion read from it.</param>
    /// <exception cref="IOException">A file is there and cannot be read.</exception>
    public static ImmutableArray<StepTranslations> Of(string sheetPath, Occasion occasion)
    {
        ArgumentNullException.ThrowIfNull(occasion);
        return [.. occasion.People.Where(p => !p.Languages.IsEmpty).Select(p => BriefPhrases.For(p.Languages).Language).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).Select(l => Of(sheetPath, occasion, l))];
    }

    /// <summary>What is stored for one language; a sheet's own file goes before its cards'.</summary>
    /// <exception cref="IOException">A file is there and cannot be read.</exception>
    public static StepTranslations Of(string sheetPath, Occasion occasion, string language)
    {
        ArgumentNullException.ThrowIfNull(occasion);
        return Files(sheetPath, occasion, language).Reverse().Where(f => File.Exists(f.Path))
            .Select(f => { StepTranslations read = StepTranslations.Read(File.ReadAllText(f.Path, Encoding.UTF8), language); return read with { Problems = [.. read.Problems.Select(p => p with { Message = Path.GetFileName(f.Path) + ": " + p.Message })] }; })
            .Aggregate(new StepTranslations { Language = language }, (all, one) => all.With(one));
    }

    /// <summary>Writes the files to fill in, with the translations there are; nothing stored is lost.</summary>
    /// <returns>Paths, sentences in each, and how many of them have no translation.</returns>
    /// <exception cref="IOException">A file cannot be read or written.</exception>
    public static ImmutableArray<(string Path, int Sentences, int Missing)> Write(string sheetPath, Occasion occasion, string language)
    {
        ArgumentNullException.ThrowIfNull(occasion);
        StepTranslations stored = Of(sheetPath, occasion, language);
        ImmutableArray<(string, int, int)>.Builder written = ImmutableArray.CreateBuilder<(string, int, int)>();
        foreach ((string path, string title, ImmutableArray<string> sentences) in Files(sheetPath, occasion, language).Where(f => f.Sentences.Length > 0))
        {
            // A pair whose step is no longer on the card stays at the end of its file: the chef may want it back.
            string old = File.Exists(path) ? File.ReadAllText(path, Encoding.UTF8) : "";
            string text = stored.Write(title, sentences) + StepTranslations.Unused(old, sentences);
            PrintFiles.Save(Path.GetDirectoryName(path)!, Path.GetFileName(path), Encoding.UTF8.GetBytes(text));
            written.Add((path, sentences.Length, sentences.Count(s => stored.Find(s) is null)));
        }

        return written.ToImmutable();
    }

    private static IEnumerable<(string Path, string Title, ImmutableArray<string> Sentences)> Files(string sheetPath, Occasion occasion, string language)
    {
        string folder = Path.GetDirectoryName(Path.GetFullPath(sheetPath)) ?? ".";
        ImmutableArray<string> all = HelperPaper.ToTranslate(occasion);
        HashSet<string> steps = [.. occasion.Dishes.SelectMany(d => d.Dish.Components).SelectMany(c => c.Steps).Select(s => s.Text)];
        yield return (Named(Path.GetFullPath(sheetPath), language), occasion.Title, [.. all.Where(t => !steps.Contains(t))]);
        foreach (OccasionDish d in occasion.Dishes.DistinctBy(d => d.CardPath, StringComparer.Ordinal).Where(d => d.CardPath.EndsWith(".md", StringComparison.OrdinalIgnoreCase)))
        {
            yield return (Named(Path.GetFullPath(Path.Combine(folder, d.CardPath)), language), d.Dish.Title, [.. d.Dish.Components.SelectMany(c => c.Steps).Select(s => s.Text).Distinct(StringComparer.Ordinal)]);
        }
    }

    private static string Named(string path, string language) => Path.ChangeExtension(path, null) + "." + language + ".txt";
}
