package seamsoak.page;

import java.util.List;

/**
 * What the shelf shows.
 *
 * @param folder that it is
 * @param billets in it, and those that are in no file yet
 * @param metric whether a new one begins in metric units
 * @param notice what came of the last wish, if that could not be done
 */
record ShelfPage(String folder, List<Entry> billets, boolean metric, String notice) {
  /**
   * A billet.
   *
   * @param name of its file, without the ending
   * @param file by which it is opened
   * @param state in words
   */
  record Entry(String name, String file, String state) {}
}
