package seamsoak.schedule.demand;

import java.util.List;
import java.util.Optional;
import seamsoak.pairing.MayBe;
import seamsoak.source.Estimate;
import seamsoak.steel.Dispute;
import seamsoak.steel.HeatTreatment;
import seamsoak.steel.TemperatureRange;

/** Something that the steels of a billet, or their sheets, do not agree on. */
public sealed interface Conflict {
  /** Steels that it is between. */
  List<String> steels();

  /** The first of them, or the only one. */
  default String steel() {
    return steels().get(0);
  }

  /** Whether for it nothing of a billet may be hardened. */
  default boolean leavesSoft() {
    return this instanceof BeyondFormulas || this instanceof NothingHardens;
  }

  /** From where to where a steel hardens well, C, by its sheet or by its carbon. */
  record Window(String steel, double lowC, double highC, boolean bySheet) {}

  /** A steel of it is stock of unknown make. */
  record UnknownMade(List<String> steels, MayBe mayBe) implements Conflict {}

  /**
   * The sheets of a steel disagree on a treatment, or forbid it.
   *
   * @param cycled whether the others are refined all the same
   */
  record DisputedSheets(List<String> steels, Dispute dispute, boolean cycled) implements Conflict {}

  /** The jacket is still on the billet. */
  record JacketOn(List<String> steels) implements Conflict {}

  /**
   * A jacket of stainless sheet, which does not weld to what it covers.
   *
   * @param steels the jacket's, then those of the billet
   * @param tears whether it also grows so much more with heat that it tears loose
   */
  record StainlessJacket(List<String> steels, boolean tears) implements Conflict {}

  /**
   * Some harden in still air while others stay soft.
   *
   * @param steels all of them
   * @param hard those that harden
   * @param soft those that do not
   * @param surely whether all of the hard ones surely do
   */
  record HardAndSoftInAir(List<String> steels, List<String> hard, List<String> soft, boolean surely)
      implements Conflict {}

  /**
   * A steel hardens in air, and no kiln can cool it slowly.
   *
   * @param surely whether it surely does
   */
  record NoKiln(List<String> steels, boolean surely) implements Conflict {}

  /**
   * No formula reaches a steel that hardens.
   *
   * @param sheet its own
   * @param others that the schedule is for, with their windows
   * @param apart whether it hardens only above their heat
   * @param partly whether it begins to change at their heat
   */
  record BeyondFormulas(
      List<String> steels, HeatTreatment sheet, List<Window> others, boolean apart, boolean partly)
      implements Conflict {}

  /** No steel has the carbon to harden. */
  record NothingHardens(List<String> steels) implements Conflict {}

  /** With what has to come off both flats, less is left than the blade is to have. */
  record TooThin(List<String> steels, double offMetres, double leftMetres) implements Conflict {}

  /** With what has to come off both sides, less is left than the blade is to have. */
  record TooNarrow(List<String> steels, double offMetres, double leftMetres) implements Conflict {}

  /** The windows of hardening do not meet; the heat is that of the edge. */
  record NoCommonHeat(List<Window> windows, String edge, double celsius) implements Conflict {
    @Override
    public List<String> steels() {
      return windows.stream().map(Window::steel).toList();
    }
  }

  /** A heat outside a published range, though the window that carbon asks for holds it. */
  record HeatOutsideSheet(List<String> steels, double celsius) implements Conflict {}

  /**
   * The heat leaves ferrite in a steel.
   *
   * @param ferritePct at least so much, which is what a long hold leaves
   * @param ac3C above which it leaves none
   * @param hrc hardness as quenched, with soft spots
   * @param fullHrc what it would be from there
   */
  record FerriteLeft(
      List<String> steels,
      double celsius,
      double ferritePct,
      double ac3C,
      Estimate hrc,
      Estimate fullHrc)
      implements Conflict {}

  /**
   * A steel stays soft.
   *
   * @param edge steel that cuts
   * @param inTheEdge whether an edge ground through the layers holds it too
   * @param never whether no heat hardens it
   * @param ownHeat range of its own sheet, where it hardens only there
   * @param carbonPct by then, wt%
   */
  record SoftLayer(
      List<String> steels,
      String edge,
      boolean inTheEdge,
      boolean never,
      Optional<TemperatureRange> ownHeat,
      double carbonPct)
      implements Conflict {}

  /**
   * No bath at hand will do, so that one is taken that has to be had first.
   *
   * @param steels that may crack in the fast ones; all that harden where there are none
   * @param atHand what the shop calls its baths
   * @param mayCrack whether there are fast ones
   * @param instead what the shop calls the one taken
   * @param celsius how warm that one is
   */
  record NoBathWillDo(
      List<String> steels, List<String> atHand, boolean mayCrack, String instead, double celsius)
      implements Conflict {}

  /**
   * Plates, which touch only what is flat.
   *
   * @param bath what the shop calls them
   */
  record FlatForPlates(List<String> steels, String bath) implements Conflict {}

  /**
   * Not even a thin edge comes out of the bath as hard as the steel gets.
   *
   * @param bath what the shop calls it
   * @param edgeHrc as it comes out
   * @param fullHrc as hard as it gets
   */
  record SoftEdge(List<String> steels, String bath, double edgeHrc, double fullHrc)
      implements Conflict {}

  /**
   * The middle does not harden in the bath.
   *
   * @param allowsSeconds it may take from 800 to 500 C and be hard throughout
   * @param takesSeconds it takes
   * @param bath what the shop calls the bath
   * @param edgeHrc hardness of a thin edge as quenched
   * @param coreHrc hardness of the middle
   * @param throughMetres thickest blade that hardens throughout in it
   * @param nearlyMetres thickest that hardens nearly to the middle
   * @param water whether it is water, as for what is meant to have a shell
   */
  record SoftMiddle(
      List<String> steels,
      double allowsSeconds,
      double takesSeconds,
      String bath,
      double edgeHrc,
      double coreHrc,
      double throughMetres,
      double nearlyMetres,
      boolean water)
      implements Conflict {}

  /**
   * Where seams lack carbon the middle hardens less than beside them.
   *
   * @param bath what the shop calls it
   * @param seamPct carbon where there is least
   * @param pct carbon of the steel
   * @param allowsSeconds that metal may take from 800 to 500 C
   * @param takesSeconds the middle takes
   */
  record SoftSeam(
      List<String> steels,
      String bath,
      double seamPct,
      double pct,
      double allowsSeconds,
      double takesSeconds)
      implements Conflict {}

  /** What a bath makes of a steel, HRC. */
  record InBath(String steel, double edgeHrc, double coreHrc) {}

  /** One hardens far more deeply than the other, and the bath makes different things of them. */
  record DeepBesideShallow(String bath, boolean water, InBath shallow, InBath deep)
      implements Conflict {
    @Override
    public List<String> steels() {
      return List.of(shallow.steel(), deep.steel());
    }
  }

  /**
   * The hardness wanted at the edge cannot be had within the tempers that its sheet allows.
   *
   * @param quenchedHrc hardness of the edge before them
   * @param ovenC where the oven ends that is all there is to temper in, if that is why
   */
  record HardnessOutOfReach(
      List<String> steels,
      double wantedHrc,
      double comesToHrc,
      double quenchedHrc,
      Optional<Double> ovenC)
      implements Conflict {}

  /** One temper leaves the edge, which is the first, and another steel far apart. */
  record TemperParts(List<String> steels, double edgeHrc, double otherHrc) implements Conflict {}
}
