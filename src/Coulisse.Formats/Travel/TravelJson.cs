using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Schema;
using System.Text.Json.Serialization;
using NodaTime;
using NodaTime.Serialization.SystemTextJson;

namespace Coulisse.Formats.Travel;

/// <summary>The values that travel, as JSON and back, and the schema of each.</summary>
public static class TravelJson
{
    /// <summary>Version of the JSON form; raised when a reader of the old form would be misled.</summary>
    public const int Schema = 1;

    private static readonly JsonSerializerOptions Options = Make();

    /// <summary>Writes a travelling value.</summary>
    public static string Write<T>(T value) => JsonSerializer.Serialize(value, Options);

    /// <summary>Reads one back.</summary>
    /// <exception cref="FormatException">The text is not that value; the message says where.</exception>
    public static T Read<T>(string json)
    {
        try
        {
            return JsonSerializer.Deserialize<T>(json, Options) ?? throw new FormatException("The document is empty.");
        }
        catch (JsonException e)
        {
            throw new FormatException($"The document does not read as {typeof(T).Name} at {e.Path}: {e.Message}", e);
        }
    }

    /// <summary>JSON Schema of a travelling value.</summary>
    public static string SchemaOf<T>()
    {
        JsonNode schema = Options.GetJsonSchemaAsNode(typeof(T), new JsonSchemaExporterOptions { TreatNullObliviousAsNonNullable = true });
        JsonObject document = new()
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = typeof(T).Name,
            ["version"] = Schema,
        };
        foreach ((string key, JsonNode? node) in schema.AsObject())
        {
            document[key] = node?.DeepClone();
        }

        return document.ToJsonString(new JsonSerializerOptions { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping });
    }

    private static JsonSerializerOptions Make()
    {
        JsonSerializerOptions options = new(JsonSerializerDefaults.Web)
        {
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
            Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase) },
        };
        options.ConfigureForNodaTime(DateTimeZoneProviders.Tzdb);
        options.MakeReadOnly(populateMissingResolver: true);
        return options;
    }
}
