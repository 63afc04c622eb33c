package org.bagwright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.OptionalDouble;

/** The table of packages in DEVELOPERS.md, held. */
@AnalyzeClasses(packages = "org.bagwright", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    private static final String UNITS =
            "(?i:.*)(Deg|Rad|Mm|M|Kg|G|Mps|Rpm|Points|Ratio|H|C|K|S|Pa|KgPerM3|PaS|MeasureUnits|KgM2|N|Yd)";

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
                    && !field.getModifiers().contains(com.tngtech.archunit.core.domain.JavaModifier.STATIC);
        }
    }
}
