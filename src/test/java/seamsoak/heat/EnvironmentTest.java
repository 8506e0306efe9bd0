package seamsoak.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Surroundings that rise, fall or stay, and the heat they give. */
class EnvironmentTest {
  @ParameterizedTest
  @CsvSource({
    "300, 900, 0, 300", "300, 900, 100, 500", "300, 900, 300, 900", "300, 900, 400, 900",
    "900, 300, 0, 900", "900, 300, 100, 700", "900, 300, 300, 300", "900, 300, 400, 300"
  })
  void goesStraightAndThenStays(double from, double to, double seconds, double expected) {
    assertEquals(expected, Course.ramp(from, to, 2).kelvin(seconds), 1e-9);
  }

  @Test
  void settlesWhenItArrives() {
    assertEquals(300, Course.ramp(300, 900, 2).settledSeconds(), 1e-12);
    assertEquals(300, Course.ramp(900, 300, 2).settledSeconds(), 1e-12);
    assertEquals(0, Course.steady(900).settledSeconds());
    assertEquals(900, Course.steady(900).kelvin(1e6));
  }

  @Test
  void goesThroughItsCornersOneAfterTheOther() {
    Course course = Course.through(new double[] {5, 10, 40}, new double[] {300, 900, 600});
    assertEquals(300, course.kelvin(0), 1e-12);
    assertEquals(660, course.kelvin(8), 1e-9);
    assertEquals(900, course.kelvin(10), 1e-9);
    assertEquals(700, course.kelvin(30), 1e-9);
    assertEquals(600, course.kelvin(1000), 1e-12);
    assertEquals(5, course.cornerAfter(0));
    assertEquals(10, course.cornerAfter(5));
    assertEquals(40, course.cornerAfter(Math.nextDown(10.0)));
    assertEquals(Double.POSITIVE_INFINITY, course.cornerAfter(40));
  }

  @Test
  void cornersHaveToRiseInTime() {
    double[] warm = {300, 400};
    assertThrows(IllegalArgumentException.class, () -> Course.through(new double[] {1, 1}, warm));
    assertThrows(IllegalArgumentException.class, () -> Course.through(new double[] {1}, warm));
    assertThrows(
        IllegalArgumentException.class,
        () -> Course.through(new double[] {1, 2}, new double[] {300, Double.NaN}));
  }

  /** By hand: 10 x 600 W/m2 by the film, 0.8 x 5.67e-8 x (900^4 - 300^4) by radiation. */
  @Test
  void givesHeatByFilmAndRadiation() {
    Environment kiln = Environment.steady(900, 10, 0.8);
    assertEquals(6000 + 0.8 * 5.670374e-8 * (6.561e11 - 8.1e9), kiln.into(0, 300), 0.1);
    assertEquals(0, kiln.into(0, 900), 1e-9);
    assertTrue(kiln.into(0, 1000) < 0);
  }

  @ParameterizedTest
  @ValueSource(doubles = {300, 700, 1200})
  void theSlopeIsThatOfTheHeat(double kelvin) {
    Environment kiln = new Environment(Course.ramp(300, 900, 2), 10, 0.8);
    double difference = (kiln.into(50, kelvin + 0.01) - kiln.into(50, kelvin - 0.01)) / 0.02;
    assertEquals(difference, kiln.slope(50, kelvin), 1e-6 * Math.abs(difference));
  }
}
