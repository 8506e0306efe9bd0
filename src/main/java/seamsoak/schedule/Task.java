package seamsoak.schedule;

import java.util.List;
import java.util.Optional;
import seamsoak.property.hardening.Quenchant;
import seamsoak.schedule.demand.Change;
import seamsoak.schedule.demand.Conflict;
import seamsoak.schedule.demand.Down;
import seamsoak.schedule.demand.Guard;
import seamsoak.schedule.demand.Hardens;
import seamsoak.soak.SoakAdvice;
import seamsoak.state.Skin;

/**
 * What a step does and why, in the numbers that decided it. Whoever says or writes it implements
 * {@link Cases} and so cannot leave one out.
 */
public sealed interface Task {
  /** What becomes of each. */
  interface Cases<T> {
    T of(CoolInAir task);

    T of(CoolSlowly task);

    T of(Soak task);

    T of(Normalize task);

    T of(Refine task);

    T of(LastRefine task);

    T of(FullAnneal task);

    T of(Spheroidize task);

    T of(SubCriticalAnneal task);

    T of(Grind task);

    T of(TestEtch task);

    T of(StressRelief task);

    T of(PreHeat task);

    T of(Harden task);

    T of(SubZero task);

    T of(FirstTemper task);

    T of(NextTemper task);
  }

  <T> T as(Cases<T> cases);

  /**
   * Laid down after the last forging heat.
   *
   * @param takesSeconds the middle takes from 800 to 500 C
   * @param deepest the steel that would harden soonest, if any can
   */
  record CoolInAir(
      double blackMinutes, double touchMinutes, double takesSeconds, Optional<Allowance> deepest)
      implements Task {
    public <T> T as(Cases<T> cases) {
      return cases.of(this);
    }
  }

  /** A steel hardens when its middle falls from 800 to 500 C within so many seconds. */
  record Allowance(String steel, double seconds) {}

  /**
   * Kept from hardening after the last forging heat.
   *
   * @param kiln how a kiln holds it; empty where it is buried for want of one
   */
  record CoolSlowly(Optional<Change> kiln, Guard guard) implements Task {
    public <T> T as(Cases<T> cases) {
      return cases.of(this);
    }
  }

  record Soak(SoakAdvice.Recommended soak, Down down, Guard guard) implements Task {
    public <T> T as(Cases<T> cases) {
      return cases.of(this);
    }
  }

  /**
   * Normalizing.
   *
   * @param steel that needs most heat
   * @param upper its critical temperature, by name
   * @param aboveKelvin how far above that
   */
  record Normalize(
      double celsius,
      double blackMinutes,
      String steel,
      String upper,
      double aboveKelvin,
      Draw drawn,
      Guard guard)
      implements Task {
    /** Whether published ranges moved the temperature. */
    public enum Draw {
      NOT,
      INTO_ITS_RANGE,
      INTO_THE_RANGE_SHARED
    }

    public <T> T as(Cases<T> cases) {
      return cases.of(this);
    }
  }

  record Refine(double celsius, Down down, Guard guard) implements Task {
    public <T> T as(Cases<T> cases) {
      return cases.of(this);
    }
  }

  /**
   * The last cycle.
   *
   * @param grainAstm grain number after it
   * @param fine whether that is fine enough
   * @param gain of one more cycle, in numbers
   * @param costPct hardening depth that each number finer takes, where that matters
   * @param below the steel that it must not change, if that is what keeps it cooler
   */
  record LastRefine(
      double celsius,
      Down down,
      double grainAstm,
      boolean fine,
      double gain,
      Optional<Double> costPct,
      Optional<String> below)
      implements Task {
    public <T> T as(Cases<T> cases) {
      return cases.of(this);
    }
  }

  record FullAnneal(double celsius, double toC, double perHourC, Guard guard) implements Task {
    public <T> T as(Cases<T> cases) {
      return cases.of(this);
    }
  }

  /**
   * Carbide gathered in grains.
   *
   * @param steels with more carbon than pearlite holds
   */
  record Spheroidize(double celsius, double toC, double perHourC, List<String> steels)
      implements Task {
    public <T> T as(Cases<T> cases) {
      return cases.of(this);
    }
  }

  /**
   * Held below the critical range.
   *
   * @param steel that changes first
   * @param ac1C where it does, by the lower of formula and sheet
   * @param buried whether it is only brought there in a forge, and buried
   */
  record SubCriticalAnneal(double celsius, String steel, double ac1C, boolean buried, Guard guard)
      implements Task {
    public <T> T as(Cases<T> cases) {
      return cases.of(this);
    }
  }

  /**
   * Grinding to the blade's section.
   *
   * @param depthMetres off each flat
   * @param thicknessMetres left
   * @param insideMetres how far inside each side the blade has to lie
   * @param edgeMetres how thick the edge is to stay, if the file says it
   * @param skin on the faces before
   * @param tooThin whether the billet is, for the blade
   */
  record Grind(
      double depthMetres,
      double thicknessMetres,
      double insideMetres,
      Optional<Double> edgeMetres,
      Skin skin,
      boolean tooThin)
      implements Task {
    public <T> T as(Cases<T> cases) {
      return cases.of(this);
    }
  }

  record TestEtch() implements Task {
    public <T> T as(Cases<T> cases) {
      return cases.of(this);
    }
  }

  record StressRelief(double celsius) implements Task {
    public <T> T as(Cases<T> cases) {
      return cases.of(this);
    }
  }

  record PreHeat(double celsius) implements Task {
    public <T> T as(Cases<T> cases) {
      return cases.of(this);
    }
  }

  /**
   * The hardening heat and the quench.
   *
   * @param quenchant as the shop calls it
   * @param windows where each steel hardens well
   * @param minutes held
   * @param wantedMinutes it should be held
   * @param carbide whether carbide has to dissolve
   * @param takesSeconds the middle takes from 800 to 500 C
   * @param steels how each takes the quench
   */
  record Harden(
      double celsius,
      String quenchant,
      Quenchant.Kind bath,
      double bathC,
      List<Conflict.Window> windows,
      double minutes,
      double wantedMinutes,
      boolean carbide,
      double takesSeconds,
      List<InTheQuench> steels)
      implements Task {
    /** How a steel takes the quench. */
    public record InTheQuench(
        String steel,
        double allowsSeconds,
        Hardens middle,
        double edgeHrc,
        double faceHrc,
        double coreHrc) {}

    public <T> T as(Cases<T> cases) {
      return cases.of(this);
    }
  }

  /**
   * Cooled on after the quench.
   *
   * @param dryIce in it, or else in liquid nitrogen
   * @param austenitePct that the quench leaves
   */
  record SubZero(double celsius, boolean dryIce, double austenitePct) implements Task {
    public <T> T as(Cases<T> cases) {
      return cases.of(this);
    }
  }

  record FirstTemper(
      double celsius, double wantedHrc, int times, double hours, List<InTheTemper> steels)
      implements Task {
    /**
     * A steel in it.
     *
     * @param ownHeat whether it hardens from a heat of its own, not from this
     * @param hrc what the tempers do to its hardness; empty where it is soft
     */
    public record InTheTemper(String steel, boolean ownHeat, boolean partly, Optional<Hrc> hrc) {}

    /** Hardness before and after, and what that may be off. */
    public record Hrc(double from, double to, double giveOrTake) {}

    public <T> T as(Cases<T> cases) {
      return cases.of(this);
    }
  }

  record NextTemper(double celsius) implements Task {
    public <T> T as(Cases<T> cases) {
      return cases.of(this);
    }
  }
}
