package seamsoak.chart;

import java.awt.geom.Rectangle2D;

/** A picture on a chart, below all that is drawn. */
record Picture(byte[] png, Rectangle2D place) {}
