package seamsoak.schedule;

import java.util.List;
import java.util.Optional;
import seamsoak.steel.Dispute;
import seamsoak.steel.HeatTreatment;
import seamsoak.steel.TemperatureRange;

/** Something that the steels of a billet, or their sheets, do not agree on. */
public sealed interface Conflict {
  /** What becomes of each. */
  interface Cases<T> {
    T of(DisputedSheets conflict);

    T of(JacketOn conflict);

    T of(HardAndSoftInAir conflict);

    T of(NoKiln conflict);

    T of(BeyondFormulas conflict);

    T of(NothingHardens conflict);

    T of(TooThin conflict);

    T of(NoCommonHeat conflict);

    T of(HeatOutsideSheet conflict);

    T of(SoftLayer conflict);

    T of(SoftMiddle conflict);

    T of(DeepBesideShallow conflict);

    T of(HardnessOutOfReach conflict);

    T of(TemperParts conflict);
  }

  <T> T as(Cases<T> cases);

  /** Steels that it is between. */
  List<String> steels();

  /** Whether for it nothing of a billet may be hardened. */
  default boolean leavesSoft() {
    return this instanceof BeyondFormulas || this instanceof NothingHardens;
  }

  /** From where to where a steel hardens, C. */
  record Window(String steel, double lowC, double highC) {}

  /** The sheets of a steel disagree on a treatment, or forbid it. */
  record DisputedSheets(String steel, Dispute dispute) implements Conflict {
    @Override
    public List<String> steels() {
      return List.of(steel);
    }

    public <T> T as(Cases<T> cases) {
      return cases.of(this);
    }
  }

  /** The jacket is still on the billet. */
  record JacketOn(String steel) implements Conflict {
    @Override
    public List<String> steels() {
      return List.of(steel);
    }

    public <T> T as(Cases<T> cases) {
      return cases.of(this);
    }
  }

  /**
   * Some harden in still air while others stay soft.
   *
   * @param steels all of them
   * @param hard those that harden
   * @param soft those that do not
   * @param surely whether all of the hard ones surely do
   */
  record HardAndSoftInAir(List<String> steels, List<String> hard, List<String> soft, boolean surely)
      implements Conflict {
    public <T> T as(Cases<T> cases) {
      return cases.of(this);
    }
  }

  /**
   * A steel hardens in air, and no kiln can cool it slowly.
   *
   * @param surely whether it surely does
   */
  record NoKiln(List<String> steels, boolean surely) implements Conflict {
    public <T> T as(Cases<T> cases) {
      return cases.of(this);
    }
  }

  /**
   * No formula reaches a steel that hardens.
   *
   * @param sheet its own
   * @param others that the schedule is for, with their windows
   * @param apart whether it hardens only above their heat
   */
  record BeyondFormulas(String steel, HeatTreatment sheet, List<Window> others, boolean apart)
      implements Conflict {
    @Override
    public List<String> steels() {
      return List.of(steel);
    }

    public <T> T as(Cases<T> cases) {
      return cases.of(this);
    }
  }

  /** No steel has the carbon to harden. */
  record NothingHardens(List<String> steels) implements Conflict {
    public <T> T as(Cases<T> cases) {
      return cases.of(this);
    }
  }

  /** With the skin off, less is left than the blade is to have. */
  record TooThin(List<String> steels, double leftMetres) implements Conflict {
    public <T> T as(Cases<T> cases) {
      return cases.of(this);
    }
  }

  /** The windows of hardening do not meet; the heat is that of the edge. */
  record NoCommonHeat(List<Window> windows, String edge, double celsius) implements Conflict {
    @Override
    public List<String> steels() {
      return windows.stream().map(Window::steel).toList();
    }

    public <T> T as(Cases<T> cases) {
      return cases.of(this);
    }
  }

  /** A heat outside a published range, though the window that carbon asks for holds it. */
  record HeatOutsideSheet(String steel, double celsius) implements Conflict {
    @Override
    public List<String> steels() {
      return List.of(steel);
    }

    public <T> T as(Cases<T> cases) {
      return cases.of(this);
    }
  }

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
      String steel,
      String edge,
      boolean inTheEdge,
      boolean never,
      Optional<TemperatureRange> ownHeat,
      double carbonPct)
      implements Conflict {
    @Override
    public List<String> steels() {
      return List.of(steel);
    }

    public <T> T as(Cases<T> cases) {
      return cases.of(this);
    }
  }

  /**
   * The middle does not harden in the fastest bath.
   *
   * @param allowsSeconds it may take from 800 to 500 C
   * @param takesSeconds it takes
   * @param bath what the shop calls the bath
   * @param throughInOilMetres thickest blade that hardens through in fast oil
   * @param throughInBrineMetres the same in brine
   * @param sheetQuench what its sheet quenches it in
   */
  record SoftMiddle(
      String steel,
      double allowsSeconds,
      double takesSeconds,
      String bath,
      double throughInOilMetres,
      double throughInBrineMetres,
      Optional<String> sheetQuench)
      implements Conflict {
    @Override
    public List<String> steels() {
      return List.of(steel);
    }

    public <T> T as(Cases<T> cases) {
      return cases.of(this);
    }
  }

  /** A steel that needs water beside one that hardens far more deeply. */
  record DeepBesideShallow(String shallow, String deep) implements Conflict {
    @Override
    public List<String> steels() {
      return List.of(shallow, deep);
    }

    public <T> T as(Cases<T> cases) {
      return cases.of(this);
    }
  }

  /** The hardness wanted at the edge cannot be had within the tempers that its sheet allows. */
  record HardnessOutOfReach(String steel, double wantedHrc, double comesToHrc) implements Conflict {
    @Override
    public List<String> steels() {
      return List.of(steel);
    }

    public <T> T as(Cases<T> cases) {
      return cases.of(this);
    }
  }

  /** One temper leaves the edge and another steel far apart. */
  record TemperParts(String edge, double edgeHrc, String other, double otherHrc)
      implements Conflict {
    @Override
    public List<String> steels() {
      return List.of(edge, other);
    }

    public <T> T as(Cases<T> cases) {
      return cases.of(this);
    }
  }
}
