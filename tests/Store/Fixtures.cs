[assembly: AssemblyFixture(typeof(Coulisse.Tests.PostgresServer))]
