using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"二十分蒸らす", "十二、三分炊く", "五、六時間おく": Japanese times in written numerals. "八分立て", "五分粥", "三分の一" and "十分に" ("enough") are none.</summary>
internal static class KanjiTimes
{
    /// <summary>What a time in written numerals goes on with, where its unit could also be a share of ten.</summary>
    private static readonly string[] Behind = ["間", "ほど", "程", "くらい", "ぐらい", "位", "以上", "以内", "弱", "強", "、", "。", "煮", "焼", "蒸", "炊", "ゆ", "茹", "お", "置", "加", "混", "ね", "寝", "休", "浸", "漬", "揚", "炒", "温", "冷", "さ", "水", "た", "経", "し", "と", "は", "半", "もど", "戻"];

    /// <summary>How often, and not how long.</summary>
    private static readonly string[] Often = ["おきに", "ごとに", "毎に", "前", "目"];

    /// <summary>Shares of ten and names of foods behind such a figure.</summary>
    private static readonly string[] Shares = ["通り", "どおり", "通", "立て", "立", "粥", "がゆ", "搗", "づ", "目", "の", "割", "咲", "丈", "袖", "量", "身", "が"];

    /// <summary>The stretch at a place; null where none is written there.</summary>
    public static (double Min, double Max, int Start, int End)? At(string s, int at)
    {
        if (at > 0 && (KanjiNumbers.Is(s[at - 1]) || char.IsAsciiDigit(s[at - 1]) || s[at - 1] == '第') || KanjiNumbers.At(s, at, out int end) is not { } low)
        {
            return null;
        }

        double high = low;
        bool apart = end < s.Length && s[end] is '、' or '，' or '・' or '~' or '-';
        if (apart && end + 1 < s.Length && KanjiNumbers.At(s, end + 1, out int upperEnd) is { } upper)
        {
            // "十二、三分" leaves out the ten of the upper end
            high = upper > low ? upper : upper < 10 && low > 10 ? (Math.Floor(low / 10) * 10) + upper : 0;
            // "二、三十分" leaves it out of the lower
            low = low < 9 && upper == (low + 1) * 10 ? low * 10 : low;
            end = upperEnd;
        }
        else if (end - at == 2 && low >= 10 && s[at] != '十' && low % 10 == Math.Floor(low / 10) + 1)
        {
            // "二三分": two to three
            (low, high) = (Math.Floor(low / 10), low % 10);
        }

        if (high < low || TimeWords.Unit(s, end, out int behind) is not { } unit)
        {
            return null;
        }

        if (Places.Begins(s.AsSpan(behind), Often))
        {
            return null;
        }

        // Shares are of ten: "十五分" can be nothing but minutes.
        bool plain = s[behind - 1] == '間' || unit is 60 && s[end] == '時';
        if (unit >= 1440 && !plain || !plain && high <= 10 && (low == 10 && high == 10 && !Places.Begins(s.AsSpan(behind), ["間", "ほど", "程", "くらい", "ぐらい", "位", "以上", "以内", "弱", "強"]) || Places.Begins(s.AsSpan(behind), Shares) || !Places.Begins(s.AsSpan(behind), Behind)))
        {
            return null;
        }

        double half = behind < s.Length && s[behind] == '半' ? unit / 2 : 0;
        return ((low * unit) + half, (high * unit) + half, at, half > 0 ? behind + 1 : behind);
    }
}
