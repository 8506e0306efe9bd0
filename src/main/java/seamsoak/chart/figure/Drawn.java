package seamsoak.chart.figure;

/**
 * A chart that is drawn.
 *
 * @param svg its file
 */
public record Drawn(Figure figure, byte[] svg) {}
