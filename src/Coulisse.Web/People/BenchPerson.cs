using Coulisse.Store;

namespace Coulisse.Web.People;

/// <summary>A person as the sign-in library handles one: it changes pieces, then has the whole written.</summary>
internal sealed class BenchPerson(KeptPerson kept)
{
    public KeptPerson Kept { get; private set; } = kept;

    public void Change(Func<KeptPerson, KeptPerson> change) => Kept = change(Kept);
}
