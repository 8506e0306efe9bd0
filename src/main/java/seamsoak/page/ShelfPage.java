package seamsoak.page;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
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
   * @param drawn whether there is a drawing of it
   */
  record Entry(String name, String file, String state, boolean drawn) {
    /** The file's name as it stands in an address. */
    String address() {
      return URLEncoder.encode(file, StandardCharsets.UTF_8);
    }
  }
}
