package seamsoak.words;

import java.util.List;
import seamsoak.schedule.Check;
import seamsoak.schedule.Task;
import seamsoak.schedule.demand.Down;
import seamsoak.schedule.demand.Guard;
import seamsoak.state.Skin;
import seamsoak.unit.HeatingRate;
import seamsoak.unit.UnitSystem;

/**
 * What to do at a step of the schedule, why, and what to look for.
 *
 * @param units that are shown
 */
public record StepWords(UnitSystem units) implements Task.Cases<StepWords.Order> {
  /** A hair: less soft skin than this goes with the scale and is told as none, m. */
  static final double NOTHING_METRES = 50e-6;

  private static final String FAINT = ". It may bring a faint line back to sight";

  /**
   * What to do, and why.
   *
   * @param doing as an order
   * @param why the reason for it
   */
  public record Order(String doing, String why) {}

  public Order said(Task task) {
    return task.as(this);
  }

  public List<String> checks(List<Check> checks) {
    CheckWords words = new CheckWords(amounts());
    return checks.stream().map(words::says).toList();
  }

  private CoolingWords cooling() {
    return new CoolingWords(amounts());
  }

  private Amounts amounts() {
    return new Amounts(units);
  }

  private String heat(double celsius) {
    return amounts().heat(celsius);
  }

  @Override
  public Order of(Task.CoolInAir t) {
    return cooling().of(t);
  }

  @Override
  public Order of(Task.CoolSlowly t) {
    return cooling().of(t);
  }

  @Override
  public Order of(Task.Soak t) {
    return new Order(
        SoakAnswerWords.soak(t.soak().reason())
            + " at "
            + heat(t.soak().temperatureC())
            + ", then "
            + cooling().down(t.down())
            + (t.soak().reason().later() ? ", and take the steps from here on once more" : ""),
        new SoakWords(units).reason(t.soak().reason()) + CoolingWords.slowly(t.down(), t.guard()));
  }

  @Override
  public Order of(Task.Normalize t) {
    return new Order(
        "Heat to "
            + heat(t.celsius())
            + Amounts.format(", then still air to black, about %.0f min", t.blackMinutes())
            + (t.guard().way() == Guard.Way.AIR_THEN_ANNEAL
                ? "; anneal it the same day, before anything cuts it"
                : ""),
        "takes the forging's coarse and uneven structure apart, "
            + amounts().apart(t.aboveKelvin())
            + " above the "
            + t.upper()
            + " of "
            + t.steel()
            + switch (t.drawn()) {
              case NOT -> "";
              case INTO_ITS_RANGE -> ", within its published range";
              case INTO_THE_RANGE_SHARED -> ", within the range that their sheets share";
            }
            + (t.guard().reasons().isEmpty() ? "" : "; " + GuardWords.because(t.guard())));
  }

  @Override
  public Order of(Task.Refine t) {
    return new Order(
        cycle(t.celsius(), t.down()),
        "new, finer grains form each time it passes the critical range"
            + CoolingWords.slowly(t.down(), t.guard()));
  }

  @Override
  public Order of(Task.LastRefine t) {
    return new Order(
        cycle(t.celsius(), t.down()),
        t.below()
                .map(s -> "as near the hardening heat as " + s + " allows, which must not change. ")
                .orElse("near the hardening heat: cooler would be undone by it. ")
            + "Grain about ASTM "
            + GrainWords.band(t.grainAstm())
            + ". "
            + (t.gain() < 0.1
                ? "One more cycle at this heat would gain nothing"
                : Amounts.format(
                    t.fine()
                        ? "That is fine enough for a blade; one more would gain %.1f numbers"
                        : "One more at this heat would gain %.1f numbers, not worth its scale",
                    t.gain()))
            + t.costPct()
                .map(
                    cost ->
                        Amounts.format(
                            "; each number finer takes about %.0f %% off how deep it hardens, so"
                                + " too many leave plain steel soft in the middle",
                            cost))
                .orElse(""));
  }

  private String cycle(double celsius, Down down) {
    return "Heat to " + heat(celsius) + ", then " + cooling().down(down);
  }

  @Override
  public Order of(Task.FullAnneal t) {
    return new Order(
        "Full anneal at " + falling(t.celsius(), t.toC(), t.perHourC()),
        GuardWords.because(t.guard())
            + "; only a slow fall makes it soft enough to saw, drill and grind"
            + FAINT);
  }

