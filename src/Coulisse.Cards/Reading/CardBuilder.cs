using System.Collections.Immutable;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Walks the lines of a card once and puts each where its shape says it belongs.</summary>
internal sealed class CardBuilder(string text)
{
    private const int MostLinked = 200;
    private readonly string _lang = Tongue.Of(text);
    private readonly List<Component> _components = [];
    private readonly List<IngredientLine> _lines = [];
    private readonly List<Step> _steps = [];
    private readonly List<Note> _componentNotes = [];
    private readonly List<Note> _notes = [];
    private readonly List<CardYield> _yields = [];
    private readonly List<CardYield> _makes = [];
    private readonly List<Keeping> _keeps = [];
    private readonly List<Vessel> _vessels = [];
    private readonly List<PlatePart> _plate = [];
    private readonly List<Doubt> _doubts = [];
    private string? _title;
    private string? _name;
    private Span _span;
    private string? _group;
    private string _mode = "";
    private double? _oven;
    private double? _dishOven;

    /// <summary>The dish.</summary>
    public Dish Build()
    {
        int start = 0;
        int number = 0;
        while (start < text.Length)
        {
            int end = text.IndexOf('\n', start);
            end = end < 0 ? text.Length : end;
            number++;
            int stop = end > start && text[end - 1] == '\r' ? end - 1 : end;
            if (stop > start)
            {
                Line(text[start..stop], new Span(start, stop - start, number));
            }

            start = end + 1;
        }

        Close();
        // Linking looks at every pair of components: beyond what any dish has it is left out, so that time stays linear.
        bool link = _components.Count <= MostLinked;
        ImmutableArray<Component> components = [.. _components.Select(c => Linking.Uses(link ? Linking.Components(c, _components) : c))];
        return new Dish
        {
            Title = _title ?? "Untitled", Language = _lang, Yields = [.. _yields], Plate = [.. _plate.Select(p => p with { Component = Linking.ComponentFor(p.Text, components) })],
            Components = components, Notes = [.. _notes], Doubts = [.. _doubts.OrderByDescending(d => d.Weight).ThenBy(d => d.Line)],
        };
    }

    private void Line(string raw, Span span)
    {
        string s = raw.Trim();
        if (s.Length == 0 || s is "---" or "***" or "…")
        {
            return;
        }

        if (s[0] == '#')
        {
            int level = s.TakeWhile(c => c == '#').Count();
            Heading(Folding.Line(s.AsSpan(level)).Trim(' ', '#', ':'), level, span);
            return;
        }

        if (s.StartsWith("**", StringComparison.Ordinal) && s.TrimEnd(':').EndsWith("**", StringComparison.Ordinal) && s.Length < 80)
        {
            Heading(Folding.Line(s).Trim(' ', ':'), 2, span);
            return;
        }

        bool numbered = Marks.ListNumber(s, 0) > 0;
        bool bullet = s.Length > 1 && s[0] is '-' or '*' or '•' or '+' && (s[1] == ' ' || char.IsAsciiDigit(s[1]));
        if (numbered && _mode != "notes" || bullet && _mode == "method")
        {
            AddStep(s, span);
        }
        else if (bullet && _mode != "notes")
        {
            AddLine(s, span);
        }
        else if (_title is null && _name is null)
        {
            _title = Folding.Line(s);
        }
        else
        {
            Paragraph(Folding.Line(s), span);
        }
    }

    private void Heading(string name, int level, Span span)
    {
        if (level == 1 && _title is null)
        {
            _title = name;
            return;
        }

        string key = Folding.Key(name);
        _group = null;
        if (Lexicon.Word("ingredients", key, _lang) is not null)
        {
            _mode = "ingredients";
        }
        else if (Lexicon.Word("method", key, _lang) is not null)
        {
            _mode = "method";
        }
        else if (Lexicon.Word("notes", key, _lang) is not null)
        {
            Close();
            _mode = "notes";
        }
        else
        {
            Close();
            _mode = "";
            _name = name;
            _span = span;
        }
    }

    private void AddLine(string s, Span span)
    {
        IngredientLine line = LineReader.Read(s, _lang, span, _doubts);
        if (line.Kind == LineKind.Heading)
        {
            _group = line.Text.TrimEnd(':', ' ');
        }

        _lines.Add(line with { Group = line.Kind == LineKind.Heading ? null : _group });
    }

    private void AddStep(string s, Span span)
    {
        Step step = StepReader.Read(s, _lang, span, _name ?? "", _steps.Count + 1, _oven ?? _dishOven);
        if (step.Temperatures.LastOrDefault(t => t.Of == TemperatureOf.Oven && !t.Inherited) is { } t)
        {
            _oven = t.Celsius;
        }

        _steps.Add(step);
    }

    private void Paragraph(string s, Span span)
    {
        if (_mode == "notes")
        {
            _notes.Add(new Note(s, span));
            return;
        }

        if (s[^1] == ':' && s.Length < 80)
        {
            _group = s.TrimEnd(':');
            return;
        }

        if (_mode == "ingredients" || (_name is not null && _steps.Count == 0 && Amounts.At(s, 0, _lang) is { Unit: not null }))
        {
            AddLine(s, span);
            return;
        }

        if (_mode == "method")
        {
            AddStep(s, span);
            return;
        }

        bool inComponent = _name is not null;
        (inComponent ? _componentNotes : _notes).Add(new Note(s, span));
        Statements.Read(s, span, _lang, inComponent ? _makes : _yields, _keeps, _vessels, _plate);
        if (!inComponent && Heat.In(s, _lang, null, []).FirstOrDefault(t => t.Of == TemperatureOf.Oven) is { } oven)
        {
            _dishOven = oven.Celsius;
        }
    }

    private void Close()
    {
        if (_name is null && _lines.Count == 0 && _steps.Count == 0)
        {
            return;
        }

        string name = _name ?? "";
        int space = name.IndexOf(' ');
        string head = space > 0 ? name[..space] : "";
        bool code = head.Length is > 1 and < 5 && char.IsAsciiLetterUpper(head[0]) && char.IsAsciiDigit(head[1]);
        _components.Add(new Component
        {
            Name = name, Code = code ? head : null, Span = _span, Makes = [.. _makes], Keeps = [.. _keeps], Vessels = [.. _vessels],
            Ingredients = [.. _lines], Steps = [.. _steps], Notes = [.. _componentNotes],
            IsAssembly = _lines.Count == 0 && Lexicon.Word("assembly", Folding.Key(name), _lang) is not null,
        });
        _name = null;
        _group = null;
        _oven = null;
        _lines.Clear();
        _steps.Clear();
        _componentNotes.Clear();
        _makes.Clear();
        _keeps.Clear();
        _vessels.Clear();
    }
}
