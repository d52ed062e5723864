using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Formats.In;
using Coulisse.Formats.Travel;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Trials;
using Coulisse.Matter.Heat;
using Coulisse.Store;

namespace Coulisse.Flows;

/// <summary>Keeps trials beside their card, takes photographs and probe files in, and says what repeats tell.</summary>
/// <param name="store">The kitchen's store.</param>
public sealed class TrialShelf(KitchenStore store)
{
    /// <summary>Files a trial may have beside it.</summary>
    public const int MostFiles = 40;

    /// <summary>Keeps a sheet.</summary>
    /// <param name="id">Trial, or null for a new one.</param>
    /// <param name="cardId">Card that was made.</param>
    /// <param name="sheet">The sheet's text.</param>
    /// <param name="who">Who keeps it.</param>
    /// <param name="cancel">Gives up.</param>
    /// <returns>The trial's key, or what is wrong with the sheet.</returns>
    public async Task<Parsed<string>> KeepAsync(string? id, string cardId, string sheet, string who, CancellationToken cancel = default)
    {
        if (TrialSheet.Read(sheet) is not Parsed<Trial>.Ok(var trial))
        {
            return new Parsed<string>.Failed(((Parsed<Trial>.Failed)TrialSheet.Read(sheet)).Problems);
        }

        if (await store.OpenDocumentAsync(cardId, cancel).ConfigureAwait(false) is not { Kind: DocumentKind.Card } card)
        {
            return Fail("TRI006", $"There is no kept card for the trial of {trial.Card}.", "Keep the card first, or name another with --card.");
        }

        int version = trial.CardVersion ?? card.Version;
        if (version < 1 || version > card.Version)
        {
            return Fail("TRI007", string.Create(CultureInfo.InvariantCulture, $"The card has versions 1 to {card.Version}; the sheet says {version}."), "Correct the version, or leave it out for the newest.");
        }

        string title = string.Create(CultureInfo.InvariantCulture, $"Trial of {card.Title}{(trial.Made is { } day ? $", {day:uuuu-MM-dd}" : "")}");
        Trial fitted = CoreCurves.Fitted(trial with { CardVersion = version }, id is null || trial.Cores.IsEmpty ? _ => null : await CurvesAsync(id, cancel).ConfigureAwait(false));
        return new Parsed<string>.Ok(await store.KeepTrialAsync(id, title, sheet, who, cardId, version, TravelJson.Write(fitted), cancel).ConfigureAwait(false));
    }

    /// <summary>Trials of a card, the newest first.</summary>
    public async Task<ImmutableArray<(KeptTrial Kept, Trial Trial)>> OfAsync(string cardId, CancellationToken cancel = default)
        => [.. (await store.TrialsAsync(cardId, cancel).ConfigureAwait(false)).Select(k => (k, TravelJson.Read<Trial>(k.Json)))];

    /// <summary>What the trials of one version say together.</summary>
    /// <param name="cardId">Card.</param>
    /// <param name="version">Version; null for the newest that was tried.</param>
    /// <param name="cancel">Gives up.</param>
    public async Task<TrialSummary?> SummaryAsync(string cardId, int? version, CancellationToken cancel = default)
    {
        ImmutableArray<(KeptTrial Kept, Trial Trial)> all = await OfAsync(cardId, cancel).ConfigureAwait(false);
        int of = version ?? (all.IsEmpty ? 0 : all.Max(t => t.Kept.CardVersion));
        Trial[] some = [.. all.Where(t => t.Kept.CardVersion == of).Select(t => t.Trial)];
        return some.Length == 0 ? null : TrialSummary.Of(some);
    }

    /// <summary>What the next plan may learn of a card: minutes from trials of any version (steps that were edited have learnt nothing yet), figures from trials of the version in use and of those that are the same to make.</summary>
    /// <param name="dish">The card as it is planned.</param>
    /// <param name="cardId">Its document.</param>
    /// <param name="version">Its version.</param>
    /// <param name="cancel">Gives up.</param>
    public async Task<(ImmutableArray<LearntTime> Times, LearntCard? Card)> LearntAsync(Dish dish, string cardId, int version, CancellationToken cancel = default)
    {
        ImmutableArray<(KeptTrial Kept, Trial Trial)> all = await OfAsync(cardId, cancel).ConfigureAwait(false);
        List<Trial> same = [];
        foreach (IGrouping<int, (KeptTrial Kept, Trial Trial)> tried in all.GroupBy(t => t.Kept.CardVersion))
        {
            if (tried.Key == version || (await store.VersionAsync(cardId, tried.Key, cancel).ConfigureAwait(false) is { } old && CardReader.Read(new CardText(old.Text, "card")) is Parsed<Dish>.Ok(var then) && TrialLearning.SameMake(dish, then)))
            {
                same.AddRange(tried.Select(t => t.Trial with { CardVersion = version }));
            }
        }

        return (TrialLearning.Times(dish, [.. all.Select(t => t.Trial)]), TrialLearning.Card(dish, same));
    }

