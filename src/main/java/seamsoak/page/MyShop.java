package seamsoak.page;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import seamsoak.billet.file.BilletReader;
import seamsoak.data.Fault;
import seamsoak.data.Faults;
import seamsoak.data.JsonEditor;
import seamsoak.data.JsonPath;
import seamsoak.data.JsonValue.ObjectValue;
import seamsoak.data.Mistake;
import seamsoak.data.PrivateFile;
import seamsoak.data.TextFile;
import seamsoak.page.form.Acts;
import seamsoak.page.form.Bench;
import seamsoak.page.form.Card;
import seamsoak.page.form.Editing;
import seamsoak.page.form.Kit;
import seamsoak.page.form.Mendings;
import seamsoak.page.form.Starts;
import seamsoak.words.PageWords;

/**
 * What the smith's shop has, entered once and copied into each new billet: the parts of a billet
 * file that are the shop's and not the billet's, kept in a file of the user's own.
 */
final class MyShop {
  /** The keys of a billet file that are the shop's. */
  static final List<String> KEYS = List.of("equipment", "quenchants", "soak");

  private static final String NOTHING = "{ \"units\": \"us\" }\n";
  private static final JsonPath UNITS = JsonPath.of("units");
  private static final Pattern ACT = Pattern.compile("quenchant|out quenchants\\[[0-9]{1,2}]");
  private static final Pattern BARE = Pattern.compile("[0-9]+(\\.[0-9]+)?");

  private final Path file;
  private final Kit kit;
  private String text;
  private int number = 1;

  /**
   * What a page of it shows.
   *
   * @param number of its text
   * @param general which units it is written in
   * @param cards of all else
   * @param others what is wrong that no field tells
   * @param kept whether it is in its file just so
   * @param notice what came of the last change, if that was not what was wanted
   */
  record View(
      int number,
      Card general,
      List<Card> cards,
      List<Mendings.Link> faults,
      List<String> others,
      boolean kept,
      String notice) {}

  /**
   * @param file need not be there; one that cannot be read is as if it were not
   */
  MyShop(Path file, Kit kit) {
    this.file = file;
    this.kit = kit;
    this.text = kept().orElse(NOTHING);
  }

  private Optional<String> kept() {
    try {
      String there = Files.exists(file) ? TextFile.read(file.toString(), file) : "";
      return there.isEmpty() || !(editing(there).root() instanceof ObjectValue)
          ? Optional.empty()
          : Optional.of(there);
    } catch (Fault unreadable) {
      return Optional.empty();
    }
  }

  private Editing editing(String of) {
    return Editing.of(of, kit.book());
  }

  synchronized View view(String notice) {
    Bench.ShopView cards = Bench.shop(editing(text), mistakes(), kit);
    boolean kept = kept().filter(text::equals).isPresent();
    return new View(
        number, cards.general(), cards.rest(), cards.faults(), cards.others(), kept, notice);
  }

  /** The reader's own word on it, as a part of a billet that is sound but for it. */
  private List<Mistake> mistakes() {
    Editing shop = editing(text);
    boolean metric = isMetric(shop);
    String billet = with(Starts.of("three-layers", metric, "shop", kit.book()), KEYS);
    Faults faults = new Faults();
    faults.tried(() -> BilletReader.read(file, billet, kit.names()));
    return faults.mistakes();
  }

  private static boolean isMetric(Editing text) {
    return text.value(UNITS).equals("metric");
  }

  /** Which units a new billet begins with. */
  synchronized boolean isMetric() {
    return isMetric(editing(text));
  }

  /**
   * Changes it, and keeps it once nothing is wrong with it; {@link Fault} where it cannot be kept.
   *
   * @return what was not done because it was changed in another window meanwhile; blank if all was
   */
  synchronized String change(Sent sent) {
    if (sent.number() != number) {
      return PageWords.CHANGED_ELSEWHERE;
    }
    Editing changed = editing(text);
    for (Map.Entry<String, String> field : sent.fields().entrySet()) {
      String key = field.getKey().replaceFirst("[.\\[].*", "");
      if (!KEYS.contains(key) && !key.equals("units")) {
        throw new IllegalArgumentException("no field of a shop");
      }
      changed = changed.set(field.getKey(), field.getValue());
    }
    if (!sent.act().isEmpty()) {
      if (!ACT.matcher(sent.act()).matches()) {
        throw new IllegalArgumentException("no act of a shop");
      }
      changed = new Acts(changed).done(sent.act());
    }
    text = changed.text();
    number++;
    if (mistakes().isEmpty()) {
      PrivateFile.write(file, text);
    }
    return "";
  }

  /** Which of its parts a billet has otherwise; none where nothing was entered. */
  synchronized List<String> differs(Editing billet) {
    List<String> all = new ArrayList<>();
    for (String key : there()) {
      JsonPath path = JsonPath.of(key);
      Object mine = own(editing(text), path, isMetric(billet));
      Optional<Object> its = billet.editor().at(path).map(Editing::planned);
      if (its.filter(mine::equals).isEmpty()) {
        all.add(key);
      }
    }
    return all;
  }

  /** What of it was entered. */
  synchronized List<String> there() {
    JsonEditor shop = editing(text).editor();
    return KEYS.stream().filter(k -> shop.at(JsonPath.of(k)).isPresent()).toList();
  }

  /** A billet's text with what the shop has in it, as far as nothing is wrong with that. */
  synchronized String into(String billet) {
    return mistakes().isEmpty() ? with(billet, there()) : billet;
  }

  private String with(String billet, List<String> keys) {
    Editing shop = editing(text);
    JsonEditor editor = new JsonEditor("the billet", billet);
    boolean metric = isMetric(editing(billet));
    for (String key : keys) {
      JsonPath path = JsonPath.of(key);
      if (shop.editor().at(path).isPresent()) {
        editor = editor.set(path, own(shop, path, metric));
      }
    }
    return editor.text();
  }

  /** As it is written in a billet: a bare number takes its unit along where that has others. */
  private static Object own(Editing shop, JsonPath path, boolean metric) {
    Object value = Editing.planned(shop.editor().at(path).orElseThrow());
    return isMetric(shop) == metric ? value : told(value, "", isMetric(shop));
  }

  private static Object told(Object value, String key, boolean metric) {
    if (value instanceof Map<?, ?> object) {
      Map<String, Object> all = new LinkedHashMap<>();
      object.forEach((k, v) -> all.put((String) k, told(v, (String) k, metric)));
      return all;
    }
    if (value instanceof List<?> list) {
      return list.stream().map(v -> told(v, key, metric)).toList();
    }
    return BARE.matcher(value.toString()).matches() ? value + unit(key, metric) : value;
  }

  /** What a bare number of the shop's is in. */
  private static String unit(String key, boolean metric) {
    return key.equals("most") ? " min" : metric ? " C" : " F";
  }
}
