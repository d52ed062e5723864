using System.Collections.Immutable;
using Coulisse.Cards;

namespace Coulisse.Flows.Fits;

/// <summary>What fits on, in or out of what: every fit by its name, for the command and the page alike.</summary>
public static class FitFlow
{
    /// <summary>All fits.</summary>
    public static ImmutableArray<FitKind> Kinds { get; } = [.. CutFits.Kinds, .. RoundFits.Kinds, .. TinFits.Kinds, .. SheetFits.Kinds, .. FilledFits.Kinds, .. RootFits.Kinds];

    /// <summary>A fit by its name; null when there is none.</summary>
    /// <param name="name">Word of the command.</param>
    public static FitKind? Find(string name) => Kinds.FirstOrDefault(k => k.Name == name);

    /// <summary>Works a fit out, or says what is wrong.</summary>
    /// <param name="kind">The fit.</param>
    /// <param name="given">Texts by field name.</param>
    public static Parsed<FitAnswer> Of(FitKind kind, IReadOnlyDictionary<string, string> given)
    {
        ArgumentNullException.ThrowIfNull(kind);
        return FitValues.Read(kind, given).Match<Parsed<FitAnswer>>(
            values =>
            {
                try
                {
                    return new Parsed<FitAnswer>.Ok(kind.Work(values));
                }
                catch (ArgumentOutOfRangeException e)
                {
                    // The message of the shapes is written for the person; only .NET's tail of names and values is cut.
                    return new Parsed<FitAnswer>.Failed([new Problem("FIT002", 0, e.Message.Split(" (Parameter", StringSplitOptions.None)[0], "Change that measure.")]);
                }
            },
            problems => new Parsed<FitAnswer>.Failed(problems));
    }

    /// <summary>Most pieces laid out and drawn at once.</summary>
    internal const int MostPieces = 10_000;

    /// <summary>Refuses what would be a drawing of dust.</summary>
    internal static void NotTooMany(double pieces)
    {
        if (pieces > MostPieces)
        {
            throw new ArgumentOutOfRangeException(nameof(pieces), pieces, FormattableString.Invariant($"About {pieces:#,0} pieces at once are more than the {MostPieces:#,0} that are laid out; take a larger piece or a smaller place."));
        }
    }
}
