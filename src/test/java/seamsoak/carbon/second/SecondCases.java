package seamsoak.carbon.second;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import seamsoak.carbon.Surroundings;
import seamsoak.carbon.problem.Steels;
import seamsoak.carbon.second.SecondCase.Part;
import seamsoak.heat.HeatCurve;

/** The cases that both compute. */
final class SecondCases {
  private static final double ZERO = 273.15;

  /** Under scale, but no metal is eaten. */
  private static final Surroundings STILL = new Surroundings(Steels.FIRE.activity(), t -> 0);

  private SecondCases() {}

  private static HeatCurve hold(double celsius, double minutes) {
    return HeatCurve.hold(celsius + ZERO, 60 * minutes);
  }

  private static HeatCurve upAndDown(double celsius, double riseMinutes, double minutes) {
    return HeatCurve.riseAndHold(850 + ZERO, celsius + ZERO, 60 * riseMinutes, 60 * minutes)
        .then(HeatCurve.riseAndHold(celsius + ZERO, 850 + ZERO, 60 * riseMinutes, 0));
  }

  private static DoubleUnaryOperator bell(double depth, double metres) {
    return x -> depth * Math.exp(-(x / metres) * (x / metres));
  }

  static List<SecondCase> smooth() {
    return List.of(
        SecondCase.sealed(
            "1095 on 1018",
            hold(1100, 20),
            150,
            new Part("1095", 0.5e-3),
            new Part("1018", 0.5e-3)),
        SecondCase.sealed(
            "silicon steel on plain",
            hold(1050, 60),
            200,
            new Part("C0.478 Si3.80", 1e-3),
            new Part("C0.441", 1e-3)),
        SecondCase.sealed(
            "52100 on 1084, up and down",
            upAndDown(1150, 5, 5),
            150,
            new Part("52100", 0.75e-3),
            new Part("1084", 0.75e-3)),
        SecondCase.sealed(
            "a dip in 80CrV2", hold(1050, 15), 300, new Part("80CrV2", 3e-3, bell(0.6, 0.2e-3))),
        SecondCase.bare("bare 1084", hold(1000, 60), 1, 400, new Part("1084", 5e-3)),
        SecondCase.bare("covered 1084", hold(1150, 20), 0.5, 400, new Part("1084", 5e-3)),
        SecondCase.bare(
            "bare 1095, up and down", upAndDown(1150, 5, 5), 1, 400, new Part("1095", 5e-3)),
        SecondCase.bare(
            "1008 jacket on 1084 on 75Ni8",
            upAndDown(1150, 5, 10),
            1,
            200,
            new Part("1008", 0.6e-3),
            new Part("1084", 1e-3),
            new Part("75Ni8", 1e-3)));
  }

  static List<SecondCase> levels() {
    return List.of(
        new SecondCase(
            "ferrite rim, no metal eaten",
            List.of(new Part("C0.77", 2e-3)),
            hold(800, 60),
            1,
            STILL,
            300),
        SecondCase.bare(
            "ferrite rim under growing scale", hold(800, 60), 1, 300, new Part("C0.77", 2e-3)),
        SecondCase.sealed(
            "52100 on 1084, carbide left",
            hold(800, 60),
            300,
            new Part("52100", 0.5e-3),
            new Part("1084", 0.5e-3)));
  }
}