    /// <summary>Puts a photograph beside a trial or record, without its metadata.</summary>
    public async Task<Parsed<string>> PhotographAsync(string id, string name, byte[] bytes, CancellationToken cancel = default)
        => Photograph.Read(bytes) switch
        {
            Parsed<Photograph>.Ok(var p) => await AttachAsync(id, name, p.Type, p.Bytes, cancel).ConfigureAwait(false),
            Parsed<Photograph>.Failed(var problems) => new Parsed<string>.Failed(problems),
            _ => throw new InvalidOperationException("A photograph was neither read nor refused."),
        };

    /// <summary>Puts a probe's file beside a trial, when it reads.</summary>
    public async Task<Parsed<string>> ProbeAsync(string id, string name, byte[] bytes, CancellationToken cancel = default)
    {
        Parsed<ProbeRun> read = TextBytes.Read(bytes).Match(ProbeFile.Read, problems => new Parsed<ProbeRun>.Failed(problems));
        if (read is Parsed<ProbeRun>.Failed(var wrong))
        {
            return new Parsed<string>.Failed(wrong);
        }

        Parsed<string> kept = await AttachAsync(id, name, "text/csv", bytes, cancel).ConfigureAwait(false);
        // a sheet that names the file is fitted once it is there; its text, and so its version, stays
        if (kept is Parsed<string>.Ok && await store.TrialAsync(id, cancel).ConfigureAwait(false) is { } trial && TravelJson.Read<Trial>(trial.Json).Cores.Any(c => c.Watts is null) && await store.OpenDocumentAsync(id, cancel).ConfigureAwait(false) is { } sheet)
        {
            await KeepAsync(id, trial.CardId, sheet.Text, sheet.Who, cancel).ConfigureAwait(false);
        }

        return kept;
    }

    // by name, as the sheet writes it
    private async Task<Func<string, ProbeRun?>> CurvesAsync(string id, CancellationToken cancel)
    {
        Dictionary<string, ProbeRun> runs = new(StringComparer.OrdinalIgnoreCase);
        foreach (KeptFile file in (await store.FilesAsync(id, cancel).ConfigureAwait(false)).Where(f => f.Type == "text/csv"))
        {
            if (await ReadingsAsync(file.Id, cancel).ConfigureAwait(false) is { } run)
            {
                runs[file.Name] = run;
            }
        }

        return name => runs.GetValueOrDefault(Plain(name));
    }

    /// <summary>The readings of a kept probe file; null when it is none.</summary>
    public async Task<ProbeRun?> ReadingsAsync(string file, CancellationToken cancel = default)
        => await store.FileAsync(file, cancel).ConfigureAwait(false) is ({ } bytes, "text/csv") && TextBytes.Read(bytes).Match(ProbeFile.Read, p => new Parsed<ProbeRun>.Failed(p)) is Parsed<ProbeRun>.Ok(var probe) ? probe : null;

    private async Task<Parsed<string>> AttachAsync(string id, string name, string type, byte[] bytes, CancellationToken cancel)
        => (await store.FilesAsync(id, cancel).ConfigureAwait(false)).Count >= MostFiles
            ? Fail("TRI008", string.Create(CultureInfo.InvariantCulture, $"There are {MostFiles} files beside it already."), "Begin another trial.")
            : new Parsed<string>.Ok(await store.AttachAsync(id, Plain(name), type, bytes, cancel).ConfigureAwait(false));

    /// <summary>A name to show, never a path.</summary>
    private static string Plain(string name)
    {
        string last = name.Split('/', '\\')[^1];
        StringBuilder b = new();
        foreach (char c in last.Where(c => char.IsLetterOrDigit(c) || c is '.' or '-' or '_' or ' ').Take(80))
        {
            b.Append(c);
        }

        return b.Length == 0 ? "file" : b.ToString();
    }

    private static Parsed<string> Fail(string code, string what, string right) => new Parsed<string>.Failed([new Problem(code, 0, what, right)]);
}
