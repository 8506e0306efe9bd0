package seamsoak.property;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import seamsoak.data.DataFolder;
import seamsoak.steel.Composition;
import seamsoak.steel.Steel;
import seamsoak.steel.SteelTable;

/** Every correlation gives a possible number for every steel, and for analyses beyond them. */
final class EverySteelTest {
  private final Correlations k = Correlations.load(DataFolder.packed());

  static Stream<Composition> analyses() {
    return Stream.concat(
        SteelTable.load(DataFolder.packed()).steels().stream().map(Steel::analysis),
        ExtremeAnalyses.all());
  }

  static Stream<Steel> steels() {
    return SteelTable.load(DataFolder.packed()).steels().stream();
  }

  @ParameterizedTest
  @MethodSource("analyses")
  void criticalTemperaturesLieBetweenRoomAndMelting(Composition c) {
    within(c, k.lowerCritical(), 500, 1000);
    within(c, k.upperCritical(), 250, 1250);
    within(c, k.martensiteStart(), -273.15, 600);
    within(c, List.of(k.solidus()), 1050, 1540);
  }

  private static void within(
      Composition c, List<? extends CriticalTemperature> all, double low, double high) {
    for (CriticalTemperature t : all) {
      double celsius = t.celsius(c);
      assertTrue(celsius >= low && celsius <= high, () -> t.correlation().name() + " " + celsius);
    }
  }

  @ParameterizedTest
  @MethodSource("analyses")
  void grainsGrowWithHeatAndTime(Composition c) {
    double cool = k.grainGrowth().metres(c, 1123, 600);
    double hot = k.grainGrowth().metres(c, 1423, 600);
    double longer = k.grainGrowth().metres(c, 1423, 1200);
    assertTrue(cool > 1e-7 && cool < hot && hot < longer && longer < 1e-2);
  }

  @ParameterizedTest
  @MethodSource("analyses")
  void retainedAusteniteIsAShare(Composition c) {
    double share = k.vanBohemenRetained().retained(c, k.vanBohemenMs().celsius(c), 20);
    assertTrue(share >= 0 && share <= 1, () -> "share " + share);
  }

  @ParameterizedTest
  @MethodSource("analyses")
  void forgingStaysBelowBurningAndMelting(Composition c) {
    ForgingLimits limits = k.forging().limits(c, OptionalDouble.empty());
    assertTrue(limits.highestForging().value() < limits.burningCelsius());
    assertTrue(limits.refusalCelsius() <= limits.burningCelsius());
    assertTrue(limits.refusalCelsius() < limits.solidusCelsius());
    assertTrue(limits.refusalCelsius() > 1000, () -> "refusal " + limits.refusalCelsius());
  }

  @ParameterizedTest
  @MethodSource("steels")
  void publishedForgeStartIsNotRefused(Steel steel) {
    OptionalDouble published = steel.heatTreatment().forgeStartC();
    ForgingLimits limits = k.forging().limits(steel.analysis(), published);
    assertTrue(
        limits.highestForging().value() < limits.refusalCelsius(), () -> steel.id() + " " + limits);
    assertFalse(limits.highestForging().source().isEmpty());
  }
}
