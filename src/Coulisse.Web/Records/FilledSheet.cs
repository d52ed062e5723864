using Coulisse.Views.Web;

namespace Coulisse.Web.Records;

/// <summary>A sheet as it comes back from its page: written into its fields, or as one text.</summary>
internal static class FilledSheet
{
    public static string Of(IFormCollection form)
        => form.TryGetValue("basis", out Microsoft.Extensions.Primitives.StringValues basis)
            ? SheetBlocks.Write(SheetBlocks.Of(basis.ToString()), field => form.TryGetValue(field, out Microsoft.Extensions.Primitives.StringValues written) ? written.ToString() : null)
            : form["sheet"].ToString();
}
