package seamsoak.plane;

import org.junit.jupiter.api.Test;
import seamsoak.data.DataFolder;
import seamsoak.steel.SteelTable;

class TryTest {
  @Test
  void t() {
    SteelTable table = SteelTable.load(DataFolder.packed());
    PlaneMetal steel = new AusteniteMetal(table.find("1084").get().analysis());
    PlaneMetal soft = new AusteniteMetal(table.find("1008").get().analysis());
    for (Mesh mesh : new Mesh[] {Mesh.USUAL, Mesh.FINE, new Mesh(10e-6, 0.04, 0.1, 0.4e-3, 4, 120)}) {
      long t0 = System.nanoTime();
      Mosaic.solid(
          steel,
          soft,
          new Furnace(PlaneFire.FORGE, mesh),
          (step, p) -> {
            System.out.printf(
                "step %d cells %d x %d, %.3f x %.3f mm  %.1f s%n",
                step,
                p.across().cells(),
                p.up().cells(),
                p.across().metres() * 1e3,
                p.up().metres() * 1e3,
                (System.nanoTime() - t0) * 1e-9);
            Reading r = new Reading(p, steel);
            for (int l = 0; l < p.up().line().length; l++) {
              System.out.printf("  y %-10s", p.up().line()[l].name());
              if (l > 0 && l < p.up().line().length - 1 || p.up().ring())
                for (int k = 1; k < 32; k += (k % 2 == 0 ? 1 : 1)) if (k % 4 == 0 || k == 11 || k == 13 || k == 3 || k==5)
                  System.out.printf(" %.4f", r.onLine(l, p.across().metres() * k / 32));
              System.out.println();
            }
            if (p.up().ring()) {
              for (int l = 0; l < p.across().line().length; l++) {
                System.out.printf("  x %-10s", p.across().line()[l].name());
                if (l > 0 && l < p.across().line().length - 1)
                  for (int k = 1; k < 32; k += (k % 2 == 0 ? 1 : 1)) if (k % 4 == 0 || k == 11 || k == 13 || k == 3 || k==5)
                    System.out.printf(" %.4f", r.onLineAcross(l, p.up().metres() * k / 32));
                System.out.println();
              }
              var pr = r.profile(0, p.across().metres() * 3 / 8, p.up().metres() / 8);
              System.out.printf(
                  "  1mm %.4f 2mm %.4f far %.4f half %.3f mm%n",
                  Reading.percentAt(pr, 1e-3),
                  Reading.percentAt(pr, 2e-3),
                  Reading.far(pr),
                  2e3 * Reading.halfOfDip(pr));
            }
          });
    }
  }
}
