package seamsoak.heatlog;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import seamsoak.billet.Exposure;
import seamsoak.billet.LoggedCurve.Tip;
import seamsoak.billet.Shop;
import seamsoak.data.Fault;
import seamsoak.data.Place;
import seamsoak.heat.HeatCurve;
import seamsoak.heatlog.LogCurve.InGaps;
import seamsoak.property.SteelGrains;
import seamsoak.property.forging.Atmosphere;
import seamsoak.single.Decarburization;
import seamsoak.single.HeatRemark;
import seamsoak.unit.Temperature;

/** Says what a heat was worth, from its log and what is known beside it. */
public final class HeatAdvisor {
  /** So long altogether a piece was at its own hold, s. */
  private static final double HOLD_SECONDS = 60;

  /** A hold is told as a shop sets it, K. */
  private static final double HOLD_STEP = 5;

  /** No piece of steel cools so far from one row to the next. */
  private static final double FALL_KELVIN = 300;

  private static final double ROT_FROM_C = 800;
  private static final double ROT_TO_C = 1050;
  private static final double ROT_MINUTES = 30;

  private final Shop shop;
  private final LogSettings settings;

  public HeatAdvisor(Shop shop, LogSettings settings) {
    this.shop = shop;
    this.settings = settings;
  }

  /** What has to be known of a heat beside its log and is not. */
  public static List<LogQuestion> open(HeatQuery query) {
    List<LogQuestion> open = new ArrayList<>();
    if (query.tip().isEmpty()) {
      open.add(new LogQuestion.WhereTip());
    }
    if (query.tip().filter(t -> t == Tip.AIR).isPresent()) {
      if (query.loadedMinute().isEmpty()) {
        open.add(new LogQuestion.WhenLoaded());
      }
      if (query.section().isEmpty()) {
        open.add(new LogQuestion.HowThick());
      }
    }
    return open;
  }

  /** Below it nothing counts, C. */
  public double startC(HeatQuery query) {
    return CarbonRate.of(shop.metal(query.steel())).startCelsius();
  }

  /** Of a heat that leaves nothing open. */
  public RealHeat of(LogReading.Read log, HeatQuery query) {
    Couple couple =
        query.couple().orElseGet(() -> settings.find("K").orElseThrow(IllegalStateException::new));
    Readings in =
        log.readings()
            .below(couple.wire().rangeCelsius())
            .within(
                60 * query.loadedMinute().orElse(0.0),
                query.removedMinute().map(m -> 60 * m).orElse(Double.POSITIVE_INFINITY));
    if (in.seconds().length < 2) {
      throw new Fault(
          Place.of(log.file()),
          "no readings of '" + Fault.shown(log.column()) + "' are left that count",
          "choose another column or other times");
    }
    LogCurve curve = LogCurve.of(in);
    CarbonRate rate = CarbonRate.of(shop.metal(query.steel()));
    Heating heating = new Heating(query, curve, rate);
    Followed cooler = heating.follow(c -> c, InGaps.COOLER_END, 1);
    Followed hotter = heating.follow(c -> c, InGaps.HOTTER_END, 1);
    double heldC =
        HOLD_STEP
            * Math.round(
                (Followed.heldKelvin(cooler.core(), HOLD_SECONDS) - Temperature.ZERO_CELSIUS)
                    / HOLD_STEP);
    double planned = query.plannedC().orElse(heldC);
    double peak = cooler.core().peakKelvin() - Temperature.ZERO_CELSIUS;
    boolean counts = peak > rate.startCelsius() && planned > rate.startCelsius();
    Credit credit =
        counts ? heating.credit(couple, planned, cooler) : new Credit(0, 0, 0, 0, List.of());
    HeatCurve hot = Followed.above(cooler.core(), rate.startCelsius() + Temperature.ZERO_CELSIUS);
    HeatCurve glowing = Followed.above(hotter.face(), Shop.BLACK_KELVIN);
    HeatCurve growing =
        Followed.above(hotter.face(), rate.startCelsius() + Temperature.ZERO_CELSIUS);
    return new RealHeat(
        log,
        query,
        couple,
        planned,
        query.plannedC().isEmpty(),
        in,
        curve,
        heating.isInAir() ? points(cooler.core(), curve.startMinute()) : List.of(),
        peak,
        rate.startCelsius(),
        hot.seconds() / 60,
        credit,
        glowing.segments().isEmpty()
            ? Optional.empty()
            : Optional.of(
                Decarburization.of(
                    shop,
                    query.steel(),
                    glowing,
                    query.face().orElse(Exposure.OPEN),
                    Atmosphere.UNSTATED)),
        growing.segments().isEmpty() ? Optional.empty() : Optional.of(grain(query, growing)),
        taken(query),
        remarks(log, in, couple, curve, credit, peak, rate),
        HeatRemark.of(shop.correlations(), Math.max(peak, curve.peakC()), query.steel()).stream()
            .filter(r -> r.what() == HeatRemark.What.MELTS || r.what() == HeatRemark.What.BURNS)
            .toList());
  }

