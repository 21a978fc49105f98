package worthsaving;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "worthsaving", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    private static final String[] SHELLS = {"..cli..", "..desktop..", "..shell.."};

    @ArchTest
    static final ArchRule no_cycles = slices()
            .matching("worthsaving.(*)..")
            .should()
            .beFreeOfCycles()
            .because("data flows one way, from listing to verdict");

    @ArchTest
    static final ArchRule package_walls = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .withOptionalLayers(true)
            .layer("quantity").definedBy("worthsaving.quantity..")
            .layer("vehicle").definedBy("worthsaving.vehicle..")
            .layer("market").definedBy("worthsaving.market..")
            .layer("valuation").definedBy("worthsaving.valuation..")
            .layer("catalog").definedBy("worthsaving.catalog..")
            .layer("diagnosis").definedBy("worthsaving.diagnosis..")
            .layer("repair").definedBy("worthsaving.repair..")
            .layer("deal").definedBy("worthsaving.deal..")
            .layer("ranking").definedBy("worthsaving.ranking..")
            .layer("inspection").definedBy("worthsaving.inspection..")
            .layer("teardown").definedBy("worthsaving.teardown..")
            .layer("sensitivity").definedBy("worthsaving.sensitivity..")
            .layer("intake").definedBy("worthsaving.intake..")
            .layer("record").definedBy("worthsaving.record..")
            .layer("casebook").definedBy("worthsaving.casebook..")
            .layer("report").definedBy("worthsaving.report..")
            .layer("shell").definedBy("worthsaving.shell..")
            .layer("cli").definedBy("worthsaving.cli..")
            .layer("desktop").definedBy("worthsaving.desktop..")
            .whereLayer("quantity").mayNotAccessAnyLayer()
            .whereLayer("vehicle").mayOnlyAccessLayers("quantity")
            .whereLayer("market").mayOnlyAccessLayers("quantity", "vehicle")
            .whereLayer("valuation").mayOnlyAccessLayers("quantity", "vehicle", "market")
            .whereLayer("catalog").mayOnlyAccessLayers("quantity", "vehicle")
            .whereLayer("diagnosis").mayOnlyAccessLayers("quantity", "vehicle", "catalog")
            .whereLayer("repair").mayOnlyAccessLayers("quantity", "vehicle", "catalog", "diagnosis")
            .whereLayer("deal")
            .mayOnlyAccessLayers("quantity", "vehicle", "catalog", "diagnosis", "repair", "market", "valuation")
            .whereLayer("intake").mayOnlyAccessLayers("quantity", "vehicle", "catalog")
            .whereLayer("record").mayOnlyAccessLayers("quantity", "catalog", "deal")
            .whereLayer("record").mayOnlyBeAccessedByLayers("casebook", "report", "cli", "desktop")
            .whereLayer("casebook").mayOnlyBeAccessedByLayers("report", "cli", "desktop")
            .whereLayer("ranking").mayOnlyBeAccessedByLayers("casebook", "teardown", "report", "cli", "desktop")
            .whereLayer("inspection").mayOnlyBeAccessedByLayers("ranking", "teardown", "report", "cli", "desktop")
            .whereLayer("teardown").mayOnlyBeAccessedByLayers("casebook", "report", "cli", "desktop")
            .whereLayer("sensitivity").mayOnlyBeAccessedByLayers("report", "cli", "desktop")
            .whereLayer("shell").mayOnlyAccessLayers("quantity", "catalog", "market", "valuation", "report")
            .whereLayer("shell").mayOnlyBeAccessedByLayers("cli", "desktop")
            .whereLayer("cli").mayNotBeAccessedByAnyLayer()
            .whereLayer("desktop").mayNotBeAccessedByAnyLayer()
            .because("docs/architecture.md says which package may see which");

    @ArchTest
    static final ArchRule core_without_windows = noClasses()
            .that()
            .resideOutsideOfPackages("..desktop..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javafx..", "java.awt..", "javax.swing..")
            .because("the command line and the tests run without a screen");

    @ArchTest
    static final ArchRule core_without_files = noClasses()
            .that()
            .resideOutsideOfPackages(SHELLS)
            .and()
            .resideOutsideOfPackage("worthsaving.casebook..")
            .should()
            .dependOnClassesThat()
            .haveNameMatching("java\\.nio\\.file\\..*|java\\.io\\.File(Input|Output|Reader|Writer)?.*|java\\.net\\..*")
            .because("the core is handed readers and writers; opening files is the shell's business, the casebook opens its "
                    + "one file, and nothing uses the network");

    @ArchTest
    static final ArchRule casebook_without_network = noClasses()
            .that()
            .resideInAPackage("worthsaving.casebook..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("java.net..")
            .because("the casebook opens its one file and nothing else");

    @ArchTest
    static final ArchRule sql_only_in_the_casebook = noClasses()
            .that()
            .resideOutsideOfPackage("worthsaving.casebook..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.sql..", "org.sqlite..")
            .because("how the casebook is kept is its own affair");

    @ArchTest
    static final ArchRule pages_are_taken_apart_not_fetched = noClasses()
            .should()
            .dependOnClassesThat()
            .haveFullyQualifiedName("org.jsoup.Connection")
            .because("a saved advert is read as it lies; nothing it refers to is fetched");

    @ArchTest
    static final ArchRule output_only_in_the_shell = noClasses()
            .that()
            .resideOutsideOfPackage("..cli..")
            .and()
            .doNotHaveFullyQualifiedName("worthsaving.desktop.Main")
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .because("standard output is the command line's; the window's Main alone may say that it cannot open");
}
