package drivetrain.docs;

import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.DocTree;
import com.sun.source.doctree.ParamTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.ModifiersTree;
import com.sun.source.tree.PrimitiveTypeTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.TypeParameterTree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.lang.model.type.TypeKind;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/**
 * Finds what the public interface of a source file leaves undocumented: types, methods, constructors, constants,
 * parameters, record components and return values. A record's canonical constructor needs no comment, since its
 * parameters are the components, which the record documents; javadoc of Java 17 would want them twice.
 */
final class MissingComments extends TreePathScanner<Void, Void> {

    private final DocTrees trees;
    private final CompilationUnitTree unit;
    private final List<String> found = new ArrayList<>();

    private MissingComments(DocTrees trees, CompilationUnitTree unit) {
        this.trees = trees;
        this.unit = unit;
    }

    /** What is missing in some source files, each as {@code file:line: what}. */
    static List<String> in(Collection<Path> files) throws IOException {
        if (files.isEmpty()) {
            return List.of();
        }
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, StandardCharsets.UTF_8)) {
            var sources = manager.getJavaFileObjectsFromPaths(files);
            JavacTask task = (JavacTask) compiler.getTask(null, manager, null, List.of(), null, sources);
            DocTrees trees = DocTrees.instance(task);
            List<String> found = new ArrayList<>();
            for (CompilationUnitTree unit : task.parse()) {
                MissingComments scanner = new MissingComments(trees, unit);
                scanner.scan(unit, null);
                found.addAll(scanner.found);
            }
            return found;
        }
    }

    @Override
    public Void visitClass(ClassTree type, Void unused) {
        if (!isExported(type.getModifiers())) {
            return null;
        }
        Stream<String> components =
                components(type).map(field -> field.getName().toString());
        expect(
                "type " + type.getSimpleName(),
                Stream.concat(components, typeParameters(type.getTypeParameters())),
                false);
        boolean constructed = members(type, MethodTree.class).anyMatch(method -> method.getReturnType() == null);
        if (type.getKind() == Tree.Kind.CLASS && !constructed) {
            report("explicit constructor of " + type.getSimpleName());
        }
        return super.visitClass(type, unused);
    }

    @Override
    public Void visitMethod(MethodTree method, Void unused) {
        boolean overrides = method.getModifiers().getAnnotations().stream()
                .anyMatch(
                        annotation -> annotation.getAnnotationType().toString().equals("Override"));
        if (isExported(method.getModifiers()) && !overrides && !isCanonicalConstructor(enclosing(), method)) {
            Stream<String> parameters = method.getParameters().stream()
                    .map(parameter -> parameter.getName().toString());
            boolean returns = method.getReturnType() != null
                    && !(method.getReturnType() instanceof PrimitiveTypeTree primitive
                            && primitive.getPrimitiveTypeKind() == TypeKind.VOID);
            expect(
                    method.getName().contentEquals("<init>") ? "constructor" : "method " + method.getName(),
                    Stream.concat(parameters, typeParameters(method.getTypeParameters())),
                    returns);
        }
        return null;
    }

    @Override
    public Void visitVariable(VariableTree field, Void unused) {
        if (isExported(field.getModifiers())) {
            expect("field " + field.getName(), Stream.empty(), false);
        }
        return null;
    }

    private void expect(String what, Stream<String> parameters, boolean returns) {
        DocCommentTree comment = trees.getDocCommentTree(getCurrentPath());
        if (comment == null) {
            report("comment of " + what);
            return;
        }
        Set<String> documented = comment.getBlockTags().stream()
                .filter(ParamTree.class::isInstance)
                .map(tag -> ((ParamTree) tag).getName().getName().toString())
                .collect(Collectors.toSet());
        parameters
                .filter(parameter -> !documented.contains(parameter))
                .forEach(parameter -> report("@param " + parameter + " of " + what));
        if (returns && !hasReturn(comment)) {
            report("@return of " + what);
        }
    }

    private static boolean hasReturn(DocCommentTree comment) {
        return Stream.concat(comment.getBlockTags().stream(), comment.getFullBody().stream())
                .anyMatch(tag -> tag.getKind() == DocTree.Kind.RETURN);
    }

    private boolean isExported(ModifiersTree modifiers) {
        Set<Modifier> flags = modifiers.getFlags();
        boolean implied = getCurrentPath().getParentPath().getLeaf() instanceof ClassTree type
                && (type.getKind() == Tree.Kind.INTERFACE || type.getKind() == Tree.Kind.ANNOTATION_TYPE);
        return !flags.contains(Modifier.PRIVATE)
                && (implied || flags.contains(Modifier.PUBLIC) || flags.contains(Modifier.PROTECTED));
    }

    private static boolean isCanonicalConstructor(ClassTree type, MethodTree method) {
        return type.getKind() == Tree.Kind.RECORD
                && method.getReturnType() == null
                && declarations(method.getParameters().stream()).equals(declarations(components(type)));
    }

    private static List<String> declarations(Stream<? extends VariableTree> variables) {
        return variables
                .map(variable -> variable.getType() + " " + variable.getName())
                .toList();
    }

    private static Stream<VariableTree> components(ClassTree type) {
        return type.getKind() == Tree.Kind.RECORD
                ? members(type, VariableTree.class)
                        .filter(field -> !field.getModifiers().getFlags().contains(Modifier.STATIC))
                : Stream.empty();
    }

    private ClassTree enclosing() {
        return (ClassTree) getCurrentPath().getParentPath().getLeaf();
    }

    private static <T extends Tree> Stream<T> members(ClassTree type, Class<T> kind) {
        return type.getMembers().stream().filter(kind::isInstance).map(kind::cast);
    }

    private static Stream<String> typeParameters(List<? extends TypeParameterTree> parameters) {
        return parameters.stream().map(parameter -> parameter.getName().toString());
    }

    private void report(String what) {
        long at = trees.getSourcePositions()
                .getStartPosition(unit, getCurrentPath().getLeaf());
        found.add(unit.getSourceFile().getName() + ":" + unit.getLineMap().getLineNumber(at) + ": no " + what);
    }
}
