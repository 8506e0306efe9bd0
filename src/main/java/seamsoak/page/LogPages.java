package seamsoak.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Billet;
import seamsoak.billet.Heat;
import seamsoak.billet.Now;
import seamsoak.billet.Resolution;
import seamsoak.billet.Shop;
import seamsoak.billet.Step;
import seamsoak.billet.file.BilletReader;
import seamsoak.billet.file.Recorded;
import seamsoak.billet.file.WorkBook;
import seamsoak.chart.Charts;
import seamsoak.chart.figure.RealHeatFigures;
import seamsoak.data.Fault;
import seamsoak.data.ForeignText;
import seamsoak.data.Place;
import seamsoak.heatlog.CurveEntry;
import seamsoak.heatlog.HeatAdvisor;
import seamsoak.heatlog.HeatQuery;
import seamsoak.heatlog.LogQuestion;
import seamsoak.heatlog.LogSettings;
import seamsoak.heatlog.RealHeat;
import seamsoak.page.fire.LogDrop;
import seamsoak.page.fire.LogView;
import seamsoak.page.form.Kit;
import seamsoak.page.form.Proof;
import seamsoak.unit.UnitSystem;
import seamsoak.words.HeatWords;
import seamsoak.words.fire.FireWords;
import seamsoak.words.fire.LogWords;

/** The log of a heat: dropped, asked about, looked at, and written into the billet. */
final class LogPages {
  static final String PLACE = "/fire.log";

  private final Kit kit;
  private final LogSettings settings;
  private final Map<String, LogDrop> drops = new ConcurrentHashMap<>();

  LogPages(Kit kit, LogSettings settings) {
    this.kit = kit;
    this.settings = settings;
  }

  /** A stay in the fire of the file. */
  private record Stay(Step step, int heat) {
    static Optional<Stay> of(List<Step> steps, String value) {
      return all(steps).filter(s -> s.value().equals(value)).findFirst();
    }

    static Stream<Stay> all(List<Step> steps) {
      return steps.stream()
          .flatMap(
              s -> Stream.iterate(1, h -> h <= s.times(), h -> h + 1).map(h -> new Stay(s, h)));
    }

    /** The one that was done last, or else the first. */
    static Optional<Stay> last(List<Step> steps) {
      return Now.of(steps)
          .flatMap(
              n ->
                  all(steps)
                      .filter(
                          s ->
                              s.step().mark().number() < n.step().mark().number()
                                  || s.step() == n.step() && s.heat() <= n.heats())
                      .reduce((a, b) -> b))
          .or(() -> all(steps).findFirst());
    }

    String value() {
      return step.mark().number() + "." + heat;
    }

    String title() {
      return step.title() + (step.times() > 1 ? ", heat " + heat : "");
    }

    Heat planned() {
      return step.heat(heat);
    }
  }

  Answer looked(Desk desk) {
    return page(200, desk, "", "");
  }

  Answer posted(Desk desk, Asked asked) {
    try {
      if (asked.file().isPresent()) {
        Multipart.Sent sent = asked.file().get();
        drops.put(desk.id(), new LogDrop(ForeignText.of(sent.name(), sent.bytes()), Map.of()));
      }
      LogDrop drop = drops.get(desk.id());
      if (drop == null) {
        return page(409, desk, "", FireWords.NO_LOG);
      }
      drop = drop.with(asked.form());
      String meant = asked.field("meant");
      if (asked.field("how").equals("write")) {
        return write(desk, drop, asked);
      }
      Answer answer = page(200, desk, meant, "", drop);
      drops.put(desk.id(), drop);
      return answer;
    } catch (Fault fault) {
      return page(409, desk, asked.field("meant"), DeskPages.sentence(fault));
    }
  }

