import java.util.List;
import java.util.Objects;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.commons.GeneratorAdapter;
import org.objectweb.asm.commons.Method;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodInsnNode;

/** What every record has, whether it equals another, its hash code and its text, each as a method that goes through the components. */
final class RecordMethods {

    private static final String FACTORY = "java/lang/runtime/ObjectMethods";
    private static final Type OBJECTS = Type.getType(Objects.class);
    private static final Type BUILDER = Type.getType(StringBuilder.class);
    private static final Type STRING = Type.getType(String.class);
    private static final Type OBJECT = Type.getType(Object.class);

    private final ClassNode host;
    private final String name;
    private final InvokeDynamicInsnNode asked;
    private final List<Handle> components;

    private RecordMethods(ClassNode host, String name, InvokeDynamicInsnNode asked) {
        this.host = host;
        this.name = name;
        this.asked = asked;
        this.components = List.of(asked.bsmArgs).subList(2, asked.bsmArgs.length).stream()
                .map(Handle.class::cast)
                .toList();
    }

    /** Whether an expression is one of the three that the compiler leaves to Java. */
    static boolean isOne(InvokeDynamicInsnNode asked) {
        return asked.bsm.getOwner().equals(FACTORY);
    }

    /** Adds a method that answers, and returns the call of it. */
    static MethodInsnNode method(ClassNode host, String name, InvokeDynamicInsnNode asked) {
        RecordMethods made = new RecordMethods(host, name, asked);
        switch (asked.name) {
            case "equals" -> made.equality();
            case "hashCode" -> made.hash();
            case "toString" -> made.text();
            default -> throw new IllegalArgumentException(host.name + " asks for " + asked.name);
        }
        return new MethodInsnNode(Opcodes.INVOKESTATIC, host.name, name, asked.desc, false);
    }

    /** Component by component: references as they say themselves, numbers with a point as their boxes do, the rest as they stand. */
    private void equality() {
        int access = Opcodes.ACC_PRIVATE | Opcodes.ACC_STATIC | Opcodes.ACC_SYNTHETIC;
        MethodVisitor code = host.visitMethod(access, name, asked.desc, null, null);
        Label different = new Label();
        Label other = new Label();
        code.visitCode();
        code.visitVarInsn(Opcodes.ALOAD, 0);
        code.visitVarInsn(Opcodes.ALOAD, 1);
        code.visitJumpInsn(Opcodes.IF_ACMPNE, other);
        code.visitInsn(Opcodes.ICONST_1);
        code.visitInsn(Opcodes.IRETURN);
        code.visitLabel(other);
        code.visitFrame(Opcodes.F_SAME, 0, null, 0, null);
        code.visitVarInsn(Opcodes.ALOAD, 1);
        code.visitTypeInsn(Opcodes.INSTANCEOF, host.name);
        code.visitJumpInsn(Opcodes.IFEQ, different);
        for (Handle component : components) {
            Type type = Type.getType(component.getDesc());
            code.visitVarInsn(Opcodes.ALOAD, 0);
            code.visitFieldInsn(Opcodes.GETFIELD, host.name, component.getName(), component.getDesc());
            code.visitVarInsn(Opcodes.ALOAD, 1);
            code.visitTypeInsn(Opcodes.CHECKCAST, host.name);
            code.visitFieldInsn(Opcodes.GETFIELD, host.name, component.getName(), component.getDesc());
            switch (type.getSort()) {
                case Type.OBJECT, Type.ARRAY -> {
                    String pair = Type.getMethodDescriptor(Type.BOOLEAN_TYPE, OBJECT, OBJECT);
                    code.visitMethodInsn(Opcodes.INVOKESTATIC, OBJECTS.getInternalName(), "equals", pair, false);
                    code.visitJumpInsn(Opcodes.IFEQ, different);
                }
                case Type.DOUBLE, Type.FLOAT -> {
                    String pair = Type.getMethodDescriptor(Type.INT_TYPE, type, type);
                    code.visitMethodInsn(Opcodes.INVOKESTATIC, box(type).getInternalName(), "compare", pair, false);
                    code.visitJumpInsn(Opcodes.IFNE, different);
                }
                case Type.LONG -> {
                    code.visitInsn(Opcodes.LCMP);
                    code.visitJumpInsn(Opcodes.IFNE, different);
                }
                default -> code.visitJumpInsn(Opcodes.IF_ICMPNE, different);
            }
        }
        code.visitInsn(Opcodes.ICONST_1);
        code.visitInsn(Opcodes.IRETURN);
        code.visitLabel(different);
        code.visitFrame(Opcodes.F_SAME, 0, null, 0, null);
        code.visitInsn(Opcodes.ICONST_0);
        code.visitInsn(Opcodes.IRETURN);
        code.visitMaxs(4, 2);
        code.visitEnd();
    }

