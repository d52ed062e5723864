using Coulisse.Store;
using Microsoft.AspNetCore.Diagnostics;

namespace Coulisse.Web.Hosting;

/// <summary>A store that refuses (full disk, database gone) is told to the person in its own sentence, not as a fault of ours.</summary>
internal sealed class StoreTrouble(ILogger<StoreTrouble> log) : IExceptionHandler
{
    public async ValueTask<bool> TryHandleAsync(HttpContext httpContext, Exception exception, CancellationToken cancellationToken)
    {
        if (exception is not StoreException)
        {
            return false;
        }

        log.LogWarning(exception, "The store refused.");
        await Results.Problem(exception.Message, statusCode: StatusCodes.Status503ServiceUnavailable).ExecuteAsync(httpContext);
        return true;
    }
}
