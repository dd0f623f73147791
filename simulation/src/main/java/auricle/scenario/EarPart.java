package auricle.scenario;

import auricle.anatomy.Side;
import auricle.diagnostics.Finding;
import auricle.yamlfile.Entry;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import tools.jackson.core.JsonPointer;

/**
 * What a file says of one ear: what stands under its side, and what stands at the top for both.
 *
 * @param root of the tree
 * @param key {@code right} or {@code left}; empty in a file of one ear
 * @param side which ear
 */
record EarPart(Entry root, String key, Side side) {
  private static final Pattern BITE =
      Pattern.compile(
          "(.*/fold_suture)/(scapha|concha)_(upper|lower)_(level_percent|from_fold_mm)");

  private Entry own() {
    return key.isEmpty() ? root : root.get(key);
  }

  /** JSON pointer of the block of this ear. */
  String at() {
    return own().at();
  }

  /** A section, the ear's own before the common one. */
  Optional<Entry> find(String section) {
    return own().find(section).or(() -> root.find(section));
  }

  /** A key of a section, the ear's own before the common one. */
  Optional<Entry> find(String section, String name) {
    return own().get(section).find(name).or(() -> root.get(section).find(name));
  }

  /** A section as it stands in both places, the common one first. */
  List<Entry> both(String section) {
    return key.isEmpty()
        ? root.find(section).stream().toList()
        : Stream.of(root.find(section), own().find(section)).flatMap(Optional::stream).toList();
  }

  /** A finding told at the place in the file that it comes from. */
  Finding settle(Finding finding) {
    return finding.where().startsWith("/") ? finding.at(place(finding.where())) : finding;
  }

  private String place(String pointer) {
    Matcher bite = BITE.matcher(pointer);
    if (bite.matches()) {
      return place(bitePlace(bite));
    }
    if (exists(pointer) || !pointer.startsWith(at() + "/")) {
      return pointer;
    }
    String common = common(pointer);
    String section = "/" + common.split("/", -1)[1];
    return exists(common) || !exists(at() + section) && exists(section) ? common : pointer;
  }

  /** Where the number of a bite stands: by itself, or for two or four of them at once. */
  private String bitePlace(Matcher bite) {
    String suture = bite.group(1);
    String common = common(suture);
    if (exists(suture + "/bites") || exists(common + "/bites")) {
      return suture + "/bites/" + bite.group(2) + "_" + bite.group(3) + "/" + bite.group(4);
    }
    boolean level = bite.group(4).equals("level_percent");
    return suture + (level ? "/level_percent" : "/" + bite.group(2) + "_from_fold_mm");
  }

  /** A place below the ear's own block as it would be at the top of the file. */
  private String common(String pointer) {
    return pointer.startsWith(at() + "/") ? pointer.substring(at().length()) : pointer;
  }

  private boolean exists(String pointer) {
    return !root.node().at(JsonPointer.compile(pointer)).isMissingNode();
  }
}