  private Answer write(Desk desk, LogDrop drop, Asked asked) {
    String id = asked.field("id");
    if (!id.matches("[0-9A-Za-z_-]{16,64}")) {
      throw new IllegalArgumentException("no entry");
    }
    boolean replace = asked.form().containsKey("replace");
    desk.record(
        id,
        now -> {
          Billet billet = BilletReader.read(desk.path(), now.text(), kit.names());
          Stay stay =
              Stay.of(billet.steps(), asked.field("meant"))
                  .orElseThrow(IllegalArgumentException::new);
          WorkBook book = WorkBook.of(desk.name(), now.text());
          if (book.hasHeat(stay.step(), stay.heat()) && !replace) {
            throw new Fault(Place.of(stay.title()), FireWords.recordedAlready(stay.title()), "");
          }
          RealHeat heat = heat(drop, billet, stay);
          WorkBook written =
              book.logged(stay.step(), stay.heat(), CurveEntry.name(heat), CurveEntry.of(heat));
          Recorded recorded =
              Recorded.of(
                  desk.path(),
                  book,
                  written,
                  stay.step().mark().number(),
                  kit.names(),
                  kit.correlations());
          return new Desk.Written(recorded.text(), stay.title());
        });
    drops.remove(desk.id());
    return Answer.see("/d/" + desk.id() + "/fire");
  }

  private HeatQuery query(LogDrop drop, Billet billet, Stay stay) {
    return drop.query(billet, settings, stay.planned().at().celsius());
  }

  private RealHeat heat(LogDrop drop, Billet billet, Stay stay) {
    Shop shop = new Shop(kit.correlations(), Assumptions.USUAL, Resolution.FINE);
    return drop.heat(new HeatAdvisor(shop, settings), query(drop, billet, stay));
  }

  private Answer page(int status, Desk desk, String meant, String notice) {
    LogDrop drop = drops.get(desk.id());
    try {
      return page(status, desk, meant, notice, drop);
    } catch (Fault fault) {
      drops.remove(desk.id());
      return page(409, desk, meant, DeskPages.sentence(fault), null);
    }
  }

  private Answer page(int status, Desk desk, String meant, String notice, LogDrop drop) {
    Desk.Now now = desk.now();
    Optional<Billet> sound = now.proof().sound();
    if (sound.isEmpty()) {
      return Pages.toMend(desk, FireWords.TO_MEND);
    }
    Billet billet = sound.get();
    Optional<Stay> stay = Stay.of(billet.steps(), meant).or(() -> Stay.last(billet.steps()));
    List<LogWords.Choice> heats =
        Stay.all(billet.steps()).map(s -> new LogWords.Choice(s.value(), s.title())).toList();
    List<LogWords.Question> questions = new ArrayList<>();
    List<String> worth = new ArrayList<>();
    String svg = "";
    if (drop != null && stay.isPresent()) {
      for (LogQuestion q : drop.open(query(drop, billet, stay.get()))) {
        questions.add(LogWords.of(q));
      }
      if (questions.isEmpty()) {
        UnitSystem units = kit.units(billet);
        RealHeat heat = heat(drop, billet, stay.get());
        HeatWords words = new HeatWords(units);
        worth.add(words.worth(heat));
        worth.add(words.course(heat));
        worth.addAll(words.remarks(heat));
        worth.addAll(words.leftOut(heat));
        svg = Proof.inline(Charts.svg(new RealHeatFigures(heat, units).figure()));
      }
    }
    boolean recorded =
        stay.isPresent()
            && WorkBook.of(desk.name(), now.text()).hasHeat(stay.get().step(), stay.get().heat());
    return Pages.log(
        status,
        new LogView(
            desk.id(),
            desk.name(),
            desk.file(),
            Seal.secret(),
            notice,
            drop == null ? "" : drop.text().file(),
            drop == null ? "" : drop.rows(),
            questions,
            drop == null
                ? List.of()
                : drop.told().entrySet().stream()
                    .map(e -> new LogWords.Choice(e.getKey(), e.getValue()))
                    .toList(),
            heats,
            stay.map(Stay::value).orElse(""),
            worth,
            svg,
            recorded));
  }
}
