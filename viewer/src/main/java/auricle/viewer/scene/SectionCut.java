package auricle.viewer.scene;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The lines in which a horizontal plane cuts an ear. */
public final class SectionCut {
  private SectionCut() {}

  /**
   * The cut at a height.
   *
   * @param z_mm height in the ear frame
   * @return chains of places, the longest first
   */
  public static List<List<Spot>> at(EarSurface surface, double z_mm) {
    Map<Long, Spot> spots = new HashMap<>();
    Map<Long, List<Long>> next = new HashMap<>();
    int[] t = surface.triangles();
    for (int i = 0; i < t.length; i += 3) {
      List<Long> ends = new ArrayList<>();
      for (int k = 0; k < 3; k++) {
        int a = t[i + k];
        int b = t[i + (k + 1) % 3];
        if (crosses(surface.points(), a, b, z_mm)) {
          long key = (long) Math.min(a, b) << 32 | Math.max(a, b);
          spots.computeIfAbsent(key, e -> crossing(surface.points(), a, b, z_mm));
          ends.add(key);
        }
      }
      if (ends.size() == 2) {
        next.computeIfAbsent(ends.get(0), e -> new ArrayList<>()).add(ends.get(1));
        next.computeIfAbsent(ends.get(1), e -> new ArrayList<>()).add(ends.get(0));
      }
    }
    return chains(spots, next);
  }

  /** Height of a level, % of the height of the ear as it is, mm. */
  public static double height_mm(EarSurface surface, double level_percent) {
    double low = Double.MAX_VALUE;
    double high = -Double.MAX_VALUE;
    for (int v = 0; v < surface.vertexCount(); v++) {
      low = Math.min(low, surface.points()[3 * v + 2]);
      high = Math.max(high, surface.points()[3 * v + 2]);
    }
    return low + level_percent / 100 * (high - low);
  }

  private static boolean crosses(float[] p, int a, int b, double z) {
    return p[3 * a + 2] < z != p[3 * b + 2] < z;
  }

  private static Spot crossing(float[] p, int a, int b, double z) {
    double share = (z - p[3 * a + 2]) / (p[3 * b + 2] - p[3 * a + 2]);
    Spot from = new Spot(p[3 * a], p[3 * a + 1], p[3 * a + 2]);
    return from.towards(new Spot(p[3 * b], p[3 * b + 1], p[3 * b + 2]), share);
  }

  private static List<List<Spot>> chains(Map<Long, Spot> spots, Map<Long, List<Long>> next) {
    List<List<Spot>> chains = new ArrayList<>();
    Map<Long, Boolean> used = new HashMap<>();
    for (long start : next.keySet()) {
      if (!used.containsKey(start)) {
        Deque<Spot> chain = new ArrayDeque<>();
        chain.add(at(spots, start));
        used.put(start, true);
        for (int way = 0; way < 2; way++) {
          grow(chain, start, way == 0, spots, next, used);
        }
        chains.add(List.copyOf(chain));
      }
    }
    chains.sort((a, b) -> Integer.compare(b.size(), a.size()));
    return chains;
  }

  private static void grow(
      Deque<Spot> chain,
      long start,
      boolean atEnd,
      Map<Long, Spot> spots,
      Map<Long, List<Long>> next,
      Map<Long, Boolean> used) {
    long here = start;
    boolean more = true;
    while (more) {
      more = false;
      for (long n : next.getOrDefault(here, List.of())) {
        if (!more && !used.containsKey(n)) {
          used.put(n, true);
          if (atEnd) {
            chain.addLast(at(spots, n));
          } else {
            chain.addFirst(at(spots, n));
          }
          here = n;
          more = true;
        }
      }
    }
  }

  private static Spot at(Map<Long, Spot> spots, long key) {
    return spots.getOrDefault(key, new Spot(0, 0, 0));
  }
}
