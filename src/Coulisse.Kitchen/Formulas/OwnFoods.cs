using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Matter.Foods;

namespace Coulisse.Kitchen.Formulas;

/// <summary>The house's own foods and suppliers' specifications, read from a table as text; they go before the foods that ship.</summary>
/// <remarks>
/// One food a line, columns by name in any order, commas, semicolons or tabs between: name, also (other names, "/" between), source, water, protein, fat, saturates, carbohydrate, sugars, fibre,
/// trans, added (fat and sugars of which), polyols, alcohol, acid, ash (g per 100 g), salt (g) or sodium (mg), cholesterol, calcium, iron, potassium, vitc (mg), vita, vitd (µg), so2 (mg in 1 kg), density (g/mL), piece (g), edible (%), contains, may.
/// A name of a food that ships takes its place: what the line does not hold is kept from the row beneath, except the composition, which is taken whole from one source.
/// </remarks>
public static class OwnFoods
{
    private static readonly string[] Parts = ["water", "protein", "fat", "saturates", "carbohydrate", "sugars", "fibre", "polyols", "alcohol", "acid", "ash", "trans", "added"];
    private static readonly string[] Whole = ["water", "protein", "fat", "carbohydrate", "fibre", "alcohol", "acid", "ash"];
    private static readonly string[] Columns = ["name", "also", "source", .. Parts, "salt", "sodium", "cholesterol", "calcium", "iron", "potassium", "vitc", "vita", "vitd", "so2", "density", "piece", "edible", "contains", "may"];

    // Sums may miss by the rounding of a label: as many halves of a gram as it has parts.
    private const double LabelSlack = 2;

    /// <summary>Reads the table.</summary>
    /// <param name="text">The whole text.</param>
    /// <param name="codes">Allergen codes that are known.</param>
    /// <param name="beneath">The foods they are laid over; null for those that ship.</param>
    /// <returns>The foods laid over those that ship, or every problem with its line.</returns>
    public static Parsed<FoodTable> Read(string text, IReadOnlyCollection<string> codes, FoodTable? beneath = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(codes);
        FoodTable table = beneath ?? FoodTable.Default;
        string[] lines = text.TrimStart('\uFEFF').Split('\n');
        int head = Array.FindIndex(lines, l => l.Trim().Length > 0 && !l.StartsWith('#'));
        if (head < 0)
        {
            return new Parsed<FoodTable>.Failed([new Problem("MIX009", 0, "The table of own foods is empty.", "Its first line names the columns: name, source, water, protein, fat, carbohydrate …")]);
        }

        char between = lines[head].Contains('\t', StringComparison.Ordinal) ? '\t' : lines[head].Contains(';', StringComparison.Ordinal) ? ';' : ',';
        string[] columns = [.. lines[head].Trim('\r').Split(between).Select(c => c.Trim().ToLowerInvariant())];
        List<Problem> problems = [.. columns.Where(c => c.Length > 0 && !Columns.Contains(c)).Select(c => new Problem("MIX009", head + 1, $"“{c}” is no column of own foods.", "Columns are: " + string.Join(", ", Columns) + "."))];
        problems.AddRange(new[] { "name", "source" }.Where(c => !columns.Contains(c)).Select(c => new Problem("MIX009", head + 1, $"The column {c} is missing.", "Every own food has a name and says where its figures are from.")));
        if (problems.Count > 0)
        {
            return new Parsed<FoodTable>.Failed([.. problems]);
        }

        List<Food> foods = [];
        HashSet<string> ids = new(StringComparer.Ordinal);
        for (int i = head + 1; i < lines.Length; i++)
        {
            string line = lines[i].Trim('\r');
            if (line.Trim().Length == 0 || line.StartsWith('#'))
            {
                continue;
            }

            string[] cells = [.. line.Split(between).Select(c => c.Trim().Trim('"').Trim())];
            Row row = new(i + 1, columns, cells, problems);
            if (row.Food(table, codes) is { } food)
            {
                if (!ids.Add(food.Id))
                {
                    problems.Add(new Problem("MIX009", i + 1, $"“{food.Name}” stands twice among the own foods.", "Keep the line that holds; give the other another name."));
                }

                foods.Add(food);
            }
        }

        return problems.Count > 0 ? new Parsed<FoodTable>.Failed([.. problems]) : new Parsed<FoodTable>.Ok(table.With(foods));
    }

    private sealed class Row(int line, string[] columns, string[] cells, List<Problem> problems)
    {
        private string Cell(string column) => Array.IndexOf(columns, column) is >= 0 and var i && i < cells.Length ? cells[i] : "";

        private double? Number(string column, double most)
        {
            string cell = Cell(column).Replace(',', '.');
            bool below = cell.StartsWith('<');
            if (cell.Length == 0)
            {
                return null;
            }

            if (!double.TryParse(below ? cell[1..] : cell, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) || value < 0 || value > most)
            {
                problems.Add(new Problem("MIX009", line, $"{column} is “{Cell(column)}”.", string.Create(CultureInfo.InvariantCulture, $"A figure from 0 to {most:0.##}; empty when it is not known, “<0.5” when it is below a limit.")));
                return null;
            }

            return below ? value / 2 : value;
        }

