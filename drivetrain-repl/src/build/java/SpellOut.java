import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodNode;

/**
 * Spells out what a jar leaves to be put together at run time: every lambda and method reference gets a class of its own, as an anonymous class would have, and
 * every joined text a method that joins it; so do the equality, the hash code and the text that the compiler gives a record.
 *
 * <p>Java puts these together when an expression is first reached, which takes a third of a millisecond each time. What lies in the jar, and in an archive of
 * classes, takes a twentieth of that. What the program does is the same.
 *
 * <p>Usage: {@code java -cp ASM SpellOut COMPILED JAR FILES}. The first jar is read, the second written, and a third gets all of its files but the classes:
 * a start that finds its classes in an archive need not look through a jar of some thousand of them for a table. Every class of the new jar is linked once, so that
 * one which the Java verifier does not take fails the build. Expressions of a serializable or an intersection type are left as they are, and so are classes from
 * before nests (Java 11).
 */
final class SpellOut {

    /** The files of the jar by name, its manifest first. */
    private final Map<String, byte[]> entries =
            new TreeMap<>(Comparator.comparing((String name) -> !name.equals(JarFile.MANIFEST_NAME))
                    .thenComparing(Comparator.naturalOrder()));

    private final Map<String, ClassNode> classes = new TreeMap<>();
    private final List<ClassNode> spelled = new ArrayList<>();
    private int joined;
    private int records;

    public static void main(String[] args) throws IOException {
        SpellOut all = new SpellOut();
        all.read(Path.of(args[0]));
        List.copyOf(all.classes.values()).forEach(all::spell);
        all.writeFiles(Path.of(args[2]));
        Path jar = Path.of(args[1]);
        Path fresh = jar.resolveSibling(jar.getFileName() + ".tmp");
        all.write(fresh);
        int linked = link(fresh, all);
        Files.move(fresh, jar, StandardCopyOption.REPLACE_EXISTING);
        System.out.printf(
                "%d lambdas, %d texts and %d methods of records spelled out, %d classes linked%n",
                all.spelled.size(), all.joined, all.records, linked);
    }

    private void read(Path jar) throws IOException {
        try (JarFile file = new JarFile(jar.toFile())) {
            for (var entry : (Iterable<JarEntry>) file.stream().filter(entry -> !entry.isDirectory())::iterator) {
                byte[] bytes = file.getInputStream(entry).readAllBytes();
                entries.put(entry.getName(), bytes);
                if (entry.getName().endsWith(".class") && !entry.getName().startsWith("META-INF/")) {
                    ClassNode node = new ClassNode();
                    new ClassReader(bytes).accept(node, 0);
                    if ((node.version & 0xFFFF) >= Opcodes.V11) {
                        classes.put(node.name, node);
                    }
                }
            }
        }
    }

    private void spell(ClassNode host) {
        int own = 0;
        for (MethodNode method : List.copyOf(host.methods)) {
            for (AbstractInsnNode step : method.instructions.toArray()) {
                if (step instanceof InvokeDynamicInsnNode text && JoinedText.isOne(text)) {
                    method.instructions.set(step, JoinedText.method(host, "$join" + joined++, text));
                } else if (step instanceof InvokeDynamicInsnNode asked && RecordMethods.isOne(asked)) {
                    method.instructions.set(step, RecordMethods.method(host, "$" + asked.name, asked));
                    records++;
                } else if (step instanceof InvokeDynamicInsnNode made && LambdaClass.isOne(made, host)) {
                    LambdaClass lambda = new LambdaClass(host.name + "$$" + ++own, host, made);
                    classes.get(lambda.nest()).visitNestMember(lambda.name());
                    spelled.add(lambda.node());
                    method.instructions.set(step, lambda.use());
                }
            }
        }
    }

    private void write(Path jar) throws IOException {
        classes.values().forEach(node -> entries.put(node.name + ".class", bytes(node, 0)));
        spelled.forEach(node -> entries.put(node.name + ".class", bytes(node, ClassWriter.COMPUTE_MAXS)));
        write(jar, name -> true);
    }

    private void writeFiles(Path jar) throws IOException {
        write(
                jar,
                name -> !name.endsWith(".class")
                        && (!name.startsWith("META-INF/") || name.startsWith("META-INF/jline/")));
    }

    private void write(Path jar, Predicate<String> chosen) throws IOException {
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(jar))) {
            out.setLevel(Deflater.BEST_COMPRESSION);
            for (String name : entries.keySet()) {
                if (chosen.test(name)) {
                    ZipEntry entry = new ZipEntry(name);
                    entry.setTimeLocal(LocalDateTime.of(1980, 2, 1, 0, 0)); // the same bytes whenever it is built
                    out.putNextEntry(entry);
                    out.write(entries.get(name));
                    out.closeEntry();
                }
            }
        }
    }

    private static byte[] bytes(ClassNode node, int flags) {
        ClassWriter writer = new ClassWriter(flags);
        node.methods.forEach(method -> method.localVariables = null); // for a debugger only; line numbers stay
        node.accept(writer);
        return writer.toByteArray();
    }

    /** Links the classes that were touched: asking for the methods of a class verifies it. */
    private static int link(Path jar, SpellOut all) throws IOException {
        int linked = 0;
        ClassLoader above = ClassLoader.getPlatformClassLoader();
        try (URLClassLoader loader = new URLClassLoader(new URL[] {jar.toUri().toURL()}, above)) {
            List<ClassNode> touched = new ArrayList<>(all.classes.values());
            touched.addAll(all.spelled);
            for (ClassNode node : touched) {
                try {
                    Class.forName(node.name.replace('/', '.'), false, loader).getDeclaredMethods();
                    linked++;
                } catch (NoClassDefFoundError | ClassNotFoundException absent) {
                    // an optional dependency of a library, which is not in the jar either before or after
                }
            }
        }
        return linked;
    }
}
