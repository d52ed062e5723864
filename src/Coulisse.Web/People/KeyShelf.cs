using System.Xml.Linq;
using Coulisse.Store;
using Microsoft.AspNetCore.DataProtection.Repositories;

namespace Coulisse.Web.People;

/// <summary>Keys of the cookies, kept in the store so that every process of a kitchen reads every process's cookies.</summary>
internal sealed class KeyShelf(KitchenStore store) : IXmlRepository
{
    private const string Beginning = "protection.";

    // the library asks only synchronously, at start and when keys turn over
    public IReadOnlyCollection<XElement> GetAllElements()
        => [.. Task.Run(() => store.SettingsAsync(Beginning)).GetAwaiter().GetResult().Select(s => XElement.Parse(s.Value))];

    public void StoreElement(XElement element, string friendlyName)
        => Task.Run(() => store.SetAsync(Beginning + friendlyName, element.ToString(SaveOptions.DisableFormatting))).GetAwaiter().GetResult();
}
