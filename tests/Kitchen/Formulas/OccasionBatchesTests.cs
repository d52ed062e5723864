using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Kitchen.Formulas;
using Coulisse.Tests;

namespace Coulisse.Kitchen.Tests.Formulas;

public sealed class OccasionBatchesTests
{
    [Theory]
    [InlineData(28, 1)]
    [InlineData(29, 2)]
    [InlineData(48, 2)]
    [InlineData(56, 2)]
    [InlineData(57, 3)]
    public void Pieces_are_made_in_whole_tins(int pieces, int tins)
        => Assert.Equal(tins, OccasionBatches.WholeVessels(Card("slice-buckwheat-plum.md"), pieces, "pieces"));

    [Fact]
    public void A_card_that_counts_no_pieces_is_made_once()
        => Assert.Equal(1, OccasionBatches.WholeVessels(Card("royale-draft.md") with { Components = [] }, 48, "pieces"));

    private static Dish Card(string name) => CardReader.Read(new CardText(File.ReadAllText(Path.Combine(SharedData.Repository, "examples", "demo", "cards", name)), name))
        .Match(d => d, p => throw new InvalidOperationException(string.Join("; ", p)));
}