        public Food? Food(FoodTable table, IReadOnlyCollection<string> codes)
        {
            int before = problems.Count;
            string name = Cell("name");
            string source = Cell("source");
            if (name.Length == 0 || source.Length == 0)
            {
                problems.Add(new Problem("MIX009", line, name.Length == 0 ? "The line has no name." : $"“{name}” does not say where its figures are from.", "Write a name, and a source such as “supplier's specification of 3 March”."));
                return null;
            }

            Dictionary<string, double?> parts = Parts.ToDictionary(p => p, p => Number(p, 100), StringComparer.Ordinal);
            double sum = Whole.Sum(p => parts[p] ?? 0);
            bool held = parts.Values.Any(v => v is not null);
            bool main = parts["water"] is not null && parts["protein"] is not null && parts["fat"] is not null && parts["carbohydrate"] is not null;
            if (sum > 100 + LabelSlack)
            {
                problems.Add(new Problem("MIX008", line, string.Create(CultureInfo.InvariantCulture, $"The parts of “{name}” sum to {sum:0.#} g in 100 g."), "Parts of 100 g are 100 g at most; fibre, acid and polyols as the label counts them."));
            }
            else if (main && parts["ash"] is not null && sum < 100 - (2 * LabelSlack))
            {
                problems.Add(new Problem("MIX008", line, string.Create(CultureInfo.InvariantCulture, $"The parts of “{name}” sum to {sum:0.#} g in 100 g, though all are held."), "Look for the part that is missing, or leave empty what is not known."));
            }

            foreach ((string part, string of) in new[] { ("sugars", "carbohydrate"), ("saturates", "fat"), ("polyols", "carbohydrate"), ("trans", "fat"), ("added", "sugars") })
            {
                if (parts[part] > parts[of] + 0.05)
                {
                    problems.Add(new Problem("MIX008", line, string.Create(CultureInfo.InvariantCulture, $"“{name}” has {parts[part]:0.##} g of {part} in {parts[of]:0.##} g of {of}."), $"{part} are a part of {of}."));
                }
            }

            double? sodium = Number("sodium", 40000) ?? (Number("salt", 100) * 1000 / 2.5);
            double? cholesterol = Number("cholesterol", 5000), sulphur = Number("so2", 5000);
            double? calcium = Number("calcium", 40000), iron = Number("iron", 1000), potassium = Number("potassium", 60000), c = Number("vitc", 100000), a = Number("vita", 100000), d3 = Number("vitd", 1000);
            ImmutableArray<string> contains = Codes("contains", codes);
            ImmutableArray<string> may = Codes("may", codes);
            double? density = Number("density", 3), piece = Number("piece", 20000), edible = Number("edible", 100);
            if (problems.Count > before)
            {
                return null;
            }

            Food? under = table.Match(name, "en") is { Confidence: 1 } match ? table.Find(match.Id) : null;
            string[] names = [name, .. Cell("also").Split('/', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)];
            bool allergens = Cell("contains").Length > 0 || Cell("may").Length > 0;
            return new Food(under?.Id ?? "own:" + FoodName.Fold(name).Replace(' ', '-'), name, source, "", !held && under is not null ? under.Composition : new Composition
            {
                Water = parts["water"], Protein = parts["protein"], NitrogenFactor = 6.25, Fat = parts["fat"], Saturates = parts["saturates"], Carbohydrate = parts["carbohydrate"], Sugars = parts["sugars"],
                Fibre = parts["fibre"], Polyols = parts["polyols"], Alcohol = parts["alcohol"], Acid = parts["acid"], Ash = parts["ash"], SodiumMilligrams = sodium,
                TransFat = parts["trans"], AddedSugars = parts["added"], CholesterolMilligrams = cholesterol,
                CalciumMilligrams = calcium, IronMilligrams = iron, PotassiumMilligrams = potassium, VitaminCMilligrams = c, VitaminAMicrograms = a, VitaminDMicrograms = d3,
            })
            {
                Names = ImmutableDictionary<string, ImmutableArray<string>>.Empty.Add("en", [.. names, .. under is null ? [] : under.Names.Values.SelectMany(n => n)]),
                Densities = density is { } d ? ImmutableDictionary<string, Held>.Empty.Add("any", new Held(d, false)) : under?.Densities ?? ImmutableDictionary<string, Held>.Empty,
                Units = piece is { } p ? (under?.Units ?? ImmutableDictionary<string, Held>.Empty).SetItem("piece", new Held(p, false)) : under?.Units ?? ImmutableDictionary<string, Held>.Empty,
                EdiblePercent = edible ?? under?.EdiblePercent,
                Contains = allergens ? contains : under?.Contains ?? [],

                // A specification that lists its allergens ("none" where there are none) settles what else would depend on the make; an empty cell settles nothing.
                Depends = allergens ? may : under?.Depends ?? [],
                SulphurDioxide = sulphur,
                AllergensHeld = allergens || under is not null,
            };
        }

        private ImmutableArray<string> Codes(string column, IReadOnlyCollection<string> known)
        {
            string[] words = [.. Cell(column).ToLowerInvariant().Split([' ', '/', '+'], StringSplitOptions.RemoveEmptyEntries).Where(w => w is not ("none" or "-" or "no"))];
            problems.AddRange(words.Where(w => !known.Contains(w)).Select(w => new Problem("MIX009", line, $"“{w}” is no allergen code.", "Codes are: " + string.Join(" ", known) + ".")));
            return [.. words.Where(known.Contains)];
        }
    }
}
