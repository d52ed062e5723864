using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Coulisse.Cli;

/// <summary>Numbers in JSON with six significant digits, and from a thousand on three decimals: what lies beyond is noise of the arithmetic, not knowledge.</summary>
internal sealed class HonestDigits : JsonConverter<double>
{
    public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => reader.GetDouble();

    public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options)
    {
        if (!double.IsFinite(value))
        {
            writer.WriteNullValue();
        }
        else if (Math.Abs(value) is >= 1000 and < 1e15)
        {
            writer.WriteNumberValue(Math.Round((decimal)value, 3));
        }
        else if (decimal.TryParse(value.ToString("G6", CultureInfo.InvariantCulture), NumberStyles.Float, CultureInfo.InvariantCulture, out decimal plain))
        {
            writer.WriteNumberValue(plain);
        }
        else
        {
            writer.WriteNumberValue(value);
        }
    }
}
