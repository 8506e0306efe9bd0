package seamsoak.plan;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import seamsoak.billet.Billet;
import seamsoak.data.DataFolder;
import seamsoak.safety.CautionTable;
import seamsoak.state.Progress;
import seamsoak.state.SeamProfile;
import seamsoak.support.Walks;

/** Seams that lie closer together than a spot is wide still have a curve of carbon. */
class CloseSeamsTest {
  @Test
  void theyAreDrawnCellByCell() {
    Billet billet =
        Walks.billet(
            """
            { "units": "us",
              "stack": { "layers": 25, "steels": ["1095"], "thickness": ["1/8"], "width": 1.5, "length": 6 },
              "steps": [
                { "do": "weld", "heats": [{ "at": 2100, "for": 5 }] },
                { "do": "draw", "thickness": "3/4", "width": "1-1/2", "heats": [{ "at": 2050, "for": 3 }] },
                { "do": "restack", "across": 1, "high": 4 },
                { "do": "weld", "heats": [{ "at": 2200, "for": 5 }] },
                { "do": "draw", "thickness": "3/4", "width": "1-1/2", "heats": [{ "at": 2050, "for": 3 }] },
                { "do": "restack", "across": 1, "high": 2 },
                { "do": "weld", "heats": [{ "at": 2200, "for": 5 }] },
                { "do": "draw", "thickness": "1/4", "width": "1-1/2", "heats": [{ "at": 2050, "for": 3 }] }
              ]
            }
            """);
    SeamProfile seam =
        new PlanAdvisor(Walks.CORRELATIONS, CautionTable.load(DataFolder.packed()), 0)
            .advise(billet, Progress.NONE)
            .seam()
            .orElseThrow();
    seam.stages().forEach(s -> assertTrue(s.points().size() > 1, s.stage() + ": " + s.points()));
  }
}
