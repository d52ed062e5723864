using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Coulisse.Cards;
using Coulisse.Kitchen.Planning.Tasks;

namespace Coulisse.Views.Papers;

/// <summary>What a plan says to a helper, in the helper's words: fixed phrases in their language, steps in the translation the chef stored, the rest as it is and marked. Half a sentence is never left in another language without its mark.</summary>
internal sealed partial class BriefWords(BriefPhrases say, IEnumerable<Dish> dishes, StepTranslations? stored)
{
    private static readonly ImmutableArray<(string Name, Regex Form)> Fixed =
    [
        ("meal", Meal()), ("receive", Receive()), ("clear", Clear()), ("twins", Twins()), ("switchOn", SwitchOn()), ("plateAhead", PlateAhead()), ("setOut", SetOut()), ("runThrough", RunThrough()),
        ("move", Move()), ("washJug", WashJug()), ("washBetween", WashBetween()), ("silent", Silent()), ("into", Into()),
        ("allergyRound", AllergyRound()), ("allergyOn", AllergyOn()), ("handOver", HandOver()),
        ("opening", Opening()), ("close", Close()), ("fill", Fill()), ("packOther", PackOther()), ("packBoxes", PackBoxes()), ("serveNamed", ServeNamed()), ("serve", Serve()), ("outUndone", OutUndone()), ("outAfter", OutAfter()),
    ];

    private static readonly ImmutableArray<(string Name, Regex Form)> Before =
    [
        ("forStage", ForStage()), ("putIn", PutIn()), ("takeOut", TakeOut()), ("startIt", StartIt()), ("leaveIn", LeaveIn()), ("atMinute", AtMinute()), ("whenStood", WhenStood()), ("lastMinutes", LastMinutes()),
    ];

    private readonly ImmutableArray<(string Text, string Language)> _steps = [.. dishes.SelectMany(d => d.Components.SelectMany(c => c.Steps).Select(s => (s.Text, d.Language)))];

    /// <summary>The words, and how many of the chef's sentences in them are in no language the helper reads.</summary>
    public readonly record struct Said(string Text, int Chef, int Untranslated);

    /// <summary>One text of the plan.</summary>
    public Said Of(string text)
    {
        string rest = text;
        string before = "";
        bool stage = ForStage().IsMatch(text);
        while (Before.Select(b => (b.Name, Match: b.Form.Match(rest))).FirstOrDefault(b => b.Match is { Success: true }) is { Match.Success: true } found)
        {
            before += Filled(found.Name, found.Match) + ": ";
            rest = rest[found.Match.Length..];
        }

        if (Fixed.Select(f => (f.Name, Match: f.Form.Match(rest))).FirstOrDefault(f => f.Match is { Success: true }) is { Match.Success: true } phrase)
        {
            // Kit that is named in words is the chef's word for it.
            before = phrase.Name == "setOut" ? "" : before;   // it says itself what it is for
            if (phrase.Name == "fill")
            {
                // What it is filled with are lines of the card: the chef's words.
                Said lines = Chef("", phrase.Match.Groups[1].Value);
                return lines with { Text = before + say.Say("fill", lines.Text) };
            }

            Said[] named = phrase.Name == "move" ? [.. phrase.Match.Groups[1].Value.Split(" and ").Select(k => Chef("", k))] : [];
            return named.Length == 0 ? new Said(before + Filled(phrase.Name, phrase.Match), 0, 0)
                : new Said(before + say.Say("move", string.Join(" + ", named.Select(n => n.Text)), phrase.Match.Groups[2].Value), named.Sum(n => n.Chef), named.Sum(n => n.Untranslated));
        }

        // In the middle of a step the first words of it say nothing of what is done then: the whole step does.
        string whole = AtMinute().IsMatch(text) || text.Contains(": at ", StringComparison.Ordinal) ? _steps.FirstOrDefault(s => s.Text.StartsWith(rest, StringComparison.Ordinal)).Text ?? rest : rest;
        return Chef(before, whole, stage);
    }

    /// <summary>What somebody does in a segment: sentences between semicolons, those of one form each by itself.</summary>
    public Said Sentences(string text)
    {
        List<string> parts = [];
        foreach (string part in text.Split("; "))
        {
            bool known = Fixed.Any(f => f.Form.IsMatch(part)) || Before.Any(b => b.Form.IsMatch(part));
            bool onto = parts.Count > 0 && !known && !Fixed.Any(f => f.Form.IsMatch(parts[^1]));
            if (onto)
            {
                parts[^1] += "; " + part;
            }
            else
            {
                parts.Add(part);
            }
        }

        Said[] said = [.. parts.Select(Of)];
        return new Said(string.Join("; ", said.Select(s => s.Text)), said.Sum(s => s.Chef), said.Sum(s => s.Untranslated));
    }

