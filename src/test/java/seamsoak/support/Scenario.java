package seamsoak.support;

import java.util.Locale;
import seamsoak.billet.Billet;

/**
 * A mosaic as the trade makes it, with the program's own defaults throughout: a bar an inch square
 * cut in four and restacked, drawn, cut in four and restacked again, forged to a rectangle, sliced
 * at 45 degrees, jacketed, welded, pressed to 3/8 in and drawn on to 3/16 in. Five sessions. Sizes
 * are common practice, no source; temperatures and times in the fire are usual ones.
 */
public final class Scenario {
  private Scenario() {}

  public static Billet of(double carbonPct) {
    String weld = "{ 'do': 'weld', 'heats': [{ 'at': '2250 F', 'for': '5 min', 'times': 3 }] }";
    String text =
        "{ 'stack': { 'layers': 1, 'steels': ['C%.2f Mn0.6 Si0.2'], 'thickness': ['1 in'],"
            + " 'width': '1 in', 'length': '16 in' }, 'steps': ["
            + " { 'do': 'restack', 'across': 2, 'high': 2 }, "
            + weld
            + ","
            + " { 'do': 'draw', 'thickness': '1 in', 'width': '1 in', 'heats':"
            + "   [{ 'at': '2150 F', 'for': '4 min', 'times': 5 }] },"
            + " { 'do': 'restack', 'across': 2, 'high': 2 }, "
            + weld
            + ","
            + " { 'do': 'draw', 'thickness': '1 in', 'width': '1-3/8 in', 'heats':"
            + "   [{ 'at': '2150 F', 'for': '4 min', 'times': 4 }] },"
            + " { 'do': 'tile', 'angle': '45 deg', 'slice': '5/8 in', 'jacket':"
            + "   { 'steel': '1008', 'thickness': '0.045 in', 'coating': 'none' } }, "
            + weld
            + ","
            + " { 'do': 'press', 'thickness': '3/8 in', 'heats':"
            + "   [{ 'at': '2150 F', 'for': '3 min', 'times': 3 }] },"
            + " { 'do': 'unjacket' },"
            + " { 'do': 'draw', 'thickness': '3/16 in', 'width': '1-3/4 in', 'heats':"
            + "   [{ 'at': '2050 F', 'for': '3 min', 'times': 3 }] } ] }";
    return Walks.billet(String.format(Locale.ROOT, text, carbonPct).replace('\'', '"'));
  }
}
