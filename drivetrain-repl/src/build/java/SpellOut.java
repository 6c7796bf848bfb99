import java.io.IOException;
import java.lang.invoke.MethodType;
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
import java.util.stream.Collectors;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.commons.GeneratorAdapter;
import org.objectweb.asm.commons.Method;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.FieldInsnNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodInsnNode;
import org.objectweb.asm.tree.MethodNode;

/**
 * Spells out what a jar leaves to be put together at run time: every lambda and method reference gets a class of its own, as an anonymous class would have, and
 * every joined text a method that joins it.
 *
 * <p>Java puts these together when an expression is first reached, which takes a third of a millisecond each time. What lies in the jar, and in an archive of
 * classes, takes a twentieth of that. What the program does is the same.
 *
 * <p>Usage: {@code java -cp ASM SpellOut.java COMPILED JAR FILES}. The first jar is read, the second written, and a third gets all of its files but the classes:
 * a start that finds its classes in an archive need not look through a jar of some thousand of them for a table. Every class of the new jar is linked once, so that
 * one which the Java verifier does not take fails the build. Expressions of a serializable or an intersection type are left as they are, and so are classes from
 * before nests (Java 11).
 */
final class SpellOut {

    private static final String FACTORY = "java/lang/invoke/LambdaMetafactory";
    private static final String JOINER = "java/lang/invoke/StringConcatFactory";
    private static final char ARGUMENT = '\u0001';
    private static final char CONSTANT = '\u0002';
    private static final Type BUILDER = Type.getType(StringBuilder.class);
    private static final Type STRING = Type.getType(String.class);
    private static final Type OBJECT = Type.getType(Object.class);
    private static final String INSTANCE = "INSTANCE";

    /** The primitive types by the names of their boxes. */
    private static final Map<String, Type> BOXES = List.of(
                    Boolean.class,
                    Character.class,
                    Byte.class,
                    Short.class,
                    Integer.class,
                    Long.class,
                    Float.class,
                    Double.class)
            .stream()
            .collect(Collectors.toMap(
                    Class::getName,
                    box -> Type.getType(MethodType.methodType(box).unwrap().returnType())));

    /** The files of the jar by name, its manifest first. */
    private final Map<String, byte[]> entries =
            new TreeMap<>(Comparator.comparing((String name) -> !name.equals(JarFile.MANIFEST_NAME))
                    .thenComparing(Comparator.naturalOrder()));