  @Override
  public Order of(Task.Spheroidize t) {
    return new Order(
        "Spheroidize at " + falling(t.celsius(), t.toC(), t.perHourC()),
        String.join(", ", t.steels())
            + (t.steels().size() == 1 ? " holds" : " hold")
            + " more carbon than pearlite does: this gathers it in small round grains, soft to work"
            + " and even in the quench, not in brittle films. It wants the longer hold when"
            + " hardening"
            + FAINT);
  }

  private String falling(double celsius, double toC, double perHourC) {
    return heat(celsius)
        + ", then down to "
        + heat(toC)
        + " no faster than "
        + new HeatingRate(perHourC).format(units);
  }

  @Override
  public Order of(Task.SubCriticalAnneal t) {
    String because = GuardWords.because(t.guard());
    return new Order(
        t.buried()
            ? "Bring it to an even "
                + heat(t.celsius())
                + ", a dull red, and bury it, still glowing, in dry vermiculite or ash until a hand"
                + " can bear it"
            : "Sub-critical anneal at " + heat(t.celsius()) + ", then still air",
        t.steel()
            + " begins to change near "
            + heat(t.ac1C())
            + "; below that nothing does, so the fine grain stays. "
            + (because.isEmpty()
                ? "No steel of it hardens in air, so more is not needed to saw, drill and grind it"
                : Sentence.capital(because)
                    + ": what did is tempered soft enough here to saw, drill and grind")
            + (t.buried()
                ? ". No forge holds such a heat for the hour that a kiln would; if a file skates, do it"
                    + " again"
                : ""));
  }

  @Override
  public Order of(Task.Grind t) {
    return new Order(
        "Grind "
            + amounts().length(t.depthMetres())
            + " off each flat, to "
            + amounts().length(t.thicknessMetres())
            + ", and profile the blade at least "
            + amounts().length(t.insideMetres())
            + " inside each side; leave the edge "
            + t.edgeMetres().map(e -> amounts().length(e) + " thick").orElse("as thick as a coin"),
        "each flat has "
            + lies(t.skin().flats())
            + ", each side "
            + lies(t.skin().sides())
            + "; "
            + amounts().length(t.insideMetres() - t.skin().sides().offMetres())
            + " more is for the scale"
            + (t.tooThin()
                ? "; the billet is too thin to leave the thickness that was asked for"
                : ""));
  }

  /** What has to come off a face. */
  private String lies(Skin.Face face) {
    boolean jacket = face.jacketMetres() > 0;
    boolean soft = face.softMetres() >= NOTHING_METRES;
    String what = jacket ? soft ? "jacket and soft skin" : "jacket" : "skin too soft for an edge";
    return jacket || soft ? amounts().length(face.offMetres()) + " of " + what : "no soft skin";
  }

  @Override
  public Order of(Task.TestEtch t) {
    return new Order(
        "Polish a flat to 220 grit or finer and etch it briefly in ferric chloride",
        "last chance to see what is left of the lines before hardening; it shows what the last"
            + " cooling from above the critical range left, and a slow one brings out most");
  }

  @Override
  public Order of(Task.StressRelief t) {
    return new Order(
        "Hold the ground blade straight at " + heat(t.celsius()) + ", then still air",
        "grinding and straightening leave strain that warps a thin blade in the quench");
  }

  @Override
  public Order of(Task.PreHeat t) {
    return new Order(
        "Hold at " + heat(t.celsius()) + " until even, then go straight on",
        "a deep-hardening or thick section cracks or warps when its skin runs ahead of its core");
  }

  @Override
  public Order of(Task.Harden t) {
    QuenchWords words = new QuenchWords(amounts(), t);
    return new Order(words.doing(), words.why());
  }

  @Override
  public Order of(Task.SubZero t) {
    return new Order(
        "When it is cold to the hand, cool it on to "
            + heat(t.celsius())
            + " in "
            + (t.dryIce() ? "dry ice and alcohol" : "liquid nitrogen")
            + " for an hour, then let it come up by itself",
        Amounts.format(
            "takes most of the %.0f %% austenite that the quench leaves; within the hour after it,"
                + " before the temper",
            t.austenitePct()));
  }

  @Override
  public Order of(Task.FirstTemper t) {
    return new Order(temper(t.celsius()), QuenchWords.tempers(t));
  }

  @Override
  public Order of(Task.NextTemper t) {
    return new Order(
        temper(t.celsius()),
        "the first temper lets some austenite turn to fresh martensite; this one tempers that too");
  }

  private String temper(double celsius) {
    return "Hold at " + heat(celsius) + ", then let it cool until a hand can bear it";
  }
}