  private double grain(HeatQuery query, HeatCurve growing) {
    HeatCurve.Corners corners = growing.corners();
    double metres =
        new SteelGrains(shop.correlations(), shop.analysis(query.steel()))
            .metresAfter(0, corners.seconds(), corners.kelvin());
    return shop.correlations().forging().grainNumber().number(metres);
  }

  private static List<LogCurve.Point> points(HeatCurve core, double startMinute) {
    List<LogCurve.Point> points = new ArrayList<>();
    double at = 60 * startMinute;
    for (HeatCurve.Segment s : core.segments()) {
      if (points.isEmpty()) {
        points.add(new LogCurve.Point(at / 60, s.fromKelvin() - Temperature.ZERO_CELSIUS));
      }
      at += s.seconds();
      points.add(new LogCurve.Point(at / 60, s.toKelvin() - Temperature.ZERO_CELSIUS));
    }
    return points;
  }

  private static List<RealHeat.Taken> taken(HeatQuery query) {
    List<RealHeat.Taken> taken = new ArrayList<>();
    boolean air = query.tip().filter(t -> t == Tip.AIR).isPresent();
    if (query.couple().isEmpty()) {
      taken.add(RealHeat.Taken.COUPLE);
    }
    if (query.plannedC().isEmpty()) {
      taken.add(RealHeat.Taken.PLANNED);
    }
    if (!query.steelTold()) {
      taken.add(RealHeat.Taken.STEEL);
    }
    if (query.loadedMinute().isEmpty()) {
      taken.add(RealHeat.Taken.LOADED);
    }
    if (query.removedMinute().isEmpty()) {
      taken.add(RealHeat.Taken.REMOVED);
    }
    if (air) {
      taken.add(RealHeat.Taken.COLD);
    }
    if (query.face().isEmpty()) {
      taken.add(RealHeat.Taken.OPEN_FACE);
    }
    return taken;
  }

