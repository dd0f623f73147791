package auricle.yamlfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** What a file says beside its entries. */
class YamlCommentsTest {
  @Test
  void theHeadEndsWhereTheEntriesBegin() {
    YamlComments comments = YamlComments.of("# an idea\n#\n\n# more\ntitle: a\n\nnotes: b\n");
    assertEquals("# an idea\n#\n\n# more\n", comments.head());
    assertFalse(comments.among(), "an empty line is no comment");
    assertEquals(new YamlComments("", false), YamlComments.of("title: a\n"));
  }

  @Test
  void whatStandsAmongTheEntriesIsFound() {
    assertTrue(YamlComments.of("# head\ntitle: a # beside\n").among());
    assertTrue(YamlComments.of("title: a\n# between\nnotes: b\n").among());
    assertTrue(YamlComments.of("plan:\n  - scoring: {}   # in a list\n").among());
  }

  @Test
  void aSignWithinWordsIsNoComment() {
    assertFalse(YamlComments.of("title: \"a # b\"\nnotes: |\n  # as it is written\n").among());
  }

  @Test
  void whatCannotBeReadMayHaveSome() {
    assertTrue(YamlComments.of("# head\ntitle: [a\n").among());
  }
}
