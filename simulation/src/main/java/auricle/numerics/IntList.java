package auricle.numerics;

import java.util.Arrays;

/** A growing list of ints. */
final class IntList {
  private int[] items = new int[16];
  private int size;

  void add(int item) {
    if (size == items.length) {
      items = Arrays.copyOf(items, 2 * size);
    }
    items[size++] = item;
  }

  void addAll(IntList other) {
    for (int k = 0; k < other.size; k++) {
      add(other.items[k]);
    }
  }

  int removeLast() {
    return items[--size];
  }

  int get(int k) {
    return items[k];
  }

  int size() {
    return size;
  }

  void clear() {
    size = 0;
  }

  int[] toArray() {
    return Arrays.copyOf(items, size);
  }
}
