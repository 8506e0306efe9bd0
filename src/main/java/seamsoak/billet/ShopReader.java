package seamsoak.billet;

import java.util.List;
import seamsoak.data.Fault;
import seamsoak.data.JsonValue;
import seamsoak.steel.Steel;

/**
 * Reads what a billet file says of the blade and of the shop.
 *
 * @param steels looks up the steel of the edge
 * @param stack which has to hold it
 */
record ShopReader(SteelReader steels, Stack stack) {
  Blade blade(JsonValue value, String name) {
    Fields f = Fields.of(value, name, List.of("thickness", "width", "hardness", "edge"));
    return new Blade(
        f.optional("thickness", Values::size),
        f.optional("width", Values::size),
        f.optional("hardness", Values::hardness),
        f.optional("edge", this::edge));
  }

  private Steel edge(JsonValue value, String name) {
    Steel steel = steels.read(value, name);
    if (!stack.steels().contains(steel)) {
      throw new Fault(
          value.place(),
          "edge is '" + steel.id() + "', which is not in the stack",
          "it is one of "
              + String.join(
                  ", ", stack.steels().stream().map(Steel::id).distinct().sorted().toList()));
    }
    return steel;
  }

  static Equipment equipment(JsonValue value, String name) {
    Fields f = Fields.of(value, name, List.of("forge", "kiln", "salt", "cold", "shop", "descale"));
    return new Equipment(
        f.optional("forge", Values.choice(Equipment.Forge.class)),
        f.optional("kiln", ShopReader::kiln),
        f.optional("salt", Values.choice(Equipment.Salt.class)),
        f.optional("cold", Values.choice(Equipment.Cold.class)),
        f.optional("shop", Values.choice(Equipment.Room.class)),
        f.optional("descale", Values.choice(Equipment.Descale.class)));
  }

  private static Kiln kiln(JsonValue value, String name) {
    if (value instanceof JsonValue.TextValue text) {
      if (text.text().equals("none")) {
        return Kiln.NONE;
      }
      throw new Fault(
          value.place(),
          name + " is " + Values.described(value),
          "it is \"none\", or its limits in braces: highest and ramp");
    }
    Fields f = Fields.of(value, name, List.of("highest", "ramp"));
    return new Kiln(
        true, f.optional("highest", Values::temperature), f.optional("ramp", Values::rate));
  }

  static Bath bath(JsonValue value, String name) {
    Fields f = Fields.of(value, "a quenchant", List.of("kind", "at", "flash"));
    return new Bath(
        f.required("kind", Values::text),
        f.optional("at", Values::bath),
        f.optional("flash", Values::bath),
        f.place("kind"));
  }
}
