using Coulisse.Views.Papers;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Tokens;

namespace Coulisse.Papers.Tests;

/// <summary>Every field that the trade lists for a paper stands on it, with its figure or with a place to write it.</summary>
public sealed class FieldsTests
{
    // Fields as government forms, curricula and trade texts list them for each paper, in our sheets' words.
    [Theory]
    [InlineData("card", "As written", "This sheet is for", "Category", "Number", "A portion", "Portion tool", "Photograph", "Kit", "Ingredient", "This batch", "Today", "In", "Keeps", "Heat, machines, and when it is done", "Set to", "Fan", "Time", "Speed", "Food at", "Done when", "Comes out", "Control points", "Limit", "Allergens", "Tried", "By", "Came out", "Changed since the last version")]
    [InlineData("batch", "Ingredient", "Weigh", "Scale reads", "Factor", "Batches", "Bowl empty weighs", "Weighed by, on which scale, when")]
    [InlineData("prep-list", "Day", "Begins", "Ends", "Station", "Hands", "Done", "From", "To", "What", "Kit", "Grams", "Batch", "Kept in, where", "May start later by", "Initials", "Left over")]
    [InlineData("order", "Order by", "Comes on", "Item", "Ready to use", "Usable", "To buy", "On hand", "Pack", "Packs", "A pack", "Sum", "Over", "Other article", "Came", "°C")]
    [InlineData("receiving", "Item", "Packs", "Must be", "°C", "Came", "Use by", "Sent back, why")]
    [InlineData("kit", "Code", "What", "How many", "Power", "Circuit", "Stands", "In use", "Spare", "Whose", "In box", "Loaded", "Checked", "Back")]
    [InlineData("swap-outs", "No.", "Comes in", "Of, and state", "How many", "Grams", "Ready", "Made by", "Held, keeps", "In (like the live one)", "Stands", "Set out by", "Brought at the cue by", "Afterwards")]
    [InlineData("run-sheet", "Starts", "Length", "Place", "Begins", "Ends", "Shown", "Who does what", "Kit, twins", "Watch out", "Camera, mirror", "May be cut", "Began", "GATE 5:00 14:05", "NO TALKING segment 3 is shown")]
    [InlineData("plating", "Part", "Pieces", "Grams", "Give or take", "O’clock", "From the middle", "Tool", "Ahead or last", "Seconds", "Photograph or sample plate", "Never like this", "In this order", "The line")]
    [InlineData("allergens", "Part", "milk", "Guest by guest", "Why", "Looked through by", "On")]
    [InlineData("control-log", "What may go wrong", "Limit", "How it is watched", "If it is missed", "Written down", "Batch", "Hour", "°C", "Done about it", "Initials", "Verified: log looked through, by whom, when, what was found")]
    [InlineData("labels", "Made", "Use by", "Batch", "By")]
    [InlineData("box-labels", "Made", "Use by", "Keep")]
    [InlineData("brief", "Role", "Be there", "The slot begins", "Language", "From", "To", "What", "Where things are", "Stands", "Guests who must not get everything", "Seat", "Declared", "Gets", "Always")]
    [InlineData("handout", "Makes", "Kit", "Your hands, about", "Waiting and cooking, in all", "Spoons and cups", "Allergens")]
    [InlineData("record", "Covers planned", "Covers served", "Planned", "Made", "Served", "Left over", "Minutes taken", "°C at service", "For the next version")]
    [InlineData("cost", "Ingredient", "Used", "Usable", "To buy", "A pack", "Cost", "Share", "Q factor", "Price")]
    public void Every_field_of_the_trade_list_is_there(string kind, params string[] fields)
    {
        HashSet<string> words = [.. PaperShelf.Papers(Demo.Planned()).Where(p => p.Kind == kind && p.Language == "en").SelectMany(p => PrintTests.Words(p)).Select(w => w.Trim())];

        Assert.NotEmpty(words);
        Assert.Empty(fields.Where(f => !words.Contains(f)));
    }

    [Fact]
    public void The_plating_guide_is_one_page_on_either_sheet_with_its_drawing_and_names_the_seats_that_get_another()
    {
        Paper guide = PaperShelf.Papers(Demo.Planned()).First(p => p.Kind == PlatingPaper.Kind);
        Assert.Contains(guide.Blocks, b => b is FigureBlock { ToScale: true });
        Assert.Equal("Another plate: seats 4, 5, 17, 23, 40", guide.Blocks.OfType<CalloutBlock>().Single().Title);
        Assert.All((Pages.PageFormat[])[Pages.PageFormat.A4, Pages.PageFormat.Letter], f => Assert.Single(Pages.PagePlan.Of(guide, f).Pages));
    }

    [Fact]
    public void Every_PDF_is_tagged_names_its_language_and_gives_drawings_words()
    {
        foreach (PrintedPaper printed in PaperPrinter.Print(Demo.Planned(), PaperChoice.All))
        {
            using PdfDocument pdf = ReadBack.Open(printed.Pdf.Bytes);
            DictionaryToken catalog = pdf.Structure.Catalog.CatalogDictionary;

            Assert.True(catalog.ContainsKey(NameToken.Create("StructTreeRoot")), printed.Paper.Id);
            Assert.True(catalog.ContainsKey(NameToken.Create("MarkInfo")), printed.Paper.Id);
            Assert.True(catalog.TryGet(NameToken.Create("Lang"), out StringToken language), printed.Paper.Id);
            Assert.Equal(printed.Paper.Language, language.Data.Split('-')[0]);
        }
    }
}
