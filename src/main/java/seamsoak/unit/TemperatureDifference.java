package seamsoak.unit;

/** To be completed: parse and format. */
public record TemperatureDifference(double kelvin) {}
