package seamsoak.billet.file;

import seamsoak.data.Fault;

/** Reads one entry, or throws a {@link Fault} with all that is wrong with it. */
interface Reader<T> {
  T read(Entry entry);
}
