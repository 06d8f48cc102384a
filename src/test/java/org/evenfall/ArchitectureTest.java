package org.evenfall;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.simpleName;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.core.domain.JavaModifier.FINAL;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import org.evenfall.flight.SpreadPattern;
import org.evenfall.page.NoPrinter;
import org.evenfall.page.PagePrinter;
import org.evenfall.sheet.SheetPart;
import org.evenfall.sign.KeyException;
import org.evenfall.sign.KeyRing;
import org.evenfall.sign.VerifyResult;

/** Keeps the floors of the house as DEVELOPERS.md tells them. */
@AnalyzeClasses(packages = "org.evenfall", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    private static final String[] CORE = {
        "org.evenfall.quantity..",
        "org.evenfall.finding..",
        "org.evenfall.granule..",
        "org.evenfall.flight..",
        "org.evenfall.machine..",
        "org.evenfall.reference..",
        "org.evenfall.rate..",
        "org.evenfall.trays..",
        "org.evenfall.setup.."
    };

    @ArchTest
    static final ArchRule floorsUseOnlyFloorsBelow = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("words")
            .definedBy("org.evenfall.quantity..", "org.evenfall.finding..")
            .layer("granule")
            .definedBy("org.evenfall.granule..")
            .layer("flight")
            .definedBy("org.evenfall.flight..")
            .layer("machine")
            .definedBy("org.evenfall.machine..")
            .layer("reference")
            .definedBy("org.evenfall.reference..")
            .layer("rate")
            .definedBy("org.evenfall.rate..")
            .layer("trays")
            .definedBy("org.evenfall.trays..")
            .layer("setup")
            .definedBy("org.evenfall.setup..")
            .layer("page")
            .definedBy("org.evenfall.page..")
            .layer("card")
            .definedBy("org.evenfall.card..")
            .layer("sheet")
            .definedBy("org.evenfall.sheet..")
            .layer("report")
            .definedBy("org.evenfall.report..")
            .layer("sign")
            .definedBy("org.evenfall.sign..")
            .layer("store")
            .definedBy("org.evenfall.store..")
            .layer("publish")
            .definedBy("org.evenfall.publish..")
            .layer("result")
            .definedBy("org.evenfall.result..")
            .layer("wizard")
            .definedBy("org.evenfall.wizard..")
            .layer("command")
            .definedBy("org.evenfall.command..")
            .whereLayer("words")
            .mayNotAccessAnyLayer()
            .whereLayer("granule")
            .mayOnlyAccessLayers("words")
            .whereLayer("flight")
            .mayOnlyAccessLayers("words", "granule")
            .whereLayer("machine")
            .mayOnlyAccessLayers("words")
            .whereLayer("reference")
            .mayOnlyAccessLayers("words", "granule", "flight", "machine")
            .whereLayer("rate")
            .mayOnlyAccessLayers("words", "granule", "flight", "machine")
            .whereLayer("trays")
            .mayOnlyAccessLayers("words", "granule", "flight", "machine")
            .whereLayer("setup")
            .mayOnlyAccessLayers("words", "granule", "flight", "machine", "reference", "rate", "trays")
            .whereLayer("page")
            .mayNotAccessAnyLayer()
            .whereLayer("sign")
            .mayNotAccessAnyLayer()
            .whereLayer("card")
            .mayOnlyAccessLayers("words", "granule", "flight", "machine", "reference", "rate", "trays", "setup", "page")
            .whereLayer("sheet")
            .mayOnlyAccessLayers("words", "granule", "flight", "machine", "reference", "rate", "trays", "setup", "page")
            .whereLayer("report")
            .mayOnlyAccessLayers("page")
            .whereLayer("store")
            .mayOnlyAccessLayers("words", "granule", "flight", "machine", "reference", "rate", "trays", "setup")
            .whereLayer("publish")
            .mayOnlyBeAccessedByLayers("wizard", "command")
            .whereLayer("result")
            .mayOnlyBeAccessedByLayers("publish", "wizard", "command")
            .whereLayer("result")
            .mayOnlyAccessLayers("words", "granule", "flight", "machine", "reference", "rate", "trays", "setup", "card")
            .whereLayer("wizard")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("command")
            .mayNotBeAccessedByAnyLayer()
            .because("no room reaches up, rooms of floor 4 know each other only where content uses page, and the two"
                    + " faces do not know each other");

    @ArchTest
    static final ArchRule roomsHaveNoCycles = slices().matching("org.evenfall.(**)")
            .should()
            .beFreeOfCycles()
            .because("a cycle makes two rooms one, at any depth of packages");

    @ArchTest
    static final ArchRule facesPublishThroughOneRoom = noClasses()
            .that()
            .resideInAnyPackage("org.evenfall.wizard..", "org.evenfall.command..")
            .should()
            .dependOnClassesThat(resideInAnyPackage("org.evenfall.card..", "org.evenfall.report..")
                    .or(resideInAnyPackage("org.evenfall.sheet..").and(not(type(SheetPart.class))))
                    .or(resideInAnyPackage("org.evenfall.page..")
                            .and(not(type(PagePrinter.class).or(type(NoPrinter.class)))))
                    .or(resideInAnyPackage("org.evenfall.sign..")
                            .and(not(type(VerifyResult.class)
                                    .or(type(KeyException.class))
                                    .or(type(KeyException.Kind.class))
                                    .or(type(KeyRing.class))
                                    .or(type(KeyRing.State.class))
                                    .or(type(KeyRing.Status.class))))))
            .because("the room publish makes what leaves the program for both faces");

    @ArchTest
    static final ArchRule pagesAndSignaturesKnowNoTrade = noClasses()
            .that()
            .resideInAnyPackage("org.evenfall.page..", "org.evenfall.sign..")
            .should()
            .dependOnClassesThat(resideInAnyPackage("org.evenfall..")
                    .and(not(resideInAnyPackage("org.evenfall.page..", "org.evenfall.sign.."))))
            .because("a page and a signature are the same for any content");

    @ArchTest
    static final ArchRule theCoreKnowsNoWindow = noClasses()
            .that()
            .resideInAnyPackage(CORE)
            .should()
            .dependOnClassesThat(resideInAnyPackage(
                    "javafx..",
                    "java.awt..",
                    "javax.swing..",
                    "org.controlsfx..",
                    "com.fasterxml..",
                    "org.apache.pdfbox.."))
            .because("the core is tested and used without a window, a file format or a page");

    @ArchTest
    static final ArchRule theCoreKnowsNoFilesNoClockNoChance = noClasses()
            .that()
            .resideInAnyPackage(CORE)
            .should()
            .dependOnClassesThat(resideInAPackage("java.nio.file..")
                    .or(type(java.io.File.class))
                    .or(type(java.time.Clock.class))
                    .or(type(java.util.Random.class))
                    .or(simpleName("ThreadLocalRandom")))
            .because("files, time and chance come in as parameters");

    @ArchTest
    static final ArchRule nothingUsesTheNetwork = noClasses()
            .should()
            .dependOnClassesThat(resideInAnyPackage("java.net.http..", "javax.net..", "com.sun.net..", "java.rmi..")
                    .or(type(java.net.Socket.class))
                    .or(type(java.net.ServerSocket.class))
                    .or(type(java.net.DatagramSocket.class))
                    .or(type(java.net.InetAddress.class))
                    .or(type(java.net.InetSocketAddress.class))
                    .or(type(java.net.NetworkInterface.class))
                    .or(type(java.net.URLConnection.class))
                    .or(type(java.net.HttpURLConnection.class))
                    .or(type(java.nio.channels.SocketChannel.class))
                    .or(type(java.nio.channels.ServerSocketChannel.class))
                    .or(type(java.nio.channels.DatagramChannel.class))
                    .or(type(java.nio.channels.AsynchronousSocketChannel.class)))
            .orShould()
            .callMethod(java.net.URL.class, "openConnection")
            .orShould()
            .callMethod(java.net.URL.class, "openStream")
            .orShould()
            .callMethod(java.net.URL.class, "getContent")
            .because("a farm's figures stay on its own computer, and a yard has no network");

    @ArchTest
    static final ArchRule theCoreReadsNoClock = noClasses()
            .that()
            .resideInAnyPackage(CORE)
            .should()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(System.class, "nanoTime")
            .orShould()
            .callMethod(java.time.LocalDate.class, "now")
            .orShould()
            .callMethod(java.time.Instant.class, "now")
            .orShould()
            .callMethod(java.util.Locale.class, "getDefault")
            .orShould()
            .callMethod(Math.class, "random")
            .because("the same setup gives the same assessment, on every machine and every day");

    @ArchTest
    static final ArchRule nothingStaticChanges = fields().that()
            .areStatic()
            .and()
            .areDeclaredInClassesThat()
            .resideInAPackage("org.evenfall..")
            .should()
            .haveModifier(FINAL)
            .because("there is no global state");

    @ArchTest
    static final ArchRule facesAreBuiltByMainAlone = noClasses()
            .that()
            .resideOutsideOfPackages("org.evenfall", "org.evenfall.wizard..", "org.evenfall.command..")
            .should()
            .dependOnClassesThat(resideInAnyPackage("org.evenfall.wizard..", "org.evenfall.command.."))
            .because("Main builds the object graph by hand");

    /** Classes of the physical things and of the trade that compute: neither record nor enum nor interface. */
    private static final DescribedPredicate<JavaClass> CALCULATORS = resideInAnyPackage(
                    "org.evenfall.granule..",
                    "org.evenfall.flight..",
                    "org.evenfall.machine..",
                    "org.evenfall.rate..",
                    "org.evenfall.reference..",
                    "org.evenfall.trays..")
            .and(DescribedPredicate.describe(
                    "compute",
                    type -> !type.isRecord()
                            && !type.isEnum()
                            && !type.isInterface()
                            && !type.isEquivalentTo(SpreadPattern.class)));

    @ArchTest
    static final ArchRule facesUseNoCalculator = noClasses()
            .that()
            .resideInAnyPackage("org.evenfall.wizard..", "org.evenfall.command..", "org.evenfall.result..")
            .should()
            .dependOnClassesThat(CALCULATORS)
            .because("a face shows records of the floors below; what is computed from them is computed in setup");

    @ArchTest
    static final ArchRule formsKnowNoStep = noClasses()
            .that()
            .resideInAPackage("org.evenfall.wizard.form..")
            .should()
            .dependOnClassesThat(resideInAnyPackage("org.evenfall.wizard", "org.evenfall.wizard.picture..")
                    .or(type(org.evenfall.finding.Step.class)))
            .because("a form is used by every step");
}