    private Said Chef(string before, string text, bool stage = false)
    {
        // A moment of a step bears the step's first words; its translation is the whole step's.
        (string Text, string Language) step = _steps.FirstOrDefault(s => s.Text == text);
        step = step.Text is null ? _steps.FirstOrDefault(s => s.Text.StartsWith(text, StringComparison.Ordinal)) : step;
        string language = step.Language ?? "en";
        if (language == say.Language)
        {
            return new Said(before + (stage ? HandsAside.Without(text) : text), 1, 0);
        }

        return (stored?.Find(step.Text ?? text) ?? stored?.Find(text)) is { } translated
            ? new Said(before + (stage ? HandsAside.Without(step.Text ?? text, translated) : translated), 1, 0)
            : new Said($"{before}{say["untranslatedMark"]} {(stage ? HandsAside.Without(text) : text)}", 1, 1);
    }

    private string Filled(string name, Match match) => string.Format(CultureInfo.InvariantCulture, say[name], [.. match.Groups.Values.Skip(1).Select(g => (object)g.Value)]);

    // What planning writes itself, as it writes it; a sentence that no longer fits is the chef's then, and marked.
    [GeneratedRegex("^meal$")]
    private static partial Regex Meal();

    [GeneratedRegex("^receive the order, check, log temperatures, store$")]
    private static partial Regex Receive();

    [GeneratedRegex("^clear down: what goes on in ovens and bath comes out at its time; left-overs weighed, to the cold or the bin$")]
    private static partial Regex Clear();

    [GeneratedRegex("^bring the (\\d+) twins to (.+), in order, by number$")]
    private static partial Regex Twins();

    [GeneratedRegex("^have (\\S+) at ([\\d.]+) °C for (.+): switch it on, or see that it holds$")]
    private static partial Regex SwitchOn();

    [GeneratedRegex("^plate (\\d+) plates? of (.+), diets first, back to the cold$")]
    private static partial Regex PlateAhead();

    [GeneratedRegex("^weigh and set out for the stage: (.+)$")]
    private static partial Regex SetOut();

    [GeneratedRegex("^move (.{1,200}) to (.{1,200}), test the circuits at full load$")]
    private static partial Regex Move();

    [GeneratedRegex("^run-through against the clock$")]
    private static partial Regex RunThrough();

    [GeneratedRegex("^WASH jug, lid and blade: taken apart, hot water and detergent, rinsed, dried$")]
    private static partial Regex WashJug();

    [GeneratedRegex("^wash jug, lid and blade, back before the next time it runs$")]
    private static partial Regex WashBetween();

    [GeneratedRegex("^no talking while the blender runs$")]
    private static partial Regex Silent();

    [GeneratedRegex("^into (\\S+) at ([\\d.]+) °C, timer (\\d+) min$")]
    private static partial Regex Into();

    [GeneratedRegex("^allergy round: ask at seats ([\\d, ]+) whether it is still so, tell the back before a plate leaves$")]
    private static partial Regex AllergyRound();

    [GeneratedRegex("^allergy round goes on$")]
    private static partial Regex AllergyOn();

    [GeneratedRegex("^hand over by name: seats ([\\d, ]+)$")]
    private static partial Regex HandOver();

    [GeneratedRegex("^for the stage: ")]
    private static partial Regex ForStage();

    [GeneratedRegex("^in: ")]
    private static partial Regex PutIn();

    [GeneratedRegex("^out: ")]
    private static partial Regex TakeOut();

    [GeneratedRegex("^welcome; what there is to learn; who may not eat what$")]
    private static partial Regex Opening();

    [GeneratedRegex("^what was learnt, once more; the handout; first question$")]
    private static partial Regex Close();

    [GeneratedRegex("^fill it before it goes in: (.+)$")]
    private static partial Regex Fill();

    [GeneratedRegex("^pack (\\d+) boxes: (.+); another box: seats ([\\d, ]+)$")]
    private static partial Regex PackOther();

    [GeneratedRegex("^pack (\\d+) boxes: (.+)$")]
    private static partial Regex PackBoxes();

    [GeneratedRegex("^serve (\\d+) plates to the seats; by name, before the others: seats ([\\d, ]+)$")]
    private static partial Regex ServeNamed();

    [GeneratedRegex("^serve (\\d+) plates to the seats$")]
    private static partial Regex Serve();

    [GeneratedRegex("^out of (\\S+): (.+), begun live, not done; weighed, to no guest$")]
    private static partial Regex OutUndone();

    [GeneratedRegex("^out of (\\S+): (.+), begun live; weighed, to no guest$")]
    private static partial Regex OutAfter();

    [GeneratedRegex("^" + TaskWords.StaysIn)]
    private static partial Regex LeaveIn();

    [GeneratedRegex("^start it: ")]
    private static partial Regex StartIt();

    [GeneratedRegex("^at (\\d+) min: ")]
    private static partial Regex AtMinute();

    [GeneratedRegex("^" + TaskWords.Stood)]
    private static partial Regex WhenStood();

    [GeneratedRegex("^from the last (\\d+) min: ")]
    private static partial Regex LastMinutes();
}
