package seamsoak.schedule.demand;

import java.util.List;
import java.util.Optional;
import seamsoak.billet.Bath;
import seamsoak.data.Place;
import seamsoak.heat.Section;
import seamsoak.property.QuenchedSteel;
import seamsoak.property.hardening.Hardening;
import seamsoak.property.hardening.QuenchResult;
import seamsoak.property.hardening.QuenchRule;
import seamsoak.property.hardening.Quenchant;
import seamsoak.property.hardening.QuenchantTable;
import seamsoak.state.BathAtHand;

/**
 * A bath, and what it does to a blade.
 *
 * @param bath which
 * @param atHand whether the shop has it
 * @param section that is quenched
 * @param steels how each that hardens takes it
 */
public record QuenchChoice(
    BathAtHand bath, boolean atHand, Section section, List<Response> steels) {
  /** What anybody can get where no bath at hand will do. */
  private static final String TO_BE_HAD = "canola";

  /**
   * How a steel takes the quench.
   *
   * @param steel which
   * @param austenite of it at the hardening heat
   * @param result what the quench does to the section
   * @param bath what it is quenched in
   */
  public record Response(
      SteelNow steel, QuenchedSteel austenite, QuenchResult result, Quenchant bath) {
    /** Whether the middle hardens; air may do so where the criterion says too little. */
    public Hardens middle() {
      return switch (result.depth()) {
        case THROUGH -> Hardens.YES;
        case NEARLY -> Hardens.PERHAPS;
        case SHELL, NOT ->
            bath.kind() == Quenchant.Kind.AIR
                    && hardening().depth().mayHardenInAir(result.marginAtCore())
                ? Hardens.PERHAPS
                : Hardens.NO;
      };
    }

    /** How the same takes it where it has no more carbon than that, at a seam. */
    public Response seam(double percent, Section section) {
      QuenchedSteel poor = austenite.withCarbon(percent);
      return new Response(steel, poor, poor.quench(section, bath), bath);
    }

    /** Whether an edge ground thin hardens. */
    public Hardens edge() {
      return result.marginAtEdge() >= hardening().depth().throughMargin()
          ? Hardens.YES
          : result.marginAtEdge() >= hardening().depth().halfMargin()
              ? Hardens.PERHAPS
              : Hardens.NO;
    }

    /**
     * How long the middle may take from 800 to 500 C in this section and still be hard, s. Times go
     * as the square of the ideal diameter that they ask for, on the section's own way down; the
     * same time along the curve of an ideally quenched bar would say less.
     */
    public double allowsSeconds() {
      double over = result.marginAtCore() / hardening().depth().throughMargin();
      return result.coreSeconds8to5() * over * over;
    }

    /**
     * The thickest blade of it of that width that hardens to the middle in this bath, m: the middle
     * of that takes no longer than {@link #allowsSeconds}.
     */
    public double throughMetres(double widthMetres) {
      return thickestMetres(hardening().depth().throughMargin(), widthMetres);
    }

    /** The same where it hardens nearly to the middle. */
    public double nearlyMetres(double widthMetres) {
      return thickestMetres(hardening().depth().halfMargin(), widthMetres);
    }

    private double thickestMetres(double margin, double widthMetres) {
      return hardening()
          .criterion()
          .thickestMetres(austenite.idealDiameterMetres() / margin, widthMetres, bath.severity());
    }

    /** Whether this bath is faster than the steel may be quenched in. */
    public boolean tooFast(Section section) {
      return hardening().quench().tooFast(bath, asked(), section);
    }

    private QuenchRule.Asked asked() {
      return new QuenchRule.Asked(
          austenite.idealDiameterMetres(), steel.steel().heatTreatment().quench());
    }

    private Hardening hardening() {
      return steel.k().hardening();
    }
  }

  /**
   * Steels at the heat they are hardened from, and the baths that a shop has for them.
   *
   * @param section that is quenched
   * @param hardening the steels that harden
   * @param celsius the heat
   * @param grainNumber of the austenite
   */
  public record Asked(
      Section section, List<SteelNow> hardening, double celsius, double grainNumber) {
    public QuenchChoice in(BathAtHand bath, boolean atHand) {
      return new QuenchChoice(
          bath,
          atHand,
          section,
          hardening.stream()
              .map(
                  s -> {
                    QuenchedSteel austenite = s.quenched(celsius, grainNumber);
                    Quenchant q = bath.quenchant();
                    return new Response(s, austenite, austenite.quench(section, q), q);
                  })
              .toList());
    }

    private QuenchantTable table() {
      return hardening.get(0).k().hardening().quenchants();
    }

    /** A bath as the table has it. */
    public QuenchChoice in(String id, boolean atHand) {
      return in(BathAtHand.of(bath(id), table()), atHand);
    }

    private static Bath bath(String id) {
      return new Bath(id, Optional.empty(), Optional.empty(), Place.of("the schedule"));
    }

    /** Each bath at hand with what it does, in their order. */
    public List<QuenchChoice> each(List<BathAtHand> baths) {
      return baths.stream().map(b -> in(b, true)).toList();
    }

    /** The one of them to take, or one to be had where none of them will do. */
    public QuenchChoice best(List<QuenchChoice> each) {
      List<QuenchRule.Asked> steels = each.get(0).steels().stream().map(Response::asked).toList();
      return hardening
          .get(0)
          .k()
          .hardening()
          .quench()
          .choose(each.stream().map(QuenchChoice::quenchant).toList(), steels, section)
          .flatMap(q -> each.stream().filter(c -> c.quenchant().equals(q)).findFirst())
          .orElseGet(() -> in(TO_BE_HAD, false));
    }
  }

  public double celsius() {
    return bath.celsius();
  }

  public Quenchant quenchant() {
    return bath.quenchant();
  }

  public Optional<Response> of(SteelNow steel) {
    return steels.stream().filter(t -> t.steel().id().equals(steel.id())).findFirst();
  }
}
