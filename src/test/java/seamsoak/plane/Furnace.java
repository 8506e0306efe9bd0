package seamsoak.plane;

/**
 * Takes plates through stays in the fire: carbon moves, and scale eats the open sides. The metal
 * that scale takes is cut off the outermost cells, half of it before and half after each step; a
 * cell that has become thin is made one with its neighbor.
 *
 * @param fire what it does to a bare face
 * @param mesh how fine, how many steps
 */
record Furnace(PlaneFire fire, Mesh mesh) {
  /** Share of its neighbor below which an outermost cell is not cut further. */
  private static final double THIN = 0.5;

  /** The last cell of a block is gone when it is thinner, m. */
  private static final double TRACE = 1e-7;

  private static final double USUAL_RATIO = 0.035;

  /**
   * A plate after a stay.
   *
   * @param lost carbon that left through the sides and with the scale
   * @param eaten metal gone from a side that was wholly open, m
   * @param massError carbon not accounted for over the carbon at the start
   */
  record Fired(Plate plate, double lost, double eaten, double massError) {}

  /** One stay; cells are made anew for it, and scale starts from nothing. */
  Fired heat(Plate given, Stay stay, Sides sides) {
    Run run = new Run(given.meshed(mesh), stay, sides);
    double before = given.carbon();
    double[] times = stay.times(mesh.steps());
    for (int k = 0; k + 1 < times.length; k++) {
      run.step(times[k], times[k + 1]);
    }
    Plate after = run.plate.withLines(l -> l.older(run.spread));
    double error = (before - run.lost - after.carbon()) / before;
    return new Fired(after, run.lost, Math.sqrt(run.square), error);
  }

  /** Metal that a stay eats from a side as open as a share says, m. */
  double eaten(Stay stay, double share) {
    double[] times = stay.times(mesh.steps());
    double square = 0;
    for (int k = 0; k + 1 < times.length; k++) {
      square += grown(stay, times[k], times[k + 1]);
    }
    return Math.sqrt(share * square);
  }

  /** Growth of X^2 on a bare face, by Simpson's rule. */
  private double grown(Stay stay, double from, double to) {
    double ends = rate(stay, from) + rate(stay, to);
    return 2 * (to - from) * (ends + 4 * rate(stay, 0.5 * (from + to))) / 6;
  }

  private double rate(Stay stay, double seconds) {
    return fire.scaling().applyAsDouble(stay.kelvinAt(seconds));
  }

  private final class Run {
    private final Stay stay;
    private final Sides sides;
    private Plate plate;
    private Diffusion diffusion;
    private double square;
    private double lost;
    private double spread;

    Run(Plate plate, Stay stay, Sides sides) {
      this.plate = plate;
      this.stay = stay;
      this.sides = sides;
    }

    void step(double from, double to) {
      double middle = 0.5 * (from + to);
      cut(from, middle);
      if (diffusion == null) {
        diffusion = new Diffusion(plate, sides, fire);
      }
      double[] y = plate.ratio().clone();
      double start = stay.kelvinAt(from);
      double end = stay.kelvinAt(to);
      lost += diffusion.step(y, plate.across(), plate.up(), start, end, to - from);
      plate = new Plate(plate.across(), plate.up(), plate.metal(), y);
      cut(middle, to);
      PlaneMetal metal = plate.metal()[0][0];
      spread += (to - from) * metal.at(stay.kelvinAt(middle)).diffusivity(USUAL_RATIO);
    }

    private void cut(double from, double to) {
      double next = square + grown(stay, from, to);
      double deep = Math.sqrt(next) - Math.sqrt(square);
      square = next;
      double kelvin = stay.kelvinAt(to);
      if (sides.left() > 0) {
        plate = cutLeft(plate, deep, sides.left(), kelvin);
      }
      if (sides.right() > 0) {
        plate = cutLeft(plate.reversed(), deep, sides.right(), kelvin).reversed();
      }
      if (sides.bottom() > 0 && !plate.up().ring()) {
        plate = cutLeft(plate.exchanged(), deep, sides.bottom(), kelvin).exchanged();
      }
      if (sides.top() > 0 && !plate.up().ring()) {
        plate = cutLeft(plate.exchanged().reversed(), deep, sides.top(), kelvin);
        plate = plate.reversed().exchanged();
      }
    }

    /** Least width of an outermost cell; the last one of its block is used up. */
    private static double least(Axis axis) {
      return axis.face()[1] == 1 ? TRACE : THIN * axis.width()[1];
    }

    private Plate cutLeft(Plate whole, double bareMetres, double share, double kelvin) {
      double deep = bareMetres * Math.sqrt(share);
      Plate p = whole;
      while (p.across().width()[0] - deep < least(p.across())) {
        boolean last = p.across().face()[1] == 1;
        if (last) {
          double trace = p.across().width()[0];
          double all = p.carbon();
          p = p.ground(trace);
          lost += all - p.carbon();
          deep = Math.max(0, deep - trace);
        } else {
          p = p.merged();
        }
        diffusion = null;
      }
      double wide = p.across().width()[0];
      int n = p.across().cells();
      double[] y = p.ratio().clone();
      double[] held = new double[p.up().blocks()];
      for (int b = 0; b < held.length; b++) {
        PlaneMetal metal = p.metal()[0][b];
        PlaneMetal.Isotherm law = metal.at(kelvin);
        held[b] = law.ratioAt(fire.held(share, metal, law, kelvin));
      }
      for (int b = 0; b < held.length; b++) {
        for (int j = p.up().face()[b]; j < p.up().face()[b + 1]; j++) {
          double own = y[j * n];
          double face = Math.min(own, held[b]);
          double gone = face + (own - face) * deep / wide;
          lost += deep * gone * p.up().width()[j];
          y[j * n] = (own * wide - gone * deep) / (wide - deep);
        }
      }
      return new Plate(p.across().withWidth(0, wide - deep), p.up(), p.metal(), y);
    }
  }
}
