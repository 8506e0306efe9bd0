package seamsoak.page;

/** Whoever looks after desks. */
interface Watch {
  /** One is otherwise than it was. */
  void changed();

  /** One is kept at once, as far as it is in no file. */
  void keep(Desk desk);
}
