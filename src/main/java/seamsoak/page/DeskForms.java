package seamsoak.page;

import java.util.Map;
import java.util.Optional;
import seamsoak.data.Fault;

/** What is sent of a billet: changes, saving, plan A, throwing away. */
record DeskForms(Desks desks, Work work, DeskPages pages, MyShop shop) {
  /** What comes of it; nothing where no form of ours sends that. */
  Optional<Answer> posted(Desk desk, String what, Asked asked) {
    try {
      return switch (what) {
        case "drop" -> Optional.of(drop(desk));
        case "save" -> Optional.of(save(desk, asked.field("how")));
        case "edit" -> Optional.of(edit(desk, asked.form()));
        case "keep" -> Optional.of(pages.keep(desk, asked.form()));
        default -> Optional.empty();
      };
    } catch (Fault fault) {
      return Optional.of(pages.bench(409, desk, DeskPages.sentence(fault), false));
    }
  }

  private Answer drop(Desk desk) {
    work.stop(desk.id());
    desks.drop(desk);
    return Answer.see("/");
  }

  private Answer edit(Desk desk, Map<String, String> form) {
    Sent sent = Sent.of(form);
    boolean saves = sent.act().equals("save");
    boolean takes = sent.act().equals("shop");
    Desk.Done done = desk.change(sent.number(), sent.fields(), saves || takes ? "" : sent.act());
    if (!done.all()) {
      return pages.bench(409, desk, done.notice(), false);
    }
    if (takes) {
      desk.becomes(shop.into(desk.now().text()));
    }
    return saves ? save(desk, "") : Answer.see("/d/" + desk.id());
  }

  private Answer save(Desk desk, String how) {
    switch (how) {
      case "mine" -> desk.keepMine();
      case "theirs" -> desk.takeTheirs();
      case "beside" -> {
        Desk beside = desks.begin(desks.free(desk.name()), desk.now().text());
        beside.save();
        desks.drop(desk);
        return Answer.see("/d/" + beside.id());
      }
      default -> {
        if (desk.isChangedBeside()) {
          return pages.bench(409, desk, "", true);
        }
        desk.save();
      }
    }
    return Answer.see("/d/" + desk.id());
  }
}
