package seamsoak.plane;

import java.util.ArrayList;
import java.util.List;

/** The metals of a plate, each once, and which one each cell is of. */
record Kinds(PlaneMetal[] metals, int[] ofCell) {
  static Kinds of(Plate plate) {
    List<PlaneMetal> found = new ArrayList<>();
    int n = plate.across().cells();
    int[] ofCell = new int[plate.ratio().length];
    for (int a = 0; a < plate.across().blocks(); a++) {
      for (int b = 0; b < plate.up().blocks(); b++) {
        PlaneMetal metal = plate.metal()[a][b];
        if (!found.contains(metal)) {
          found.add(metal);
        }
        for (int j = plate.up().face()[b]; j < plate.up().face()[b + 1]; j++) {
          for (int i = plate.across().face()[a]; i < plate.across().face()[a + 1]; i++) {
            ofCell[j * n + i] = found.indexOf(metal);
          }
        }
      }
    }
    return new Kinds(found.toArray(PlaneMetal[]::new), ofCell);
  }
}
