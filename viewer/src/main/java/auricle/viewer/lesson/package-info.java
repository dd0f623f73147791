/** Lessons: a scenario with steps of text, questions and views, in files of their own format. */
@NullMarked
package auricle.viewer.lesson;

import org.jspecify.annotations.NullMarked;
