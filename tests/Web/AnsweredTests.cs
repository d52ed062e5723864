using Coulisse.Cards;
using Coulisse.Views.Web;
using Coulisse.Web.Desk;
using Coulisse.Web.Hosting;

namespace Coulisse.Web.Tests;

/// <summary>Every question in the margin has answers to touch, and a touched answer settles it: it is not asked again.</summary>
public sealed class AnsweredTests
{
    private static readonly string[] Doubtful =
    [
        "# A\n\n- 2 sticks butter\n- 1 cup flour\n- 3 large eggs\n- a knob of ginger\n",
        "# B\n\n- 1 tin tomatoes\n- 2 glasses milk\n- salt\n- 1 bunch dill\n",
        "# C\n\n- 1 pint cream\n- 200 g or 250 g sugar\n- 4 leaves gelatine\n",
        "# D\n\nServes 4 to 6.\n\n- 100 butter\n- 1½ cups packed brown sugar\n- juice of 2 lemons\n\n1. Bake at 180.\n",
        "# E\n\n- 1 Becher Sahne\n- 2 EL Öl\n- 1 Päckchen Vanillezucker\n",
    ];

    public static TheoryData<string> Cards
    {
        get
        {
            TheoryData<string> all = [];
            foreach (string card in EmbeddedFiles.DemoFiles().Where(f => f.StartsWith("cards/", StringComparison.Ordinal)).Select(f => EmbeddedFiles.Demo(f)!.ReplaceLineEndings("\n")).Concat(Doubtful))
            {
                all.Add(card);
            }

            return all;
        }
    }

    private static (int Line, string What, CandidateView[] Answers, string Words)[] Asked(string card, params string[] left)
    {
        MarginsView view = Assert.IsType<Parsed<(Dish Dish, MarginsView View)>.Ok>(CardDesk.Margins(card, "", "", "au", left: left)).Value.View;
        return [.. view.Lines.SelectMany(l => l.Remarks.Where(r => r.Kind == "question").Select(r => (l.Line, r.What, r.Candidates.ToArray(), r.Asked))), .. view.Whole.Where(r => r.Kind == "question").Select(r => (0, r.What, r.Candidates.ToArray(), r.Asked))];
    }

    [Theory]
    [MemberData(nameof(Cards))]
    public void A_touched_answer_settles_its_question(string card)
    {
        List<string> wrong = [];
        foreach ((int line, string what, CandidateView[] answers, string words) in Asked(card))
        {
            if (answers.Length < 2)
            {
                wrong.Add($"line {line}: “{what}” has {answers.Length} answers");
            }

            foreach (CandidateView answer in answers)
            {
                // a figure is the chef's to write; any will do here
                string? written = Answering.Write(card, line, answer.Plain.Replace("…", "123", StringComparison.Ordinal), words);
                bool asked = written is not null && written == card ? Asked(card, what).Any(q => q.What == what) : written is null || Asked(written).Any(q => q.Line == line && q.What == what);
                if (asked)
                {
                    wrong.Add($"line {line}: “{what}” is asked again after “{answer.Plain}”: {written?.Split('\n').ElementAtOrDefault(line - 1) ?? "nothing was written"}");
                }

                if (answer.Plain.Contains('…') && Asked(written!).Any(q => q.Line == line && q.What.StartsWith("What does", StringComparison.Ordinal)))
                {
                    wrong.Add($"line {line}: a weight is asked for again after “{written!.Split('\n')[line - 1]}”");
                }
            }
        }

        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    [Fact]
    public void The_cards_of_this_test_do_ask() => Assert.True(Doubtful.Sum(c => Asked(c).Length) >= 5);
}
