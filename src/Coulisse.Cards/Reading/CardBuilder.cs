using System.Collections.Immutable;
using Coulisse.Cards.Layout;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Walks the lines of a card once and puts each where its shape says it belongs.</summary>
internal sealed class CardBuilder(string text, string lang)
{
    /// <summary>A card of more parts is a book, whose sentences tell of what stands over them.</summary>
    private const int MostAsked = 40;
    private readonly string _lang = lang;
    private readonly FoodIds _ids = new(lang);
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
    private readonly List<Variant> _variants = [];
    private readonly Footnotes _footnotes = new();
    private readonly List<IngredientLine> _variantLines = [];
    private Variant? _variant;
    private string? _title;
    private string? _name;
    private string? _small;
    private Span _span;
    private string? _group;
    private string? _letter;
    private string? _under;
    private Span _underSpan;
    private bool _underTold;
    private Span _groupSpan;
    private bool _groupTaken = true;
    private string _mode = "";
    private StepTemperature? _oven;
    private StepTemperature? _dishOven;
    private StepTemperature? _heat;

    /// <summary>The dish.</summary>
    public Dish Build()
    {
        List<Piece> pieces = Shaped(out Remark[] remarks);
        Ahead ahead = new(pieces, _lang, _ids);
        for (int i = 0; i < pieces.Count; i++)
        {
            Piece piece = pieces[i];
            (object? read, Doubt[] asked) = ahead.Of(i);
            _doubts.AddRange(asked);
            // What was read is let go: of a text of 5 MB it is a third of all that is held.
            pieces[i] = default;
            switch (piece.Kind)
            {
                case PieceKind.Heading: Heading(piece.Text, piece.Level, piece.Span); break;
                case PieceKind.Variant: Other(piece.Text, piece.Span); break;
                case PieceKind.Item: AddLine(piece.Text, piece.Span, (IngredientLine?)read); break;
                case PieceKind.Step: AddStep(piece.Text, piece.Span, (Step?)read); break;
                default: Paragraph(Folding.Line(piece.Text), piece.Span); break;
            }
        }

        Close();
        if (_yields.Count == 0 && _components.TrueForAll(c => c.Makes.IsEmpty) && CutYields.Of(_components, _lang) is { } cut)
        {
            _yields.Add(cut);
        }

        Dish dish = new()
        {
            Title = _title ?? "Untitled", Language = _lang, Yields = [.. _yields], Components = [.. _components], Variants = [.. _variants], Notes = [.. _notes],
            Unread = [.. _components.SelectMany(c => c.Ingredients).Where(l => l.Kind == LineKind.Ingredient && l.Foods.All(f => f.Food.Length == 0)).Select(l => new Note(l.Text, l.Span))],
            Remarks = [.. remarks, .. Checks.TableSums.Of(text)],
        };
        return Finishing.Of(dish, _plate, _footnotes, _doubts);
    }

    private List<Piece> Shaped(out Remark[] remarks)
    {
        List<RawLine> whole = CardLines.Of(text);
        remarks = [.. Long(whole)];
        (List<RawLine> lines, List<RawLine> asides, bool chat) = Undress.Of(whole, _lang);
        List<Piece> pieces = new Shaper(BrokenLines.Joined(NumberedWraps.Joined(WrappedProse.Joined(lines, _lang), _lang), _lang), _lang).Shape();
        pieces = chat ? ChatTold.Read(pieces, _lang) : pieces;
        foreach (RawLine a in asides)
        {
            pieces.Add(new Piece(PieceKind.Paragraph, a.Text, a.Span));
        }

        return pieces;
    }

    /// <summary>Lines so long that they were read in stretches.</summary>
    private static IEnumerable<Remark> Long(List<RawLine> lines)
    {
        for (int i = 1; i < lines.Count; i++)
        {
            if (lines[i].Span.Line == lines[i - 1].Span.Line && (i < 2 || lines[i - 2].Span.Line != lines[i].Span.Line))
            {
                yield return new Remark(lines[i].Span.Line, "long line", System.FormattableString.Invariant($"Line {lines[i].Span.Line} is longer than {CardLines.Longest} characters and was read in stretches."));
            }
        }
    }

    /// <summary>A label that no line followed is a sentence of the part.</summary>
    private void Loose()
    {
        if (_group is { } left && !_groupTaken)
        {
            (_name is null ? _notes : _componentNotes).Add(new Note(left + ":", _groupSpan));
        }
    }

    /// <summary>A day under which no step stands is a sentence of the part.</summary>
    private void Idle()
    {
        if (_under is { } day && !_underTold)
        {
            (_name is null ? _notes : _componentNotes).Add(new Note($"No step stands under {day}.", _underSpan));
        }

        _under = null;
        _underTold = false;
    }

