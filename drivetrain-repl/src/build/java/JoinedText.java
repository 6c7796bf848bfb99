import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.commons.GeneratorAdapter;
import org.objectweb.asm.commons.Method;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodInsnNode;

/** A text joined of arguments and the texts between them, as a method that joins it. */
final class JoinedText {

    private static final String JOINER = "java/lang/invoke/StringConcatFactory";
    private static final char ARGUMENT = '\u0001';
    private static final char CONSTANT = '\u0002';
    private static final Type BUILDER = Type.getType(StringBuilder.class);
    private static final Type STRING = Type.getType(String.class);
    private static final Type OBJECT = Type.getType(Object.class);

    private JoinedText() {}

    /** Whether an expression joins texts. */
    static boolean isOne(InvokeDynamicInsnNode text) {
        return text.bsm.getOwner().equals(JOINER) && text.bsm.getName().equals("makeConcatWithConstants");
    }

    /** Adds a method that joins the arguments and the texts between them, in the order of the recipe, and returns the call of it. */
    static MethodInsnNode method(ClassNode host, String name, InvokeDynamicInsnNode text) {
        boolean inContract = (host.access & Opcodes.ACC_INTERFACE) != 0;
        Method method = new Method(name, text.desc);
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
}
