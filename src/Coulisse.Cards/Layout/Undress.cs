namespace Coulisse.Cards.Layout;

/// <summary>What the paper itself puts around the lines: boxes, stamps of messages, tags, outlines, arrows, a value to a line. Each is taken off before the layout is read; what a line loses is kept as a remark.</summary>
internal static class Undress
{
    // A longer text is a book, and no paper has one dress from its first page to its last.
    private const int MostLines = 20_000;

    /// <summary>The lines without that dress, what was taken off and says something, and whether they are the messages of a chat.</summary>
    public static (List<RawLine> Lines, List<RawLine> Asides, bool Chat) Of(List<RawLine> lines, string lang)
    {
        List<RawLine> asides = [];
        lines = Spreadsheet.Told(lines, asides, lang);
        lines = JapaneseRunning.Cut(Delimited.Barred(DecimalOutline.Cleared(lines, lang), lang), lang);
        if (lines.Count is < 3 or > MostLines)
        {
            return (lines, asides, false);
        }

        lines = PageBreaks.Off(SideMethod.Off(lines, lang), asides, lang);
        lines = WikiMarks.Off(lines);
        lines = HollowBullets.Off(lines, lang);
        lines = Emblems.Off(lines);
        lines = Frames.Off(lines);
        lines = Stamps.Off(lines, asides, out bool chat);
        lines = Tags.Off(lines, lang);
        lines = Scattered.Joined(lines, lang);
        lines = NumberedWork.Dotted(Outline.Off(lines, lang), lang);
        return (Chains.Cut(lines, lang), asides, chat);
    }
}
