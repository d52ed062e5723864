using System.IO.Compression;
using System.Text.Json;

namespace Coulisse.Store;

/// <summary>How an export writes texts as values for machines. The rooms that know the forms give it; the store only keeps texts.</summary>
/// <param name="Schemas">JSON Schemas by name.</param>
/// <param name="SchemaOf">Name of the schema of a kind of document; null for kinds that are tables or texts only.</param>
/// <param name="Json">The text of a document of that kind as JSON; null when it cannot be read.</param>
public sealed record ArchiveForms(IReadOnlyDictionary<string, string> Schemas, Func<string, string?> SchemaOf, Func<string, string, string?> Json)
{
    /// <summary>Writes one file a kind, <c>data/cards.json</c>, and the schemas they follow.</summary>
    internal async Task WriteAsync(KitchenStore store, ZipArchive archive, CancellationToken cancel)
    {
        foreach ((string name, string schema) in Schemas.OrderBy(s => s.Key, StringComparer.Ordinal))
        {
            await using StreamWriter writer = new(await archive.CreateEntry($"schemas/{name}.json", CompressionLevel.Fastest).OpenAsync(cancel).ConfigureAwait(false));
            await writer.WriteAsync(schema).ConfigureAwait(false);
        }

        foreach (string kind in DocumentKind.All)
        {
            if (SchemaOf(kind) is { } schema)
            {
                await WriteAsync(store, archive, kind, schema, cancel).ConfigureAwait(false);
            }
        }
    }

    private async Task WriteAsync(KitchenStore store, ZipArchive archive, string kind, string schema, CancellationToken cancel)
    {
        await using Stream stream = await archive.CreateEntry($"data/{kind}s.json", CompressionLevel.Fastest).OpenAsync(cancel).ConfigureAwait(false);
        await using Utf8JsonWriter json = new(stream, new JsonWriterOptions { Indented = true });
        json.WriteStartObject();
        json.WriteString("schema", $"schemas/{schema}.json");
        json.WriteStartArray("documents");
        foreach (DocumentHead head in await store.DocumentsAsync(kind, int.MaxValue, cancel).ConfigureAwait(false))
        {
            Document document = (await store.OpenDocumentAsync(head.Id, cancel).ConfigureAwait(false))!;
            // a trial is kept as it was read, with what was fitted to its curves
            string? value = kind == DocumentKind.Trial && await store.TrialAsync(head.Id, cancel).ConfigureAwait(false) is { } trial ? trial.Json : Json(kind, document.Text);
            json.WriteStartObject();
            json.WriteString("id", head.Id);
            json.WriteString("title", head.Title);
            json.WriteNumber("version", document.Version);
            json.WritePropertyName("value");
            if (value is null)
            {
                json.WriteNullValue();
            }
            else
            {
                json.WriteRawValue(value);
            }

            json.WriteEndObject();
            await json.FlushAsync(cancel).ConfigureAwait(false);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }
}
