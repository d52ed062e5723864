// Speed and quality against outside sets and baselines. One part a folder, one line a part here.
using System.Globalization;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
string[] rest = args.Length > 0 ? args[1..] : [];
return (args.Length > 0 ? args[0] : "") switch
{
    "start" => Coulisse.Gauge.Start.StartGauge.Run(),
    "store" => await Coulisse.Gauge.Store.StoreGauge.RunAsync(rest),
    "records" => await Coulisse.Gauge.Store.RecordsGauge.RunAsync(rest),
    "bigstore" => await Coulisse.Gauge.Store.BigStoreGauge.RunAsync(rest),
    "servers" => await Coulisse.Gauge.Store.ServersGauge.RunAsync(rest),
    "planning" => Coulisse.Gauge.Planning.PlanningGauge.Run(rest),
    "banquet" => Coulisse.Gauge.Planning.BanquetGauge.Run(rest),
    "bakes" => Coulisse.Gauge.Planning.BakesGauge.Run(rest),
    "heat" => Coulisse.Gauge.Heat.HeatGauge.Run(),
    "foods" => Coulisse.Gauge.Foods.FoodsGauge.Run(),
    "shapes" => Coulisse.Gauge.Shapes.ShapesGauge.Run(),
    "papers" => Coulisse.Gauge.Papers.PapersGauge.Run(),
    "memory" => Coulisse.Gauge.Papers.MemoryGauge.Run(rest),
    "risk" => Coulisse.Gauge.Planning.RiskGauge.Run(),
    "web" => await Coulisse.Gauge.Web.WebGauge.RunAsync(rest.FirstOrDefault()),
    "reading" => Coulisse.Gauge.Reading.ReadingGauge.Run(rest),
    _ => Usage(),
};

static int Usage()
{
    Console.Error.WriteLine("coulisse gauge PART: start (the command line, start to exit), store (10,000 cards), bigstore (a gigabyte), records (ten thousand cards and a hundred thousand records, either store), servers (fifty people, two processes, PostgreSQL), planning (outside instance sets), banquet (600 tasks planned, 300 re-planned), bakes (formulations of set points), web (the bench in a real browser), risk (ten thousand runs of a plan), shapes (fits, orders, costs), foods (the whole assessment of a dish without heat), papers (the whole bundle, a thousand briefs), memory (planning and printing, each in a process of its own), heat (nearness to the exact series, speed) …");
    return 2;
}