    private void Heading(string name, int level, Span span)
    {
        if (level == 1 && _title is null)
        {
            _title = name;
            if (YieldClauses.OfName(name, span, _lang) is { } made)
            {
                int told = _yields.Count;
                _yields.Add(made);
                YieldClauses.Add(name, span, _lang, _yields, told, named: true);
            }

            return;
        }

        if (_lang == "ja" && JapaneseYields.Only(name))
        {
            // "【4〜5人前】"
            Paragraph(name, span);
            return;
        }

        Loose();
        _group = null;
        switch (Sections.Of(name, _lang))
        {
            case "notes":
                Close();
                _mode = "notes";
                if (Sections.Rest(name, _lang).Trim(' ', ')', ':') is { Length: > 0 } said)
                {
                    _notes.Add(new Note(said, span));
                }

                break;
            case { } section:
                if (Sections.Rest(name, _lang).Trim(' ', ')', '.', ':') is { Length: > 0 } inside)
                {
                    // "Ingredients (serves 4)": what stands behind the word is a sentence of its own.
                    Paragraph(inside, span);
                    if (_name is null && _yields.Count == 0 && YieldWords.Made(inside.TrimStart('('), _lang) is { } pieces)
                    {
                        // "Zutaten (ca. 60 Stück)"
                        _yields.Add(new CardYield(pieces.Amount.Min, pieces.Unit, inside, span) { AmountMax = pieces.Amount.Max });
                    }
                }

                _mode = section;
                Idle();
                _under = Sections.Word(name, _lang) is var day && Sections.IsDay(day) ? day : null;
                _underSpan = span;
                break;
            default:
                Close();
                _mode = "";
                _name = name;
                _small = null;
                _span = span;
                if (YieldWords.OfTitle(name, span, _lang) is { } parted)
                {
                    _makes.Add(parted);
                }

                break;
        }
    }

    /// <summary>"The same for two 14 cm tarts": from here the lines are another size of the list before.</summary>
    private void Other(string name, Span span)
    {
        EndOther();
        _variant = new Variant(_name ?? "", name, [], span);
    }

    private void EndOther()
    {
        if (_variant is { } v)
        {
            _variants.Add(v with { Ingredients = [.. _variantLines] });
            _variant = null;
            _variantLines.Clear();
        }
    }

    private void AddLine(string s, Span span, IngredientLine? ahead)
    {
        string bare = Footnotes.Strip(s, span.Line, _footnotes);
        IngredientLine line = ahead ?? LineReader.Read(bare, _lang, span, _doubts, _ids);
        if (line.Text.Length == 0)
        {
            // A mark with nothing behind it.
            return;
        }

        if (line.Kind == LineKind.Heading)
        {
            Loose();
            _group = line.Text.TrimmedEnd(": ");
        }

        _groupTaken = true;

        _letter = _lang == "ja" ? JapaneseGroups.Group(bare, _letter) : null;
        string? group = _group ?? _letter;

        (_variant is null ? _lines : _variantLines).Add(group is null || line.Kind == LineKind.Heading ? line : line with { Group = group });
    }

    private void AddStep(string s, Span span, Step? ahead)
    {
        EndOther();
        if (ahead is { Text.Length: 0 } || ahead is null && Marks.Strip(Folding.Line(s)).Length == 0)
        {
            // "4." with nothing behind it.
            return;
        }

        _small ??= Folding.Lower(_name ?? "");
        Step step = StepReader.Placed(ahead ?? StepReader.Alone(s, _lang, span), _small, _steps.Count + 1, _oven ?? _dishOven, _heat);
        if (TotalTimes.Whole(step))
        {
            (_name is null ? _notes : _componentNotes).Add(new Note(step.Text, span));
            return;
        }

        StepTemperature[] set = step.Temperatures.IsEmpty || Airs.Steams(step) ? [] : [.. step.Temperatures.Where(t => t.Of == TemperatureOf.Oven && !t.Inherited)];
        if (set.Length > 0)
        {
            // "180 °C, fan 160 °C": what follows inherits the figure that stands for any oven.
            bool fan = set.Length > 1 && set[^1].Fan == true && set[^2].Fan != true && set[^2].Celsius - set[^1].Celsius is >= 5 and <= 30;
            _oven = fan ? set[^2] : set[^1];
        }

        foreach (StepTemperature heat in step.Temperatures)
        {
            _heat = SameHeat.Lasts(heat) ? heat : _heat;
        }

        if (_steps.Count == 0 && _components.Count == 0 && _yields.Count == 0 && _title is null && OpeningYields.Of(step.Text, span, _lang) is { } told)
        {
            _yields.Add(told);
        }

        _underTold |= _under is not null;
        _steps.Add(_under is null ? step : step with { Under = _under });
    }

