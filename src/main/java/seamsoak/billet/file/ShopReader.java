package seamsoak.billet.file;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import seamsoak.billet.Bath;
import seamsoak.billet.Blade;
import seamsoak.billet.Equipment;
import seamsoak.billet.Kiln;
import seamsoak.billet.OldWord;
import seamsoak.data.Fault;
import seamsoak.data.JsonValue.NumberValue;
import seamsoak.data.JsonValue.TextValue;
import seamsoak.property.hardening.QuenchantTable;
import seamsoak.steel.Steel;
import seamsoak.unit.Hardness;
import seamsoak.unit.HeatingRate;
import seamsoak.unit.Length;
import seamsoak.unit.Temperature;

/** Reads what a billet file says of the blade and of the shop. */
final class ShopReader {
  /** The name of a quenchant of the table. */
  static final Reader<String> QUENCHANT = ShopReader::quenchant;

  /** A quenchant by its kind alone. */
  static final Reader<Bath> BATH_KIND =
      entry -> new Bath(quenchant(entry), Optional.empty(), Optional.empty(), entry.place());

  /** The limits of a kiln, or that there is none. */
  static final Reader<Kiln> KILN_OR_NONE = ShopReader::kiln;

  private static final Key<Optional<Length>> THICKNESS =
      Key.optional("thickness", new Key.Example("\"1/8 in\"", "\"4 mm\""), Quantities::size);
  private static final Key<Optional<Length>> WIDTH =
      Key.optional("width", new Key.Example("\"1-1/4 in\"", "\"32 mm\""), Quantities::size);
  private static final Key<Optional<Length>> LENGTH =
      Key.optional("length", new Key.Example("\"9 in\"", "\"230 mm\""), Quantities::size);
  private static final Key<Optional<Blade.Bevel>> BEVEL =
      Key.optional("bevel", "\"full\"", Values.choice(Blade.Bevel.class));
  private static final Key<Optional<Hardness>> HARDNESS =
      Key.optional("hardness", "\"60 HRC\"", Quantities::hardness);

  private static final Pattern BARE = Pattern.compile("[0-9][0-9./ -]*");

  /** What is said of the edge: how thick it is or, as was once written, the steel that cuts. */
  private record Edge(Optional<Length> thickness, Optional<Steel> steel) {}

  private static final Key<Optional<Edge>> EDGE =
      Key.optional("edge", new Key.Example("\"0.04 in\"", "\"1 mm\""), ShopReader::edge);
  private static final Key<Optional<Steel>> CUTS =
      Key.optional("cuts", "\"1084\"", SteelReader.STEEL);
  static final Form<Blade> BLADE =
      new Form<>(
          List.of(THICKNESS, WIDTH, LENGTH, BEVEL, EDGE, HARDNESS, CUTS),
          f ->
              new Blade(
                  f.get(THICKNESS),
                  f.get(WIDTH),
                  f.get(LENGTH),
                  f.get(BEVEL),
                  f.get(EDGE).flatMap(Edge::thickness),
                  f.get(HARDNESS),
                  f.get(CUTS).or(() -> f.get(EDGE).flatMap(Edge::steel))));

  private static final Key<Optional<Temperature>> HIGHEST =
      Key.optional("highest", new Key.Example("\"2200 F\"", "\"1200 C\""), Quantities::temperature);
  private static final Key<Optional<HeatingRate>> RAMP =
      Key.optional("ramp", new Key.Example("\"1000 F/h\"", "\"600 C/h\""), Quantities::rate);
  static final Form<Kiln> KILN =
      new Form<>(List.of(HIGHEST, RAMP), f -> new Kiln(true, f.get(HIGHEST), f.get(RAMP)));

  private static final Key<Optional<Equipment.Forge>> FORGE =
      Key.optional("forge", "\"gas\"", Values.choice(Equipment.Forge.class));
  private static final Key<Optional<Kiln>> HAS_KILN =
      Key.optional(
          "kiln",
          new Key.Example("{ \"highest\": \"2200 F\" }", "{ \"highest\": \"1200 C\" }"),
          ShopReader.KILN_OR_NONE);
  private static final Key<Optional<Equipment.Salt>> SALT =
      Key.optional("salt", "\"none\"", Values.choice(Equipment.Salt.class));
  private static final Key<Optional<Equipment.Cold>> COLD =
      Key.optional("cold", "\"dry ice\"", Values.choice(Equipment.Cold.class));
  private static final Key<Optional<Equipment.Room>> SHOP =
      Key.optional("shop", "\"open\"", Values.choice(Equipment.Room.class));
  private static final Key<Optional<Equipment.Descale>> DESCALE =
      Key.optional("descale", "\"acid\"", Values.choice(Equipment.Descale.class));
  static final Form<Equipment> EQUIPMENT =
      new Form<>(
          List.of(FORGE, HAS_KILN, SALT, COLD, SHOP, DESCALE),
          f ->
              new Equipment(
                  f.get(FORGE),
                  f.get(HAS_KILN),
                  f.get(SALT),
                  f.get(COLD),
                  f.get(SHOP),
                  f.get(DESCALE)));

  private static final Key<String> KIND =
      Key.required("kind", "\"oil-fast\"", ShopReader.QUENCHANT);
  private static final Key<Optional<Temperature>> AT =
      Key.optional("at", new Key.Example("\"120 F\"", "\"50 C\""), Quantities::bath);
  private static final Key<Optional<Temperature>> FLASH =
      Key.optional("flash", new Key.Example("\"350 F\"", "\"180 C\""), Quantities::bath);
  static final Form<Bath> BATH =
      new Form<>(
          List.of(KIND, AT, FLASH),
          f -> new Bath(f.get(KIND), f.get(AT), f.get(FLASH), f.at(KIND).place()));

  private ShopReader() {}

  private static String quenchant(Entry entry) {
    String name = Values.text(entry);
    QuenchantTable table = entry.reading().names().quenchants();
    if (table.find(name).isEmpty()) {
      throw entry.fault(
          "there is no quenchant '" + Fault.shown(name) + "'",
          entry.reading().names().trade().means("kind", name).orElseGet(() -> table.instead(name)));
    }
    return name;
  }

  private static Edge edge(Entry entry) {
    if (isLength(entry)) {
      return new Edge(Optional.of(Quantities.size(entry)), Optional.empty());
    }
    Edge edge = new Edge(Optional.empty(), Optional.of(SteelReader.steel(entry)));
    entry.old(OldWord.Kind.EDGE);
    return edge;
  }

  /** A bare number is a steel only where there is one of that name. */
  private static boolean isLength(Entry entry) {
    if (!(entry.value() instanceof TextValue text)) {
      return entry.value() instanceof NumberValue;
    }
    String written = text.text().strip();
    if (BARE.matcher(written).matches()) {
      return entry.reading().names().steel().apply(written).isEmpty();
    }
    try {
      Length.parse(written);
      return true;
    } catch (IllegalArgumentException no) {
      return Gauges.number(written).isPresent();
    }
  }

  /** Where a blade names the steel that cuts. */
  static Optional<Entry> cutting(Entry blade) {
    return blade.member(CUTS.name()).or(() -> blade.member(EDGE.name()));
  }

  private static Kiln kiln(Entry entry) {
    if (entry.value() instanceof TextValue text) {
      if (text.text().strip().equalsIgnoreCase("none")) {
        return Kiln.NONE;
      }
      throw entry.refused("it is \"none\", or its limits in braces: highest and ramp");
    }
    return KILN.read(entry);
  }
}
