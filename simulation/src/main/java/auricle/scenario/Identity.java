package auricle.scenario;

import auricle.diagnostics.Findings;
import auricle.yamlfile.Entry;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** Refuses keys that would say who the patient is. */
final class Identity {
  private static final Set<String> KEYS =
      Set.of(
          "name",
          "surname",
          "forename",
          "initials",
          "dob",
          "born",
          "address",
          "street",
          "postcode",
          "phone",
          "telephone",
          "email",
          "mrn",
          "nhs_number",
          "insurance",
          "hospital_number",
          "record_number",
          "case_number",
          "photo");

  private static final Pattern PARTS =
      Pattern.compile(
          "(first|last|full|family|given)_?name|patient|birth|passport|social_security");

  /** Where names are those of steps. */
  private static final Pattern STEP = Pattern.compile("(/right|/left)?/plan/\\d+/[^/]+");

  private Identity() {}

  /** Adds a finding for every such key. */
  static void look(Entry entry, Findings findings) {
    for (String key : entry.keys()) {
      Entry child = entry.get(key);
      if (tells(key.toLowerCase(Locale.ROOT)) && !STEP.matcher(entry.at()).matches()) {
        findings.error(
            child.at(),
            "'" + key + "', which would tell who the patient is",
            "no identity of a patient: no name, no date of birth, no number of a record",
            "Remove it; say what the scenario shows under 'title', and the age under"
                + " 'ear.age_years'.");
      } else {
        look(child, findings);
      }
    }
    List<Entry> items = entry.items();
    items.forEach(item -> look(item, findings));
  }

  private static boolean tells(String key) {
    return KEYS.contains(key) || PARTS.matcher(key).find();
  }
}
