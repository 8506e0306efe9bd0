package seamsoak.property.etch;

import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import seamsoak.numeric.Roots;
import seamsoak.property.Correlations;
import seamsoak.property.phase.PhaseLines;
import seamsoak.reference.Inputs;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;

/** What an etch shows, by the names of the reference folders. */
public final class EtchReferences {
  private static final double FROM = 900;

  private EtchReferences() {}

  public static void add(Map<String, ToDoubleFunction<Inputs>> all, Correlations k) {
    Etching e = k.etching();
    all.put("pearlite-start", in -> ferrite(k, in).pearliteCelsius(in.get("C")));
    all.put("extended-accm", in -> e.besideCementitePct(lines(k, in), in.get("celsius")));
    all.put("extended-a3", in -> e.besideFerritePct(lines(k, in), in.get("celsius")));
    all.put("ferrite-share-low", in -> shares(k, in).at(in.get("C")).low());
    all.put("ferrite-share-middle", in -> shares(k, in).at(in.get("C")).middle());
    all.put("ferrite-share-high", in -> shares(k, in).at(in.get("C")).high());
    all.put("ferrite-shows-low", in -> below(c -> shares(k, in).at(c).low()));
    all.put("ferrite-shows-middle", in -> below(c -> shares(k, in).at(c).middle()));
    all.put("ferrite-shows-high", in -> below(c -> shares(k, in).at(c).high()));
    all.put("li-niebuhr1998-pearlite-needed", in -> needed(e.pearlite(), in));
    all.put("li-niebuhr1998-ferrite-needed", in -> needed(e.ferrite(), in));
    all.put(
        "li-niebuhr1998-pearlite-drive",
        in -> e.pearlite().drive(in.get("below"), in.get("celsius")));
    all.put(
        "li-niebuhr1998-ferrite-drive",
        in -> e.ferrite().drive(in.get("below"), in.get("celsius")));
    all.put(
        "li-niebuhr1998-ferrite-early-drive",
        in -> e.ferrite().earlyDrive(in.get("below"), in.get("celsius")));
    all.put("whiteness-cooled", in -> e.whiteness().cooled(in.get("ferrite"), in.get("C")));
    all.put("whiteness-hardened", in -> e.whiteness().hardened(in.get("ferrite"), in.get("HV")));
  }

  /** What a look tells, and what is known of eyes. */
  public static void addLooks(Map<String, ToDoubleFunction<Inputs>> all, Correlations k) {
    Looks looks = k.etching().looks();
    Tone tone = k.etching().tone();
    all.put("tone-level", in -> tone.level(in.get("layer"), in.get("place")));
    all.put("tone-alloy", in -> tone.ofAlloy(in.get("brightness")));
    all.put("tone-grain", in -> tone.grain());
    all.put("look-seen", in -> looks.seen(in.get("over")));
    all.put("look-told", in -> looks.told(in.get("chance")));
    all.put("look-plain-most", in -> looks.plain()[2]);
    all.put("look-plain-usual", in -> looks.plain()[1]);
    all.put("look-width", in -> looks.widthFits(in.get("ln")));
    all.put("whiteness-strong", in -> k.etching().whiteness().strong());
    all.put("look-eye", in -> looks.eyeSigma());
    all.put("look-cooled", in -> looks.cooledSigma());
    all.put("look-hardened", in -> looks.hardenedSigma());
    all.put("look-not-carbon", in -> looks.notCarbon());
    all.put("look-not-carbon-contrast", in -> looks.notCarbonContrast(in.get("sigmas")));
  }

  private static double needed(LiNiebuhr1998Start start, Inputs in) {
    return start.needed(in.composition(), in.get("C"), in.get("number"));
  }

  /** The alloy of the row; where it names none, that of 1084. */
  private static PhaseLines lines(Correlations k, Inputs in) {
    Composition written = in.composition();
    return k.lines(
        in.has("Mn") || in.has("plain")
            ? written
            : Composition.of(Map.of(Element.C, 0.84, Element.MN, 0.75, Element.SI, 0.22)));
  }

  /** The alloy of 1084 cooled steadily; below the A1 that the row gives. */
  private static FreeFerrite ferrite(Correlations k, Inputs in) {
    double rate = in.has("perHour") ? in.get("perHour") / 3600 : in.get("perSecond");
    return new FreeFerrite(
        k.etching(), lines(k, in), in.get("a1"), Descent.steady(FROM, rate), in.get("number"));
  }

  private static FreeFerrite.Shares shares(Correlations k, Inputs in) {
    return ferrite(k, in).beside(in.get("layer"));
  }

  /** Carbon below which a twentieth of ferrite or more is left. */
  private static double below(DoubleUnaryOperator share) {
    return Roots.between(c -> share.applyAsDouble(c) - 0.05, 0.2, 0.8, 1e-6);
  }
}
