package auricle.architecture;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.ModifiersTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** Lengths of the methods below a folder of sources, and what lacks its description. */
final class SourceMethods {
  private final List<Integer> lengths = new ArrayList<>();
  private final List<String> undescribed = new ArrayList<>();
  private final List<String> longest = new ArrayList<>();
  private final int limit;

  /**
   * @param limit lines from which on a method is named by {@link #tooLong}
   */
  SourceMethods(Path folder, int limit) throws IOException {
    this.limit = limit;
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, null);
        Stream<Path> files = Files.walk(folder)) {
      List<Path> sources = files.filter(f -> f.toString().endsWith(".java")).sorted().toList();
      JavacTask task =
          (JavacTask)
              compiler.getTask(
                  null, manager, null, null, null, manager.getJavaFileObjectsFromPaths(sources));
      DocTrees docs = DocTrees.instance(task);
      for (CompilationUnitTree unit : task.parse()) {
        new Visitor(unit, docs).scan(unit, false);
      }
    }
  }

  /** Number of methods with a body. */
  int count() {
    return lengths.size();
  }

  /** Share of the methods that have at most so many lines, from the name to the closing brace. */
  double shareUpTo(int lines) {
    return lengths.isEmpty()
        ? 1
        : (double) lengths.stream().filter(l -> l <= lines).count() / lengths.size();
  }

  /** Methods above the limit. */
  List<String> tooLong() {
    return longest;
  }

  /** Types, and public methods of public types, that have no javadoc. */
  List<String> undescribed() {
    return undescribed;
  }

  /** Goes through one file; the argument says whether the types around are public. */
  private final class Visitor extends TreePathScanner<Void, Boolean> {
    private final CompilationUnitTree unit;
    private final DocTrees docs;

    Visitor(CompilationUnitTree unit, DocTrees docs) {
      this.unit = unit;
      this.docs = docs;
    }

    @Override
    public Void visitClass(ClassTree type, Boolean open) {
      boolean top = getCurrentPath().getParentPath().getLeaf() instanceof CompilationUnitTree;
      boolean visible = isPublic(type.getModifiers()) && (top || open);
      if (top || visible) {
        demandDescription(type.getSimpleName().toString());
      }
      return super.visitClass(type, visible);
    }

    @Override
    public Void visitMethod(MethodTree method, Boolean open) {
      ModifiersTree modifiers = method.getModifiers();
      boolean inherited =
          modifiers.getAnnotations().stream()
              .anyMatch(a -> a.getAnnotationType().toString().equals("Override"));
      Tree owner = getCurrentPath().getParentPath().getLeaf();
      boolean visible = isPublic(modifiers) || owner.getKind() == Tree.Kind.INTERFACE;
      if (open && visible && !inherited && method.getReturnType() != null) {
        demandDescription(method.getName().toString());
      }
      if (method.getBody() != null) {
        measure(method);
      }
      return super.visitMethod(method, open);
    }

    private boolean isPublic(ModifiersTree modifiers) {
      return modifiers.getFlags().contains(Modifier.PUBLIC);
    }

    private void demandDescription(String name) {
      TreePath path = getCurrentPath();
      if (docs.getDocCommentTree(path) == null) {
        undescribed.add(place(line(path.getLeaf(), false)) + " " + name);
      }
    }

    private void measure(MethodTree method) {
      // the body's brace stands on the last line of the head
      long first = line(method.getBody(), false);
      int length = (int) (line(method, true) - first + 1);
      lengths.add(length);
      if (length > limit) {
        longest.add(place(first) + " " + method.getName() + ": " + length + " lines");
      }
    }

    private long line(Tree tree, boolean end) {
      long at =
          end
              ? docs.getSourcePositions().getEndPosition(unit, tree)
              : docs.getSourcePositions().getStartPosition(unit, tree);
      return unit.getLineMap().getLineNumber(at);
    }

    private String place(long line) {
      Path file = Path.of(unit.getSourceFile().toUri());
      return file.getFileName() + ":" + line;
    }
  }
}
