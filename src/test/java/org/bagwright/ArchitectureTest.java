package org.bagwright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.bagwright.structure.Circles;
import org.bagwright.structure.OnlyStatics;

/** The table of packages in DEVELOPERS.md, held. */
@AnalyzeClasses(packages = "org.bagwright", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    private static final String UNITS =
            "(?i:.*)(Deg|Rad|Mm|M|Kg|G|Mps|Rpm|Points|Ratio|H|C|K|S|Pa|KgPerM3|PaS|MeasureUnits|KgM2|N|Yd)";

    private static final int MOST_TYPES = 35;
    private static final int MOST_PARAMETERS = 8;
    private static final double MOST_STATICS = 0.08;

    @ArchTest
    static final ArchRule packages_point_one_way = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .withOptionalLayers(true)
            .layer("cli")
            .definedBy("org.bagwright.cli..")
            .layer("planning")
            .definedBy("org.bagwright.planning..")
            .layer("workbook")
            .definedBy("org.bagwright.workbook..")
            .layer("files")
            .definedBy("org.bagwright.files..")
            .layer("search")
            .definedBy("org.bagwright.search..")
            .layer("flight")
            .definedBy("org.bagwright.flight..")
            .layer("geometry")
            .definedBy("org.bagwright.geometry..")
            .layer("balance")
            .definedBy("org.bagwright.balance..")
            .layer("domain")
            .definedBy("org.bagwright.domain..")
            .whereLayer("cli")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("planning")
            .mayOnlyBeAccessedByLayers("cli")
            .whereLayer("workbook")
            .mayOnlyBeAccessedByLayers("planning")
            .whereLayer("files")
            .mayOnlyBeAccessedByLayers("workbook", "planning", "cli")
            .whereLayer("search")
            .mayOnlyBeAccessedByLayers("planning")
            .whereLayer("flight")
            .mayOnlyBeAccessedByLayers("planning")
            .whereLayer("geometry")
            .mayOnlyBeAccessedByLayers("planning", "flight")
            .whereLayer("balance")
            .mayOnlyBeAccessedByLayers("planning");

    @ArchTest
    static final ArchRule no_cycles =
            slices().matching("org.bagwright.(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule domain_needs_the_jdk_only = classes()
            .that()
            .resideInAPackage("org.bagwright.domain..")
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage("java..", "org.bagwright.domain..");

    @ArchTest
    static final ArchRule only_workbook_uses_poi = noClasses()
            .that()
            .resideOutsideOfPackage("org.bagwright.workbook..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.apache.poi..", "org.openxmlformats..", "org.apache.xmlbeans..");

    @ArchTest
    static final ArchRule only_search_uses_optaplanner = noClasses()
            .that()
            .resideOutsideOfPackage("org.bagwright.search..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.optaplanner..");

    @ArchTest
    static final ArchRule nothing_reaches_a_network = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.net..", "javax.net..", "java.rmi..", "com.sun.net..", "jdk.net..")
            .orShould()
            .dependOnClassesThat()
            .haveNameMatching("java\\.nio\\.channels\\..*(Socket|Datagram|Network|Multicast).*")
            .because("a fitter's book stays on his machine");

    @ArchTest
    static final ArchRule doubles_in_records_name_their_unit = fields().that(new InRecord())
            .should()
            .haveNameMatching(UNITS)
            .because("a number without its unit is the commonest fault in this trade");

    @ArchTest
    static void a_package_has_at_most_35_types(JavaClasses classes) {
        Map<String, Long> types = OnlyStatics.topLevel(classes)
                .collect(Collectors.groupingBy(JavaClass::getPackageName, Collectors.counting()));
        types.values().removeIf(count -> count <= MOST_TYPES);
        assertThat(types, "too many types for a newcomer to hold in mind");
    }

    @ArchTest
    static void a_package_says_what_it_is_for(JavaClasses classes) {
        List<String> silent = OnlyStatics.topLevel(classes)
                .map(JavaClass::getPackageName)
                .distinct()
                .filter(name -> !Files.exists(
                        Path.of("src/main/java", name.split("\\.")).resolve("package-info.java")))
                .toList();
        assertThat(silent, "package-info.java says what comes in, what goes out and what may be imported");
    }

    @ArchTest
    static void classes_depend_on_each_other_at_most_in_pairs(JavaClasses classes) {
        assertThat(
                Circles.among(classes).stream()
                        .filter(circle -> circle.size() > 2)
                        .toList(),
                "a circle can only be read, tested and changed as a whole");
    }

    @ArchTest
    static void a_method_belongs_to_the_value_it_is_about(JavaClasses classes) {
        List<String> statics = OnlyStatics.among(classes);
        double share = (double) statics.size() / OnlyStatics.topLevel(classes).count();
        assertThat(share < MOST_STATICS ? List.of() : statics, "functions without a value are hard to find");
    }

    @ArchTest
    static void a_method_takes_at_most_8_parameters(JavaClasses classes) {
        List<String> tooLong = classes.stream()
                .flatMap(type -> type.getCodeUnits().stream())
                .filter(method -> !method.getModifiers().contains(JavaModifier.SYNTHETIC))
                .filter(method -> method.getRawParameterTypes().size() > MOST_PARAMETERS)
                .map(JavaCodeUnit::getFullName)
                .toList();
        assertThat(tooLong, "nobody can tell the ninth argument from the tenth");
    }

    private static void assertThat(Object offenders, String because) {
        boolean none = offenders instanceof Map<?, ?> map ? map.isEmpty() : ((Collection<?>) offenders).isEmpty();
        assertTrue(none, () -> because + ": " + offenders);
    }

    private static final class InRecord extends DescribedPredicate<JavaField> {
        InRecord() {
            super("are double components of records");
        }

        @Override
        public boolean test(JavaField field) {
            boolean number = field.getRawType().isEquivalentTo(double.class)
                    || field.getRawType().isEquivalentTo(OptionalDouble.class);
            return number
                    && field.getOwner().isRecord()
                    && !field.getModifiers().contains(JavaModifier.STATIC);
        }
    }
}