    private final Map<String, ClassNode> classes = new TreeMap<>();
    private final List<ClassNode> spelled = new ArrayList<>();
    private int joined;

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
                "%d lambdas and %d texts spelled out, %d classes linked%n", all.spelled.size(), all.joined, linked);
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
        int count = spelled.size();
        for (MethodNode method : List.copyOf(host.methods)) {
            for (AbstractInsnNode step : method.instructions.toArray()) {
                if (step instanceof InvokeDynamicInsnNode text && isJoined(text)) {
                    method.instructions.set(step, joiner(host, text));
                } else if (step instanceof InvokeDynamicInsnNode lambda && isPlain(lambda, host)) {
                    String name = host.name + "$$" + (spelled.size() - count + 1);
                    spelled.add(proxy(name, host, lambda));
                    boolean captures = Type.getArgumentCount(lambda.desc) > 0;
                    method.instructions.set(
                            step,
                            captures
                                    ? new MethodInsnNode(Opcodes.INVOKESTATIC, name, "of", lambda.desc, false)
                                    : new FieldInsnNode(Opcodes.GETSTATIC, name, INSTANCE, "L" + name + ";"));
                }
            }
        }
    }

    private static boolean isPlain(InvokeDynamicInsnNode lambda, ClassNode host) {
        if (!lambda.bsm.getOwner().equals(FACTORY) || !lambda.bsm.getName().equals("metafactory")) {
            return false;
        }
        Handle target = (Handle) lambda.bsmArgs[1];
        return target.getTag() != Opcodes.H_INVOKESPECIAL || target.getOwner().equals(host.name);
    }

    private static boolean isJoined(InvokeDynamicInsnNode text) {
        return text.bsm.getOwner().equals(JOINER) && text.bsm.getName().equals("makeConcatWithConstants");
    }

    /** Adds a method that joins the arguments and the texts between them, in the order of the recipe, and returns the call of it. */
    private MethodInsnNode joiner(ClassNode host, InvokeDynamicInsnNode text) {
        boolean inContract = (host.access & Opcodes.ACC_INTERFACE) != 0;
        Method method = new Method("$join" + joined++, text.desc);
        int access = Opcodes.ACC_PRIVATE | Opcodes.ACC_STATIC | Opcodes.ACC_SYNTHETIC;
        GeneratorAdapter code = new GeneratorAdapter(access, method, null, null, host);
        code.newInstance(BUILDER);
        code.dup();
        code.invokeConstructor(BUILDER, new Method("<init>", "()V"));
        int argument = 0;
        int constant = 1;
        StringBuilder between = new StringBuilder();
        for (char sign : ((String) text.bsmArgs[0]).toCharArray()) {
            if (sign == CONSTANT) {
                between.append(text.bsmArgs[constant++]);
            } else if (sign != ARGUMENT) {
                between.append(sign);
            } else {
                append(code, between);
                code.loadArg(argument);
                Type given = appended(method.getArgumentTypes()[argument++]);
                code.invokeVirtual(BUILDER, new Method("append", BUILDER, new Type[] {given}));
            }
        }
        append(code, between);
        code.invokeVirtual(BUILDER, new Method("toString", "()Ljava/lang/String;"));
        code.returnValue();
        code.visitMaxs(3, Type.getArgumentsAndReturnSizes(text.desc) >> 2);
        code.visitEnd();
        return new MethodInsnNode(Opcodes.INVOKESTATIC, host.name, method.getName(), text.desc, inContract);
    }

    private static void append(GeneratorAdapter code, StringBuilder between) {
        if (!between.isEmpty()) {
            code.push(between.toString());
            code.invokeVirtual(BUILDER, new Method("append", BUILDER, new Type[] {STRING}));
            between.setLength(0);
        }
    }

    private static Type appended(Type type) {
        return switch (type.getSort()) {
            case Type.BYTE, Type.SHORT -> Type.INT_TYPE;
            case Type.OBJECT, Type.ARRAY -> type.equals(STRING) ? STRING : OBJECT;
            default -> type;
        };
    }

    private ClassNode proxy(String name, ClassNode host, InvokeDynamicInsnNode lambda) {
        ClassNode node = new ClassNode();
        String contract = Type.getReturnType(lambda.desc).getInternalName();
        int kind = Opcodes.ACC_FINAL | Opcodes.ACC_SUPER | Opcodes.ACC_SYNTHETIC;
        node.visit(host.version, kind, name, null, "java/lang/Object", new String[] {contract});
        String home = host.nestHostClass == null ? host.name : host.nestHostClass;
        node.visitNestHost(home);
        classes.get(home).visitNestMember(name);

        Type self = Type.getObjectType(name);
        Type[] captured = Type.getArgumentTypes(lambda.desc);
        for (int i = 0; i < captured.length; i++) {
            node.visitField(Opcodes.ACC_PRIVATE | Opcodes.ACC_FINAL, "c" + i, captured[i].getDescriptor(), null, null);
        }
        Method constructor = new Method("<init>", Type.VOID_TYPE, captured);
        GeneratorAdapter made = new GeneratorAdapter(Opcodes.ACC_PRIVATE, constructor, null, null, node);
        made.loadThis();
        made.invokeConstructor(OBJECT, new Method("<init>", "()V"));
        for (int i = 0; i < captured.length; i++) {
            made.loadThis();
            made.loadArg(i);
            made.putField(self, "c" + i, captured[i]);
        }
        made.returnValue();
        made.endMethod();

        boolean captures = captured.length > 0;
        Method entry = captures ? new Method("of", lambda.desc) : new Method("<clinit>", "()V");
        if (!captures) {
            node.visitField(Opcodes.ACC_STATIC | Opcodes.ACC_FINAL, INSTANCE, self.getDescriptor(), null, null);
        }
        GeneratorAdapter of = new GeneratorAdapter(Opcodes.ACC_STATIC, entry, null, null, node);
        of.newInstance(self);
        of.dup();
        of.loadArgs();
        of.invokeConstructor(self, constructor);
        if (!captures) {
            of.putStatic(self, INSTANCE, self);
        }
        of.returnValue();
        of.endMethod();

        call(node, self, captured, lambda);
        return node;
    }

    /** The interface's method: calls the target with what was captured and then what it is given, each as the type that the target wants. */
    private static void call(ClassNode node, Type self, Type[] captured, InvokeDynamicInsnNode lambda) {
        Type declared = (Type) lambda.bsmArgs[0];
        Handle target = (Handle) lambda.bsmArgs[1];
        Type exact = (Type) lambda.bsmArgs[2];
        boolean isNew = target.getTag() == Opcodes.H_NEWINVOKESPECIAL;
        Type owner = Type.getObjectType(target.getOwner());
        List<Type> wanted = new ArrayList<>();
        if (!isNew && target.getTag() != Opcodes.H_INVOKESTATIC) {
            wanted.add(owner);
        }
        wanted.addAll(List.of(Type.getArgumentTypes(target.getDesc())));

        Method method = new Method(lambda.name, declared.getDescriptor());
        GeneratorAdapter code = new GeneratorAdapter(Opcodes.ACC_PUBLIC, method, null, null, node);
        if (isNew) {
            code.newInstance(owner);
            code.dup();
        }
        for (int i = 0; i < captured.length; i++) {
            code.loadThis();
            code.getField(self, "c" + i, captured[i]);
        }
        Type[] given = declared.getArgumentTypes();
        for (int i = 0; i < given.length; i++) {
            code.loadArg(i);
            convert(code, given[i], exact.getArgumentTypes()[i], wanted.get(captured.length + i));
        }
        Method called = new Method(target.getName(), target.getDesc());
        int way = target.isInterface() ? Opcodes.INVOKEINTERFACE : Opcodes.INVOKEVIRTUAL;
        if (isNew) {
            code.invokeConstructor(owner, called);
        } else {
            way = target.getTag() == Opcodes.H_INVOKESTATIC ? Opcodes.INVOKESTATIC : way;
            code.visitMethodInsn(way, target.getOwner(), target.getName(), target.getDesc(), target.isInterface());
        }
        giveBack(code, isNew ? owner : called.getReturnType(), declared.getReturnType(), exact.getReturnType());
        code.returnValue();
        code.endMethod();
    }

    private static void giveBack(GeneratorAdapter code, Type has, Type wants, Type exact) {
        if (wants.getSort() != Type.VOID) {
            convert(code, has, isPrimitive(has) ? has : exact.getSort() == Type.VOID ? has : exact, wants);
        } else if (has.getSize() == 2) {
            code.pop2();
        } else if (has.getSize() == 1) {
            code.pop();
        }
    }

    private static void convert(GeneratorAdapter code, Type has, Type exact, Type wants) {
        if (isPrimitive(has)) {
            if (isPrimitive(wants)) {
                code.cast(has, wants);
            } else {
                code.valueOf(has);
            }
            return;
        }
        Type known = has;
        if (!isPrimitive(exact) && !exact.equals(has) && !exact.equals(OBJECT)) {
            code.checkCast(exact);
            known = exact;
        }
        if (isPrimitive(wants)) {
            Type inside = BOXES.getOrDefault(known.getClassName(), known);
            if (isPrimitive(inside)) {
                code.unbox(inside);
                code.cast(inside, wants);
            } else {
                code.unbox(wants);
            }
        } else if (!wants.equals(known) && !wants.equals(OBJECT)) {
            code.checkCast(wants);
        }
    }

    private static boolean isPrimitive(Type type) {
        return type.getSort() != Type.OBJECT && type.getSort() != Type.ARRAY;
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
