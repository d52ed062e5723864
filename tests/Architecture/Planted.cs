// Planted violations: the rules of this project are shown to fail on these.
namespace Coulisse.Architecture.Tests.Planted.Lower
{
    internal sealed class Low
    {
        public Upper.Up? Wrong { get; set; }
    }
}

namespace Coulisse.Architecture.Tests.Planted.Upper
{
    internal sealed class Up
    {
        public Lower.Low? Right { get; init; }
    }
}
