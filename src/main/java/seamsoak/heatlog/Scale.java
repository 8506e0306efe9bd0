package seamsoak.heatlog;

/** Scales a thermometer reads in. */
public enum Scale {
  CELSIUS,
  FAHRENHEIT,
  KELVIN;

  double celsius(double reading) {
    return switch (this) {
      case CELSIUS -> reading;
      case FAHRENHEIT -> (reading - 32) / 1.8;
      case KELVIN -> reading - 273.15;
    };
  }
}
