package seamsoak.heat;

/** What crosses the face of a body into it, W/m2, by time in s and temperature of the face in K. */
public interface FaceLaw {
  /** The flux. */
  double into(double seconds, double kelvin);

  /** Its slope by temperature, never positive. */
  double slope(double seconds, double kelvin);
}
