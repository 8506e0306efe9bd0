package seamsoak.billet;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import seamsoak.data.Place;
import seamsoak.property.Correlations;
import seamsoak.steel.Steel;
import seamsoak.unit.Length;
import seamsoak.unit.Temperature;
import seamsoak.unit.TimeSpan;
import seamsoak.unit.UnitSystem;

/**
 * A bar of steels in layers, welded once with nothing lost to the fire: what is taken of steels
 * that come without a history. Sizes and the heat are judgement; every further heat evens the
 * carbon of the layers more.
 *
 * @param steels in the order in which they lie
 * @param layers thickness of each
 * @param section thickness of the bar that is asked for
 * @param weld how hot it is welded
 */
public record JustWelded(
    List<Steel> steels, List<Length> layers, Length section, Temperature weld) {
  /** For so long it is at its welding heat. */
  public static final TimeSpan HOLD = TimeSpan.ofMinutes(5);

  /** The width of a blade's bar; a thicker one is square. */
  private static final Length WIDTH = Length.ofMillimetres(32);

  private static final Length LENGTH = Length.ofMillimetres(150);

  /** A usual welding heat; judgement. */
  private static final double HOTTEST_WELD_CELSIUS = 1200;

  /** As cool as steel is welded with a good heart; judgement. */
  private static final double COOLEST_WELD_CELSIUS = 1150;

  /** What a stack may have. */
  public static final int MOST_LAYERS = 1000;

  public JustWelded {
    steels = List.copyOf(steels);
    layers = List.copyOf(layers);
  }

  /** Welded at what the tenderest of them is forged at, or as cool as steel is welded. */
  public static JustWelded of(
      List<Steel> steels, List<Length> layers, Length section, Correlations correlations) {
    double most =
        steels.stream()
            .mapToDouble(
                s ->
                    correlations
                        .forging()
                        .rule()
                        .limits(s.analysis(), s.heatTreatment().forgeStartC())
                        .highestForging()
                        .value())
            .min()
            .orElseThrow();
    return new JustWelded(
        steels,
        layers,
        section,
        Temperature.ofCelsius(
            Math.max(COOLEST_WELD_CELSIUS, Math.min(HOTTEST_WELD_CELSIUS, most))));
  }

  /** Whether the bar has room for a layer of each. */
  public boolean fits() {
    return section.metres() >= layers.stream().mapToDouble(Length::metres).sum();
  }

  /** How many layers come nearest to the section. */
  public int count() {
    double mean = layers.stream().mapToDouble(Length::metres).average().orElseThrow();
    return (int) Math.max(layers.size(), Math.round(section.metres() / mean));
  }

  /** How thick that is. */
  public Length thickness() {
    return new Length(
        IntStream.range(0, count()).mapToDouble(i -> layers.get(i % layers.size()).metres()).sum());
  }

  public Length width() {
    return new Length(Math.max(WIDTH.metres(), thickness().metres()));
  }

  public Billet billet(UnitSystem units) {
    Place place = Place.of("the command");
    Heat heat = new Heat(weld, HOLD, 1, Optional.empty(), Optional.empty(), List.of());
    Step welded =
        new Step.Weld(
            new Mark(1, place, List.of(), Optional.empty(), Optional.empty()),
            List.of(heat),
            Optional.of(Exposure.SEALED),
            Optional.of(Exposure.SEALED),
            Optional.empty());
    return new Billet(
        steels.stream().map(Steel::id).collect(Collectors.joining(" and ")),
        Optional.of(units),
        new Stack(count(), steels, layers, width(), LENGTH, units, Optional.empty(), place),
        List.of(welded),
        new SoakWish(Optional.empty(), Optional.empty(), Optional.empty()),
        Blade.UNSTATED,
        Equipment.UNSTATED,
        List.of(),
        Optional.empty(),
        new Visible(Optional.empty(), Optional.empty()),
        Optional.empty(),
        List.of());
  }
}
