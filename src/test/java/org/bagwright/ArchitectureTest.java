package org.bagwright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static java.util.Map.entry;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.Dependency;
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
import java.util.Arrays;
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

    /** Each package with what it may import; a name without a dot, such as {@code domain}, means all packages below it too. */
    private static final Map<String, String> MAY_IMPORT = Map.ofEntries(
            entry("domain.text", ""),
            entry("domain.units", "domain.text"),
            entry("domain.club", "domain.units domain.text"),
            entry("domain.book", "domain.club domain.units domain.text"),
            entry("domain.option", "domain.book domain.club domain.units domain.text"),
            entry("domain.plan", "domain.session domain.option domain.book domain.club domain.units domain.text"),
            entry(
                    "domain.compare",
                    "domain.plan domain.session domain.option domain.book domain.club domain.units domain.text"),
            entry("domain.session", "domain.book domain.club domain.units domain.text"),
            entry("domain.gauge", "domain.book domain.club domain.units domain.text"),
            entry("geometry", "domain"),
            entry("flight", "domain geometry"),
            entry("flight.learning", "flight domain geometry"),
            entry("flight.golfer", "flight.learning flight domain geometry"),
            entry("balance", "domain"),
            entry("sessions", "flight domain"),
            entry("search.score", "domain"),
            entry("search.exact", "search.score domain"),
            entry("search.team", "search.exact search.score domain"),
            entry("search.model", "search.exact search.score domain"),
            entry("search.planner", "search.model search.team search.exact search.score domain"),
            entry("search", "search domain"),
            entry("files", "domain"),
            entry("workbook.text", "domain"),
            entry("workbook.schema", "workbook.text domain"),
            entry("workbook.cells", "workbook.schema workbook.text files domain"),
            entry("workbook.pen", "domain"),
            entry("workbook.settings", "workbook.pen workbook.schema domain"),
            entry(
                    "workbook.plan",
                    "workbook.settings workbook.pen workbook.cells workbook.schema workbook.text domain"),
            entry("workbook.edits", "workbook.plan workbook.cells workbook.schema workbook.text domain"),
            entry(
                    "workbook.read",
                    "workbook.edits workbook.plan workbook.cells workbook.schema workbook.text files domain"),
            entry(
                    "workbook.result",
                    "workbook.edits workbook.ladder workbook.plan workbook.settings workbook.pen workbook.shots"
                            + " workbook.cells workbook.schema files workbook.text domain"),
            entry("workbook.ladder", "workbook.plan workbook.settings workbook.pen workbook.schema domain"),
            entry("workbook.shots", "workbook.cells workbook.schema workbook.text files domain"),
            entry("page", "domain"),
            entry("planning.options", "geometry flight balance domain"),
            entry("planning.gauge", "geometry domain"),
            entry("planning.live", "planning.options domain"),
            entry("planning.sureness", "domain"),
            entry("planning.outlook", "planning.options planning.sureness flight domain"),
            entry("planning.reasons", "planning.options search domain"),
            entry("planning", "planning page workbook search sessions flight geometry balance files domain"),
            entry("cli.text", "planning files domain"),
            entry("cli.json", "cli.text domain"),
            entry("cli", "cli planning sessions files domain"));

    @ArchTest
    static void packages_import_what_the_table_allows(JavaClasses classes) {
        List<String> wrong = classes.stream()
                .flatMap(type -> type.getDirectDependenciesFromSelf().stream())
                .filter(dependency -> classes.contain(
                        dependency.getTargetClass().getBaseComponentType().getName()))
                .filter(dependency -> !mayImport(
                        room(dependency.getOriginClass()),
                        room(dependency.getTargetClass().getBaseComponentType())))
                .map(Dependency::getDescription)
                .toList();
        assertThat(wrong, "a newcomer reads the packages in one order, from those that need no other");
    }

    private static String room(JavaClass type) {
        return type.getPackageName().replaceFirst("org\\.bagwright\\.?", "");
    }

    private static boolean mayImport(String from, String to) {
        return from.equals(to)
                || Arrays.stream(MAY_IMPORT.getOrDefault(from, "").split(" "))
                        .anyMatch(allowed -> to.equals(allowed)
                                || (!allowed.isEmpty() && !allowed.contains(".") && to.startsWith(allowed + ".")));
    }

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
    static final ArchRule only_sessions_uses_commons_csv = noClasses()
            .that()
            .resideOutsideOfPackage("org.bagwright.sessions..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.apache.commons.csv..");

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
