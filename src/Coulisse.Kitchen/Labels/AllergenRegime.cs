namespace Coulisse.Kitchen.Labels;

/// <summary>Whose law names the allergens and rounds the panel.</summary>
public enum AllergenRegime
{
    /// <summary>EU and UK: fourteen groups of Regulation 1169/2011.</summary>
    Eu,

    /// <summary>United States: nine major allergens.</summary>
    Us,

    /// <summary>Australia and New Zealand: plain English names of Schedule 9.</summary>
    Anz,
}
