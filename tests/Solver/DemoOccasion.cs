using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Cards.Reading;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning.Slot;
using Coulisse.Kitchen.Planning.Tasks;
using Coulisse.Tests;
using NodaTime;

namespace Coulisse.Solver.Tests;

/// <summary>The occasion of the examples, read from its sheet and cards.</summary>
internal static class DemoOccasion
{
    public static OccasionSheet Sheet { get; } = OccasionReader.Read(File.ReadAllText(Path("occasion.md")), new LocalDate(2026, 10, 1)).Match(s => s, Fail<OccasionSheet>);

    public static Occasion Occasion { get; } = Build(Sheet);

    public static ImmutableArray<Batch> Batches { get; } = BatchesOf(Occasion);

    public static PrepWork Work { get; } = TaskBuilder.Build(Occasion, Batches, LiveSlot.Decide(Occasion));

    public static Occasion Build(OccasionSheet sheet) => OccasionBuilder.Build(sheet, Card).Match(o => o, Fail<Occasion>);

    public static ImmutableArray<Batch> BatchesOf(Occasion occasion) => OccasionBatches.Make(occasion).Match(b => b, Fail<ImmutableArray<Batch>>);

    private static Dish Card(string path) => CardReader.Read(new CardText(File.ReadAllText(Path(path)), path)).Match(d => d, Fail<Dish>);

    private static string Path(string path) => System.IO.Path.Combine(SharedData.Repository, "examples", "demo", path);

    private static T Fail<T>(ImmutableArray<Problem> p) => throw new InvalidOperationException(string.Join("; ", p));
}
