package org.bagwright.structure;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.util.List;
import java.util.stream.Stream;

/**
 * Top-level classes whose fields and methods are all static and that neither extend nor implement anything: functions
 * without a value that they are about.
 */
public final class OnlyStatics {
    private OnlyStatics() {}

    /** Their names, in alphabetical order. */
    public static List<String> among(JavaClasses classes) {
        return topLevel(classes)
                .filter(OnlyStatics::isOne)
                .map(JavaClass::getName)
                .sorted()
                .toList();
    }

    /** All top-level types but descriptions of packages. */
    public static Stream<JavaClass> topLevel(JavaClasses classes) {
        return classes.stream().filter(JavaClass::isTopLevelClass).filter(type -> !type.getSimpleName()
                .equals("package-info"));
    }

    private static boolean isOne(JavaClass type) {
        boolean plain = !type.isInterface()
                && !type.isEnum()
                && !type.isRecord()
                && type.getRawInterfaces().isEmpty()
                && type.getRawSuperclass()
                        .map(parent -> parent.isEquivalentTo(Object.class))
                        .orElse(false);
        return plain
                && !members(type).toList().isEmpty()
                && members(type).allMatch(member -> member.getModifiers().contains(JavaModifier.STATIC));
    }

    private static Stream<? extends JavaMember> members(JavaClass type) {
        return Stream.concat(type.getFields().stream(), type.getMethods().stream())
                .filter(member -> !member.getModifiers().contains(JavaModifier.SYNTHETIC));
    }
}
