namespace Coulisse.Cards.Layout;

/// <summary>"nehme ich 4 Rouladen", "je prends 2 boudins", "you need 6 sardines": what is counted right behind a verb of taking is a food, whether everybody knows it or not.</summary>
internal static class Taken
{
    private static readonly string[] Verbs = ["take", "use", "need", "you want", "je prends", "je mets", "on prend", "prenez", "prendre", "il faut", "il te faut", "il vous faut", "nehme ich", "nehmen wir", "ich nehme", "wir nehmen", "nimmt man", "man nimmt", "brauche ich", "ich brauche", "braucht man", "man braucht", "tomo", "cojo", "uso", "pongo", "se toman", "hacen falta", "prendo", "metto", "usiamo", "ci vogliono", "servono"];

    /// <summary>True where such a verb stands right before a place.</summary>
    public static bool Before(string s, int at) => Words.Places.EndsIn(s.AsSpan(0, at).TrimEnd(), Verbs);
}
