using System.Buffers.Binary;
using System.Text;

namespace Coulisse.Papers.Fonts;

/// <summary>One embedded TrueType face: which signs it has and how wide they are. Read straight from the file, so that layout needs no PDF library.</summary>
/// <remarks>Reads the tables head, hhea, hmtx and cmap (formats 4 and 12) of the OpenType specification, ISO/IEC 14496-22.</remarks>
public sealed class FontFace
{
    private readonly byte[] _file;
    private readonly int _map;
    private readonly int _format;
    private readonly int _widths;
    private readonly int _widthCount;
    private readonly int _unitsPerEm;

    private FontFace(string name, byte[] file)
    {
        Name = name;
        _file = file;
        _unitsPerEm = U16(Table("head") + 18);
        _widthCount = U16(Table("hhea") + 34);
        _widths = Table("hmtx");
        int cmap = Table("cmap");
        for (int i = 0; i < U16(cmap + 2); i++)
        {
            int at = cmap + (int)U32(cmap + 4 + (8 * i) + 4);
            int format = U16(at);
            if (format is 4 or 12 && format > _format)
            {
                (_map, _format) = (at, format);
            }
        }

        if (_format == 0)
        {
            throw new InvalidDataException($"The face {name} has no character map of format 4 or 12.");
        }
    }

    /// <summary>File name without its ending.</summary>
    public string Name { get; }

    /// <summary>The whole file, to be embedded or served.</summary>
    public ReadOnlyMemory<byte> File => _file;

    /// <summary>Opens a face of this assembly's resources.</summary>
    /// <exception cref="FileNotFoundException">No such face is shipped.</exception>
    public static FontFace Open(string name)
    {
        using Stream stream = typeof(FontFace).Assembly.GetManifestResourceStream($"fonts/{name}.ttf")
            ?? throw new FileNotFoundException($"No face {name} is shipped.");
        byte[] file = new byte[stream.Length];
        stream.ReadExactly(file);
        return new FontFace(name, file);
    }

    /// <summary>True when the face has a sign for the rune.</summary>
    public bool Has(Rune rune) => Glyph(rune) != 0;

    /// <summary>Width of a rune at a size, in the unit of the size; that of the missing-sign box when the face lacks it.</summary>
    public double Width(Rune rune, double size)
    {
        int glyph = Math.Min(Glyph(rune), _widthCount - 1);
        return (double)U16(_widths + (4 * glyph)) / _unitsPerEm * size;
    }

    private int Glyph(Rune rune) => _format == 12 ? Glyph12(rune.Value) : rune.Value <= 0xFFFF ? Glyph4(rune.Value) : 0;

    private int Glyph12(int code)
    {
        int low = 0;
        int high = (int)U32(_map + 12) - 1;
        while (low <= high)
        {
            int mid = (low + high) / 2;
            int group = _map + 16 + (12 * mid);
            if (code < U32(group))
            {
                high = mid - 1;
            }
            else if (code > U32(group + 4))
            {
                low = mid + 1;
            }
            else
            {
                return (int)U32(group + 8) + code - (int)U32(group);
            }
        }

        return 0;
    }

    private int Glyph4(int code)
    {
        int doubled = U16(_map + 6);
        int ends = _map + 14;
        for (int i = 0; i < doubled; i += 2)
        {
            if (code > U16(ends + i))
            {
                continue;
            }

            int start = U16(ends + 2 + doubled + i);
            if (code < start)
            {
                return 0;
            }

            int delta = U16(ends + 2 + (2 * doubled) + i);
            int offsetAt = ends + 2 + (3 * doubled) + i;
            int offset = U16(offsetAt);
            int glyph = offset == 0 ? code : U16(offsetAt + offset + (2 * (code - start)));
            return glyph == 0 ? 0 : (glyph + delta) & 0xFFFF;
        }

        return 0;
    }

    private int Table(string tag)
    {
        for (int i = 0; i < U16(4); i++)
        {
            int at = 12 + (16 * i);
            if (Encoding.ASCII.GetString(_file, at, 4) == tag)
            {
                return (int)U32(at + 8);
            }
        }

        throw new InvalidDataException($"The face {Name} has no table {tag}.");
    }

    private int U16(int at) => BinaryPrimitives.ReadUInt16BigEndian(_file.AsSpan(at));

    private uint U32(int at) => BinaryPrimitives.ReadUInt32BigEndian(_file.AsSpan(at));
}
