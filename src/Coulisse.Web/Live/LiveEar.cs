using Coulisse.Store;

namespace Coulisse.Web.Live;

/// <summary>Hears of runs that another process of the same store changed and shows them on this process's screens; when the line breaks it is taken up again.</summary>
internal sealed class LiveEar(KitchenStore store, LiveDesk desk, TimeProvider clock, ILogger<LiveEar> log) : BackgroundService
{
    private static readonly TimeSpan Pause = TimeSpan.FromSeconds(1);

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        while (!stoppingToken.IsCancellationRequested)
        {
            try
            {
                await foreach (string run in store.ChangedRunsAsync(stoppingToken))
                {
                    await desk.ShowAsync(run, stoppingToken);
                }

                return; // an embedded store has one process, and nothing to hear
            }
            catch (OperationCanceledException)
            {
                return;
            }
            catch (StoreException e)
            {
                // Screens are sent what stands every few seconds all the same, so nothing is lost while nobody listens.
                if (log.IsEnabled(LogLevel.Warning))
                {
                    log.LogWarning("{What} It is taken up again.", e.Message);
                }

                try
                {
                    await Task.Delay(Pause, clock, stoppingToken);
                }
                catch (OperationCanceledException)
                {
                    return;
                }
            }
        }
    }
}
