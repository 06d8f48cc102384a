package org.evenfall.trays;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** What this room does not know. */
@AnalyzeClasses(packages = "org.evenfall.trays", importOptions = ImportOption.DoNotIncludeTests.class)
class TraysRoomTest {

    @ArchTest
    static final ArchRule noFindings = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.evenfall.finding..")
            .because("the room gives plain results; setup makes the sentences");

    @ArchTest
    static final ArchRule theMoveDoesNotKnowTheOrderOfCure = noClasses()
            .that()
            .haveSimpleNameStartingWith("MoveChooser")
            .or()
            .haveSimpleNameStartingWith("ResponseModel")
            .should()
            .dependOnClassesThat()
            .haveSimpleNameEndingWith("Advisor")
            .because("there is no circle inside the room");
}
