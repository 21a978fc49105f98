package worthsaving;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.net.URI;
import java.net.URL;

/** What no class of ours does, so that what a user opens can neither call out nor run. */
@AnalyzeClasses(packages = "worthsaving", importOptions = ImportOption.DoNotIncludeTests.class)
class SafetyRulesTest {

    private static final DescribedPredicate<JavaClass> NETWORK = JavaClass.Predicates.resideInAnyPackage(
            "java.net..", "java.nio.channels..", "javax.net..", "java.rmi..", "javax.naming..", "com.sun.net..",
            "javafx.scene.web..")
            .and(DescribedPredicate.not(JavaClass.Predicates.type(URI.class)))
            .and(DescribedPredicate.not(JavaClass.Predicates.type(URL.class)))
            .and(DescribedPredicate.not(JavaClass.Predicates.type(java.nio.channels.FileChannel.class)))
            .and(DescribedPredicate.not(JavaClass.Predicates.type(java.nio.channels.FileLock.class)))
            .and(DescribedPredicate.not(assignableTo(java.io.IOException.class)))
            .and(DescribedPredicate.not(assignableTo(RuntimeException.class)))
            .as("a way onto the network");

    @ArchTest
    static final ArchRule no_network = noClasses()
            .should()
            .dependOnClassesThat(NETWORK)
            .orShould()
            .callMethodWhere(DescribedPredicate.describe("open a URL", call ->
                    call.getTargetOwner().isEquivalentTo(URL.class)
                            && call.getTarget().getName().matches("open.*|getContent")))
            .because("what a user looks at is nobody else's business; "
                    + "of java.net only the address of the program's own file is used");

    @ArchTest
    static final ArchRule no_objects_out_of_files = noClasses()
            .should()
            .dependOnClassesThat()
            .haveNameMatching("java\\.io\\.Object(Input|Output)Stream|java\\.beans\\.XML.*"
                    + "|javax\\.script\\..*|javax\\.tools\\..*")
            .because("a file holds figures and words, never objects or programs");

    @ArchTest
    static final ArchRule no_class_by_name = noClasses()
            .should()
            .callMethod(Class.class, "forName", String.class)
            .orShould()
            .callMethod(ClassLoader.class, "loadClass", String.class)
            .orShould()
            .dependOnClassesThat()
            .haveNameMatching("java\\.lang\\.reflect\\.(Method|Constructor|Field|Proxy)"
                    + "|java\\.lang\\.invoke\\.MethodHandles.*")
            .andShould()
            .notHaveFullyQualifiedName("worthsaving.catalog.FieldTexts")
            .because("no text that was read names what is run; FieldTexts reads the accessors of our own records");

    @ArchTest
    static final ArchRule no_xml = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javax.xml..", "org.w3c.dom..", "org.xml.sax..")
            .because("no XML is read, so none can name a file to be opened");

    @ArchTest
    static final ArchRule no_other_program = noClasses()
            .should()
            .dependOnClassesThat()
            .haveNameMatching("java\\.lang\\.Process(Builder)?|java\\.awt\\.Desktop|javafx\\.application\\.HostServices")
            .orShould()
            .callMethod(Runtime.class, "exec", String[].class)
            .orShould()
            .callMethod(Runtime.class, "exec", String.class)
            .because("nothing that was read starts a program or opens a browser");

    @ArchTest
    static final ArchRule jackson_makes_no_class_by_name = noClasses()
            .should()
            .callMethodWhere(DescribedPredicate.describe("switch on default typing", call ->
                    call.getTarget().getName().matches("(enable|activate)DefaultTyping.*|setDefaultTyping")))
            .orShould()
            .dependOnClassesThat()
            .haveSimpleName("JsonTypeInfo")
            .because("JSON is read as plain values");
}
