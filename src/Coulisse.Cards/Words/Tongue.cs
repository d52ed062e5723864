namespace Coulisse.Cards.Words;

/// <summary>Tells the language of a text by its small words; English when nothing speaks.</summary>
internal static class Tongue
{
    private const int Enough = 20_000;
    // In the order in which the first of equals wins, where it is not English.
    private static readonly string[] Tongues = ["de", "en", "es", "fr", "it"];
    private const int German = 0;
    private const int English = 1;
    private static readonly SpanTable<int> Small = SmallWords();

    /// <summary>ISO 639-1 code.</summary>
    public static string Of(string text)
    {
        int[] score = new int[Tongues.Length];
        int limit = Math.Min(text.Length, Enough);
        int japanese = 0;
        for (int i = 0; i < limit;)
        {
            if (Places.IsJapanese(text[i]))
            {
                japanese++;
                i++;
                continue;
            }

            int start = i;
            while (i < limit && char.IsLetter(text[i]) && !Places.IsJapanese(text[i]))
            {
                i++;
            }

            if (i - start == 2 && start > 1 && text[start] == 'E' && text[start + 1] == 'L' && text[start - 1] == ' ' && char.IsAsciiDigit(text[start - 2]))
            {
                // "2 EL Mehl": the German spoon, not the Spanish article
                score[German]++;
            }
            else if (i > start && Small.TryGetValue(text.AsSpan(start, i - start), out int tongue))
            {
                score[tongue]++;
            }

            i = i == start ? i + 1 : i;
        }

        if (japanese > 1 && japanese * 8 > limit)
        {
            return "ja";
        }

        int best = English;
        for (int k = 0; k < score.Length; k++)
        {
            best = score[k] > score[best] ? k : best;
        }

        return Tongues[best];
    }

    private static SpanTable<int> SmallWords()
    {
        SpanTable<int> all = new(anyCase: true);
        Add("en", "the and or with until for of to in into from it make serves cup cups butter flour salt sugar water");
        Add("fr", "ajouter mélanger faire laisser infuser réduire passer ail oignon huile poivre œuf jaunes blancs chocolat le les du des et avec pour dans au aux une pendant jusqu beurre farine sel sucre eau œufs lait cuire crème");
        Add("de", "Std Stk lassen rühren schlagen kühlen geschält gehackt fein zimmerwarm passiert Zwiebel Zwiebeln Knoblauch Sahne Topfen Quark Grieß Ei Öl Pfeffer Brühe Teig Schale Saft von oder aus geröstet ruhen garen der und mit für im bei bis das den dem ein eine zum Mehl Zucker Salz Wasser Eier Minuten Stunden TL EL Msp Pck Prise Bund kneten backen Kartoffeln Dosen Tasse");
        Add("es", "añadir cocer hornear enfriar mezclar cebolla ajo aceite pimienta huevo yemas nata mantequilla taza kilo el los las y con para en del al una hasta harina azúcar sal agua huevos minutos leche cdta cdas");
        Add("it", "tuorli albumi fare unire montare cuocere raffreddare stampi teglia farcia impasto olio aglio cipolla sedano carota etti chilo n° il gli della di e per con nel q b una farina zucchero sale acqua uova minuti burro latte cucchiaio cucchiai forno");
        return all;

        void Add(string lang, string words)
        {
            int tongue = Array.IndexOf(Tongues, lang);
            foreach (string w in words.Split(' '))
            {
                all.At(w, w) = tongue;
            }
        }
    }
}