  private List<LogRemark> remarks(
      LogReading.Read log,
      Readings in,
      Couple couple,
      LogCurve curve,
      Credit credit,
      double peak,
      CarbonRate rate) {
    List<LogRemark> remarks = new ArrayList<>();
    if (peak <= rate.startCelsius()) {
      remarks.add(new LogRemark.NeverHot(peak, rate.startCelsius()));
    }
    if (log.readings().usualSeconds() > Readings.GAP_SECONDS) {
      remarks.add(new LogRemark.FewRows(log.readings().usualSeconds()));
    }
    if (curve.peakC() > couple.wire().toCelsius()) {
      remarks.add(
          new LogRemark.BeyondTolerance(
              couple.wire().type() + " " + couple.wire().grade(),
              couple.wire().toCelsius(),
              curve.peakC()));
    }
    in.fall(FALL_KELVIN, rate.startCelsius())
        .ifPresent(
            i ->
                remarks.add(
                    new LogRemark.Falls(
                        in.seconds()[i] / 60, in.celsius()[i], in.celsius()[i + 1])));
    HeatCurve read = curve.heat(InGaps.COOLER_END);
    double rot =
        (Followed.above(read, ROT_FROM_C + Temperature.ZERO_CELSIUS).seconds()
                - Followed.above(read, ROT_TO_C + Temperature.ZERO_CELSIUS).seconds())
            / 60;
    if (couple.wire().type().equals("K") && rot > ROT_MINUTES) {
      remarks.add(new LogRemark.MayRot(rot));
    }
    if (!log.others().isEmpty()) {
      remarks.add(new LogRemark.OtherColumns(log.column(), log.others().size()));
    }
    if (2 * credit.gapMinutes() > credit.minutes() && credit.minutes() > 0) {
      remarks.add(new LogRemark.GapsDecide(credit.gapMinutes()));
    }
    return remarks;
  }

  /** One heat, as read and as it may have been. */
  private final class Heating {
    private final HeatQuery query;
    private final LogCurve curve;
    private final CarbonRate rate;

    Heating(HeatQuery query, LogCurve curve, CarbonRate rate) {
      this.query = query;
      this.curve = curve;
      this.rate = rate;
    }

    boolean isInAir() {
      return query.tip().orElseThrow() == Tip.AIR;
    }

    Followed follow(DoubleUnaryOperator read, InGaps inGaps, double heating) {
      LogCurve as = curve.with(read);
      return isInAir()
          ? Followed.inAir(
              as, inGaps, shop.correlations().sections(), query.section().orElseThrow(), heating)
          : Followed.read(as, inGaps);
    }

    private double minutes(DoubleUnaryOperator read, InGaps inGaps, double heating, double at) {
      return Credit.minutes(follow(read, inGaps, heating).core(), rate, at);
    }

    Credit credit(Couple couple, double planned, Followed cooler) {
      double minutes = Credit.minutes(cooler.core(), rate, planned);
      double inGaps =
          Credit.minutesInGaps(cooler.core(), curve.startMinute(), curve.gaps(), rate, planned);
      List<Credit.Doubt> doubts = new ArrayList<>();
      doubts.add(
          new Credit.Doubt(
              Credit.Source.THERMOMETER,
              minutes(c -> c - high(couple, c), InGaps.COOLER_END, 1, planned),
              minutes(c -> c + low(couple, c), InGaps.COOLER_END, 1, planned)));
      if (!curve.gaps().isEmpty()) {
        doubts.add(
            new Credit.Doubt(
                Credit.Source.GAPS,
                minutes - inGaps,
                minutes(c -> c, InGaps.HOTTER_END, 1, planned)));
      }
      if (isInAir()) {
        double off = settings.value("heating") / 100;
        doubts.add(
            new Credit.Doubt(
                Credit.Source.HEATING,
                minutes(c -> c, InGaps.COOLER_END, 1 - off, planned),
                minutes(c -> c, InGaps.COOLER_END, 1 + off, planned)));
      }
      return Credit.of(minutes, inGaps, doubts);
    }

    /** How low it may have read: wire, logger and cold junction are off either way. */
    private double low(Couple couple, double celsius) {
      double both = Math.hypot(settings.value("logger"), settings.value("junction"));
      return Math.hypot(couple.wire().toleranceKelvin(celsius), both);
    }

    /** How high: a couple used before drifts up, a tip on the face sees the fire. */
    private double high(Couple couple, double celsius) {
      double up = couple.used() ? couple.wire().driftKelvin() : 0;
      double fire = query.tip().orElseThrow() == Tip.SURFACE ? settings.value("surface") : 0;
      return Math.hypot(low(couple, celsius), Math.hypot(up, fire));
    }
  }
}
