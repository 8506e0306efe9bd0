package seamsoak.chart;

import java.util.Arrays;
import java.util.Comparator;
import java.util.PriorityQueue;

/**
 * Code words for symbols, shorter for frequent ones, as RFC 1951 (DEFLATE) has them: told by their
 * lengths alone.
 *
 * @param lengths in bits, 0 for symbols that never come
 * @param words their bits, the first one lowest
 */
record Huffman(int[] lengths, int[] words) {
  /** A symbol, or two nodes below. */
  private record Node(long count, int order, int symbol, Node left, Node right) {}

  /** For symbols that come so often, no word longer than so many bits. */
  static Huffman of(long[] counts, int mostBits) {
    long[] flatter = counts.clone();
    int[] lengths = lengths(flatter);
    while (Arrays.stream(lengths).max().orElse(0) > mostBits) {
      for (int i = 0; i < flatter.length; i++) {
        flatter[i] = (flatter[i] + 1) / 2;
      }
      lengths = lengths(flatter);
    }
    return new Huffman(lengths, words(lengths, mostBits));
  }

  private static int[] lengths(long[] counts) {
    PriorityQueue<Node> open =
        new PriorityQueue<>(Comparator.comparingLong(Node::count).thenComparingInt(Node::order));
    for (int i = 0; i < counts.length; i++) {
      if (counts[i] > 0) {
        open.add(new Node(counts[i], i, i, null, null));
      }
    }
    int order = counts.length;
    // a tree needs two leaves
    for (int i = 0; open.size() < 2; i++) {
      if (counts[i] == 0) {
        open.add(new Node(1, order++, i, null, null));
      }
    }
    while (open.size() > 1) {
      Node a = open.remove();
      Node b = open.remove();
      open.add(new Node(a.count + b.count, order++, -1, a, b));
    }
    int[] lengths = new int[counts.length];
    deepen(open.remove(), 0, lengths);
    return lengths;
  }

  private static void deepen(Node node, int depth, int[] lengths) {
    if (node.symbol >= 0) {
      lengths[node.symbol] = depth;
    } else {
      deepen(node.left, depth + 1, lengths);
      deepen(node.right, depth + 1, lengths);
    }
  }

  private static int[] words(int[] lengths, int mostBits) {
    int[] next = new int[mostBits + 2];
    for (int length : lengths) {
      next[length + 1] += length > 0 ? 1 : 0;
    }
    for (int bits = 1; bits < next.length; bits++) {
      next[bits] = (next[bits - 1] + next[bits]) << 1;
    }
    int[] words = new int[lengths.length];
    for (int i = 0; i < words.length; i++) {
      if (lengths[i] > 0) {
        int word = next[lengths[i]]++;
        words[i] = Integer.reverse(word) >>> (Integer.SIZE - lengths[i]);
      }
    }
    return words;
  }
}
