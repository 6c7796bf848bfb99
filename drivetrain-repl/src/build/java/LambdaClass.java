import java.lang.invoke.MethodType;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
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

/** A lambda or a method reference as a class of its own, in the nest of the class in which it stands. */
final class LambdaClass {

    private static final String FACTORY = "java/lang/invoke/LambdaMetafactory";
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

    private final ClassNode node = new ClassNode();
    private final Type self;
    private final String nest;
    private final InvokeDynamicInsnNode lambda;
    private final Type[] captured;

    LambdaClass(String name, ClassNode host, InvokeDynamicInsnNode lambda) {
        this.self = Type.getObjectType(name);
        this.nest = host.nestHostClass == null ? host.name : host.nestHostClass;
        this.lambda = lambda;
        this.captured = Type.getArgumentTypes(lambda.desc);
        int kind = Opcodes.ACC_FINAL | Opcodes.ACC_SUPER | Opcodes.ACC_SYNTHETIC;
        String contract = Type.getReturnType(lambda.desc).getInternalName();
        node.visit(host.version, kind, name, null, OBJECT.getInternalName(), new String[] {contract});
        node.visitNestHost(nest);
        construct();
        call();
    }

    String name() {
        return self.getInternalName();
    }

    /** The host of the nest to which it has to be added. */
    String nest() {
        return nest;
    }

    ClassNode node() {
        return node;
    }

    /** What stands in place of the expression: the one instance, or a call that makes one of what is captured. */
    AbstractInsnNode use() {
        return captured.length > 0
                ? new MethodInsnNode(Opcodes.INVOKESTATIC, name(), "of", lambda.desc, false)
                : new FieldInsnNode(Opcodes.GETSTATIC, name(), INSTANCE, self.getDescriptor());
    }

    /** The fields for what is captured, the constructor, and the method or field by which an instance is had. */
    private void construct() {
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
        GeneratorAdapter of = new GeneratorAdapter(Opcodes.ACC_STATIC, entry, null, null, node);
        of.newInstance(self);
        of.dup();
        of.loadArgs();
        of.invokeConstructor(self, constructor);
        if (!captures) {
            node.visitField(Opcodes.ACC_STATIC | Opcodes.ACC_FINAL, INSTANCE, self.getDescriptor(), null, null);
            of.putStatic(self, INSTANCE, self);
        }
        of.returnValue();
        of.endMethod();
    }

    /** Whether an expression is a lambda or a method reference of a plain type. */
    static boolean isOne(InvokeDynamicInsnNode lambda, ClassNode host) {
        if (!lambda.bsm.getOwner().equals(FACTORY) || !lambda.bsm.getName().equals("metafactory")) {
            return false;
        }
        Handle target = (Handle) lambda.bsmArgs[1];
        return target.getTag() != Opcodes.H_INVOKESPECIAL || target.getOwner().equals(host.name);
    }

    /** The interface's method: calls the target with what was captured and then what it is given, each as the type that the target wants. */
    private void call() {
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
}
