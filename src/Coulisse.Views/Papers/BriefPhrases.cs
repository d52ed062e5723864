using System.Collections.Immutable;
using System.Globalization;

namespace Coulisse.Views.Papers;

/// <summary>Fixed phrases of a brief in one language. Only English was written by a person who speaks it; the others say so.</summary>
public sealed record BriefPhrases(
    string Language, string BriefFor, string Role, string BeThereAt, string SlotBegins, string From, string To, string What, string With, string InTheSlot, string Clock, string At, string Bring,
    string Always, string TellWhenLate, string TellWhenLateAnyone, string NumbersOnBody, string NoSubstitutes, string AllergenQuestions, string HandsWashed, string Marked, string StepsUntranslated)
{
    private static readonly ImmutableDictionary<string, BriefPhrases> All = new[]
    {
        new BriefPhrases("en", "Brief for", "Role", "Be there", "The slot begins", "From", "To", "What", "With", "In the slot", "Clock", "At", "Bring", "Always",
            "If you are more than a minute late, tell", "If you are more than a minute late, say so aloud.", "Numbers stand on the body of a container, never on its lid.", "Nothing is put in place of anything else, not even for a moment.", "Questions about allergens go to the chef; never guess.", "Wash hands at every change of task.", "", ""),
        new BriefPhrases("fr", "Consignes pour", "Rôle", "Sur place à", "Début de la démonstration", "De", "À", "Quoi", "Avec", "Pendant la démonstration", "Heure", "À", "Apporter", "Toujours",
            "En cas de retard de plus d’une minute, prévenir", "En cas de retard de plus d’une minute, le dire à voix haute.", "Les numéros sont sur le corps du récipient, jamais sur le couvercle.", "Ne rien remplacer par autre chose, même un instant.", "Les questions sur les allergènes vont au chef ; ne jamais deviner.", "Se laver les mains à chaque changement de tâche.", "Phrases traduites par une machine", "Les phrases fixes n’ont pas encore été relues. Les tâches ne sont pas traduites."),
        new BriefPhrases("de", "Anweisung für", "Aufgabe", "Da sein um", "Beginn der Vorführung", "Von", "Bis", "Was", "Mit", "Während der Vorführung", "Uhrzeit", "Bei", "Bringen:", "Immer",
            "Bei mehr als einer Minute Verspätung Bescheid geben:", "Bei mehr als einer Minute Verspätung laut sagen.", "Nummern stehen auf dem Behälter, nie auf dem Deckel.", "Nichts durch etwas anderes ersetzen, auch nicht kurz.", "Fragen zu Allergenen gehen an den Koch; nie raten.", "Bei jedem Wechsel der Arbeit Hände waschen.", "Maschinell übersetzt", "Die festen Sätze hat noch niemand gegengelesen. Die Arbeitsschritte sind nicht übersetzt."),
        new BriefPhrases("es", "Instrucciones para", "Función", "Estar a las", "Empieza la demostración", "De", "A", "Qué", "Con", "Durante la demostración", "Hora", "En", "Traer", "Siempre",
            "Si te retrasas más de un minuto, avisa a", "Si te retrasas más de un minuto, dilo en voz alta.", "Los números van en el recipiente, nunca en la tapa.", "No se sustituye nada por otra cosa, ni por un momento.", "Las preguntas sobre alérgenos son para el chef; nunca adivinar.", "Lavarse las manos en cada cambio de tarea.", "Traducido por una máquina", "Nadie ha revisado aún las frases fijas. Las tareas no están traducidas."),
        new BriefPhrases("it", "Istruzioni per", "Ruolo", "Presenza alle", "Inizio della dimostrazione", "Dalle", "Alle", "Che cosa", "Con", "Durante la dimostrazione", "Ora", "A", "Portare", "Sempre",
            "Se sei in ritardo di più di un minuto, avvisa", "Se sei in ritardo di più di un minuto, dillo ad alta voce.", "I numeri stanno sul corpo del contenitore, mai sul coperchio.", "Non sostituire nulla, nemmeno per un momento.", "Le domande sugli allergeni vanno allo chef; mai indovinare.", "Lavarsi le mani a ogni cambio di lavoro.", "Tradotto da una macchina", "Le frasi fisse non sono ancora state rilette. I compiti non sono tradotti."),
        new BriefPhrases("pl", "Instrukcja dla:", "Rola", "Być na miejscu", "Początek pokazu", "Od", "Do", "Co", "Z kim", "Podczas pokazu", "Godzina", "Czas", "Przynieść", "Zawsze",
            "Przy opóźnieniu ponad minutę powiedz:", "Przy opóźnieniu ponad minutę powiedz to głośno.", "Numery są na pojemniku, nigdy na pokrywce.", "Niczego nie zastępować, nawet na chwilę.", "Pytania o alergeny kieruj do szefa kuchni; nigdy nie zgaduj.", "Myj ręce przy każdej zmianie zadania.", "Przetłumaczone maszynowo", "Stałych zdań nikt jeszcze nie sprawdził. Zadania nie są przetłumaczone."),
        new BriefPhrases("ja", "担当者への指示:", "役割", "集合時刻", "実演開始", "開始", "終了", "作業", "一緒に", "実演中", "時刻", "経過", "持ってくる物", "いつも",
            "1分以上遅れるときは伝える相手:", "1分以上遅れるときは声に出して言う。", "番号は容器の側面にあり、ふたにはない。", "材料や器具を勝手に替えない。", "アレルゲンの質問はシェフへ。推測で答えない。", "作業が変わるたびに手を洗う。", "機械翻訳", "定型文は話者の確認前です。作業内容は翻訳されていません。"),
    }.ToImmutableDictionary(p => p.Language);

    private static readonly ImmutableArray<(string Word, string Code)> Names = [("english", "en"), ("french", "fr"), ("german", "de"), ("spanish", "es"), ("italian", "it"), ("polish", "pl"), ("japanese", "ja")];

    /// <summary>True when no speaker has read the phrases.</summary>
    public bool MachineMade => Marked.Length > 0;

    /// <summary>Culture of days.</summary>
    public CultureInfo Culture => CultureInfo.GetCultureInfo(Language == "en" ? "en-GB" : Language);

    /// <summary>Phrases for a language by code or English name; English for others.</summary>
    public static BriefPhrases For(string language)
    {
        string folded = language.Trim().ToLowerInvariant();
        string code = Names.FirstOrDefault(n => n.Word == folded).Code ?? folded.Split('-')[0];
        return All.GetValueOrDefault(code) ?? All["en"];
    }

    /// <summary>Languages held.</summary>
    public static IEnumerable<string> Languages => All.Keys.Order(StringComparer.Ordinal);
}