    private void Paragraph(string s, Span span)
    {
        if (_mode == "notes")
        {
            _notes.Add(new Note(s, span));
            return;
        }

        if (s.Length == 0 || Footnotes.Take(s, _footnotes))
        {
            return;
        }

        if (s[^1] == ':' && s.Length is > 1 and < 80 && s[0] != ':' && YieldWords.In(s, span, _lang) is null)
        {
            Loose();
            _group = s.TrimEnd(':');
            _groupSpan = span;
            _groupTaken = false;
            return;
        }

        bool inComponent = _name is not null;
        (inComponent ? _componentNotes : _notes).Add(new Note(s, span));
        if (!inComponent && _yields.Count == 0 && _title is not null && _lines.Count == 0 && TitleCount.Of(_title, s, span, _lang) is { } made)
        {
            _yields.Add(made);
        }

        int before = _makes.Count;
        int kept = _keeps.Count;
        Statements.Read(s, span, _lang, inComponent ? _makes : _yields, _keeps, _vessels, _plate);
        if (!inComponent && _yields.Count == 0 && _lines.Count == 0 && s[^1] == ')' && s.Length < 80 && s.LastIndexOf('(') is > 3 and var open && Clock.At(s, open + 1, _lang) is null && YieldWords.OfTitle(s, span, _lang) is { } boxed)
        {
            // "Voilà ma recette (24 madeleines)"
            _yields.Add(boxed);
        }

        if (inComponent && _makes.Count > before && (_makes.Skip(before).Any(OfAnother) || Dishes(s, before)))
        {
            // "Makes 14 scones and 4 jars of jam", "Serves 12." under the last method tell of the dish.
            _yields.AddRange(_makes.Skip(before));
            _makes.RemoveRange(before, _makes.Count - before);
            if (_keeps.Count == kept)
            {
                _notes.Add(_componentNotes[^1]);
                _componentNotes.RemoveAt(_componentNotes.Count - 1);
            }
        }

        if (!inComponent && Heat.In(s, _lang, null, []).FirstOrDefault(t => t.Of == TemperatureOf.Oven) is { } oven)
        {
            _dishOven = oven;
        }
    }

    /// <summary>True for a count of what another part is called by.</summary>
    private bool OfAnother(CardYield made) => made.Unit.Length > 3 && made.Unit is not ("pieces" or "portions") && !Places.HasAny(_name!, made.Unit) && _components.Take(MostAsked).Any(c => Places.HasAny(c.Name, made.Unit));

    /// <summary>Guests told behind the work of a part that the sentence does not name, or behind the total of its list, are those of the dish, and so are pieces where the work of all parts stands behind the last list.</summary>
    private bool Dishes(string s, int before) => _yields.Count == 0 && (_steps.Count > 0 || _lines is [.., { Kind: LineKind.Total }]) && _makes.Skip(before).All(m => m.Unit == "portions" || m.Unit is not ("g" or "kg" or "ml" or "cl" or "dl" or "l") && _components.TrueForAll(c => c.Steps.IsEmpty && c.Makes.IsEmpty)) && !s.Contains(_name!, StringComparison.OrdinalIgnoreCase);

    private void Close()
    {
        EndOther();
        Loose();
        Idle();
        _groupTaken = true;
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
            Name = name, Code = code ? head : null, Span = _span, Makes = [.. _makes], Keeps = _keeps.Count > 0 ? [.. _keeps] : LikeAnother(), Vessels = [.. _vessels],
            Ingredients = [.. _lines], Steps = [.. _steps], Notes = [.. _componentNotes],
            IsAssembly = _lines.Count == 0 && Lexicon.Word("assembly", Folding.Key(name), _lang) is not null,
        });
        _name = null;
        _small = null;
        _group = null;
        _letter = null;
        _oven = null;
        _lines.Clear();
        _steps.Clear();
        _componentNotes.Clear();
        _makes.Clear();
        _keeps.Clear();
        _vessels.Clear();
    }

    // "Keeps like C1": what that part says, under this part's own line; a part that is not above it says nothing.
    private ImmutableArray<Keeping> LikeAnother()
    {
        foreach (Note note in _componentNotes)
        {
            foreach (string words in (ReadOnlySpan<string>)["keeps like ", "keeps as "])
            {
                int at = note.Text.IndexOf(words, StringComparison.OrdinalIgnoreCase);
                string rest = at < 0 ? "" : note.Text[(at + words.Length)..];
                bool Named(string? name) => name is { Length: > 0 } && rest.StartsWith(name, StringComparison.OrdinalIgnoreCase) && (rest.Length == name.Length || !char.IsLetterOrDigit(rest[name.Length]));
                if (at >= 0 && _components.FirstOrDefault(c => Named(c.Code) || Named(c.Name)) is { } other)
                {
                    return [.. other.Keeps.Select(k => k with { Span = note.Span })];
                }
            }
        }

        return [];
    }
}
