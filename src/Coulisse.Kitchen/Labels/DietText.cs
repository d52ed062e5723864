using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Cards.Reading;

namespace Coulisse.Kitchen.Labels;

/// <summary>What a cell of the diets table tells the kitchen: what is left out, what comes instead, what to mind.</summary>
/// <param name="Text">As written.</param>
/// <param name="Without">Components or foods left out, as written.</param>
/// <param name="Instead">What comes instead, each read as an ingredient line.</param>
/// <param name="Nothing">True for "none": the seat gets nothing of this.</param>
/// <param name="Minds">Clauses that are neither: cautions for the people who plate.</param>
public sealed record DietText(string Text, ImmutableArray<string> Without, ImmutableArray<IngredientLine> Instead, bool Nothing, ImmutableArray<string> Minds)
{
    private static readonly string[] Leaving = ["without ", "no ", "sans ", "ohne ", "sin ", "senza "];
    private static readonly string[] Swapping = [" in place of ", " instead of ", " à la place de ", " anstelle von ", " statt ", " en lugar de ", " al posto di "];
    private static readonly string[] SwapEnds = [" instead", " à la place", " stattdessen", " en su lugar", " invece"];

    /// <summary>Reads a cell. Nothing of it is lost: what is not understood stands in <see cref="Minds"/>.</summary>
    /// <param name="text">As written.</param>
    /// <param name="language">ISO 639-1 code.</param>
    public static DietText Read(string text, string language)
    {
        ArgumentNullException.ThrowIfNull(text);
        ImmutableArray<string>.Builder without = ImmutableArray.CreateBuilder<string>();
        ImmutableArray<IngredientLine>.Builder instead = ImmutableArray.CreateBuilder<IngredientLine>();
        ImmutableArray<string>.Builder minds = ImmutableArray.CreateBuilder<string>();
        bool nothing = false;
        foreach (string clause in text.Split([";", ", ", ". "], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(c => c.TrimEnd('.')))
        {
            string lower = clause.ToLowerInvariant();
            if (lower is "none" or "nothing" or "rien" or "nichts" or "nada" or "niente" or "–" or "-")
            {
                nothing = true;
            }
            else if (Swapping.FirstOrDefault(s => lower.Contains(s, StringComparison.Ordinal)) is { } swap)
            {
                int at = lower.IndexOf(swap, StringComparison.Ordinal);
                instead.Add(CardReader.ReadLine(clause[..at].Trim(), language));
                without.Add(clause[(at + swap.Length)..].Trim());
            }
            else if (SwapEnds.FirstOrDefault(s => lower.EndsWith(s, StringComparison.Ordinal)) is { } end)
            {
                instead.Add(CardReader.ReadLine(clause[..^end.Length].Trim(), language));
            }
            else if (Leaving.FirstOrDefault(s => lower.StartsWith(s, StringComparison.Ordinal)) is { } leave)
            {
                without.Add(clause[leave.Length..].Trim());
            }
            else if (CardReader.ReadLine(clause, language) is { Kind: LineKind.Ingredient } line && line.Foods.Any(f => f.Grams is not null || (f.Amount is not null && f.Unit is not null)))
            {
                // "4 g toasted pumpkin seeds" alone adds to the plate.
                instead.Add(line);
            }
            else
            {
                minds.Add(clause);
            }
        }

        return new DietText(text, without.ToImmutable(), instead.ToImmutable(), nothing, minds.ToImmutable());
    }
}