    /** 31 times what came before, and the component's own. */
    private void hash() {
        GeneratorAdapter code = code();
        code.push(0);
        for (Handle component : components) {
            Type type = Type.getType(component.getDesc());
            code.push(31);
            code.math(GeneratorAdapter.MUL, Type.INT_TYPE);
            load(code, component);
            Type owner = isReference(type) ? OBJECTS : box(type);
            Type given = isReference(type) ? OBJECT : type;
            code.invokeStatic(owner, new Method("hashCode", Type.INT_TYPE, new Type[] {given}));
            code.math(GeneratorAdapter.ADD, Type.INT_TYPE);
        }
        end(code, 4);
    }

    /** The name of the record, and of each component the name and the value. */
    private void text() {
        GeneratorAdapter code = code();
        code.newInstance(BUILDER);
        code.dup();
        code.invokeConstructor(BUILDER, new Method("<init>", "()V"));
        String between = simpleName() + "[";
        for (Handle component : components) {
            append(code, between + component.getName() + "=");
            load(code, component);
            Type type = Type.getType(component.getDesc());
            boolean small = type.getSort() == Type.BYTE || type.getSort() == Type.SHORT;
            Type given = isReference(type) ? OBJECT : small ? Type.INT_TYPE : type;
            code.invokeStatic(STRING, new Method("valueOf", STRING, new Type[] {given}));
            code.invokeVirtual(BUILDER, new Method("append", BUILDER, new Type[] {STRING}));
            between = ", ";
        }
        append(code, components.isEmpty() ? between + "]" : "]");
        code.invokeVirtual(BUILDER, new Method("toString", "()Ljava/lang/String;"));
        end(code, 3);
    }

    private GeneratorAdapter code() {
        int access = Opcodes.ACC_PRIVATE | Opcodes.ACC_STATIC | Opcodes.ACC_SYNTHETIC;
        return new GeneratorAdapter(access, new Method(name, asked.desc), null, null, host);
    }

    private void load(GeneratorAdapter code, Handle component) {
        code.loadArg(0);
        code.getField(Type.getObjectType(host.name), component.getName(), Type.getType(component.getDesc()));
    }

    private static void append(GeneratorAdapter code, String text) {
        code.push(text);
        code.invokeVirtual(BUILDER, new Method("append", BUILDER, new Type[] {STRING}));
    }

    private static void end(GeneratorAdapter code, int stack) {
        code.returnValue();
        code.visitMaxs(stack, 1);
        code.visitEnd();
    }

    private static boolean isReference(Type type) {
        return type.getSort() == Type.OBJECT || type.getSort() == Type.ARRAY;
    }

    private static Type box(Type primitive) {
        return Type.getType(
                switch (primitive.getSort()) {
                    case Type.BOOLEAN -> Boolean.class;
                    case Type.CHAR -> Character.class;
                    case Type.BYTE -> Byte.class;
                    case Type.SHORT -> Short.class;
                    case Type.INT -> Integer.class;
                    case Type.LONG -> Long.class;
                    case Type.FLOAT -> Float.class;
                    case Type.DOUBLE -> Double.class;
                    default -> throw new IllegalArgumentException("no primitive: " + primitive);
                });
    }

    private String simpleName() {
        return host.innerClasses.stream()
                .filter(inner -> inner.name.equals(host.name))
                .map(inner -> inner.innerName)
                .findFirst()
                .orElse(host.name.substring(host.name.lastIndexOf('/') + 1));
    }
}
