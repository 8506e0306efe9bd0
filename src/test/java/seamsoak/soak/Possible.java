package seamsoak.soak;

import java.util.List;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Billet;
import seamsoak.billet.Resolution;
import seamsoak.billet.Shop;
import seamsoak.billet.Stage;
import seamsoak.data.DataFolder;
import seamsoak.safety.CautionTable;
import seamsoak.schedule.ScheduleAdvisor;
import seamsoak.soak.Histories.Sample;
import seamsoak.state.AsCooled;
import seamsoak.state.EtchBand;
import seamsoak.state.Progress;
import seamsoak.support.Walks;

/** What shows over possible histories of a billet, as tests ask for it. */
final class Possible {
  private Possible() {}

  static SoakSamples of(Billet billet, List<Sample> histories, double[] celsius) {
    List<Stage> stages = Walks.walk(billet);
    return SoakSamples.of(
        SampleWalks.begin(billet, Walks.CORRELATIONS, histories, 0, Progress.NONE),
        asked(billet, stages, celsius));
  }

  static SoakSamples.Asked asked(Billet billet, List<Stage> stages, double[] celsius) {
    return new SoakSamples.Asked(
        Sightings.of(billet),
        stages,
        AsCooled.of(shop(), billet.stack()),
        toCome(billet, stages),
        worth(billet, stages),
        Walks.CORRELATIONS.etching(),
        celsius);
  }

  /** What the finished blade shows. */
  static EtchBand blade(Billet billet) {
    return toCome(billet, Walks.walk(billet)).finished();
  }

  static ToCome toCome(Billet billet, List<Stage> stages) {
    return new ScheduleAdvisor(
            billet, shop(), CautionTable.load(DataFolder.packed()), Walks.last(stages))
        .toCome();
  }

  static Worth worth(Billet billet, List<Stage> stages) {
    return Worth.of(Walks.last(stages).piece(), toCome(billet, stages).cycles());
  }

  private static Shop shop() {
    return new Shop(Walks.CORRELATIONS, Assumptions.USUAL, Resolution.FINE);
  }
}
