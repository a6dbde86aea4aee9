package dryfit;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** The architecture is this one list. Each floor sees those below it; neighbours do not meet. */
@AnalyzeClasses(packages = "dryfit", importOptions = ImportOption.DoNotIncludeTests.class)
class FloorsTest {

  /** Bottom first; packages on one line share a floor. */
  static final List<List<String>> FLOORS =
      List.of(
          List.of("measure"),
          List.of("geometry"),
          List.of("solid", "timber"),
          List.of("document"),
          List.of("build"),
          List.of("fit"),
          List.of("shop"),
          List.of("export"),
          List.of("app"),
          List.of("cli", "view"));

  @ArchTest
  static void floorsOnlySeeTheFloorsBelow(
      com.tngtech.archunit.core.domain.JavaClasses dryfitClasses) {
    List<String> below = new ArrayList<>();
    for (List<String> floor : FLOORS) {
      for (String room : floor) {
        String[] forbidden =
            FLOORS.stream()
                .flatMap(List::stream)
                .filter(name -> !name.equals(room) && !below.contains(name))
                .map(FloorsTest::under)
                .toArray(String[]::new);
        noClasses()
            .that()
            .resideInAPackage(under(room))
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(forbidden)
            .allowEmptyShould(true)
            .check(dryfitClasses);
      }
      below.addAll(floor);
    }
  }

  @ArchTest
  static final ArchRule everyClassLivesOnAFloor =
      classes()
          .should()
          .resideInAnyPackage(
              FLOORS.stream().flatMap(List::stream).map(FloorsTest::under).toArray(String[]::new));

  @ArchTest
  static final ArchRule packagesDoNotGoInCircles =
      slices().matching("dryfit.(**)").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule onlyTheJcsgKernelKnowsJcsg = onlyIn("eu.mihosoft..", "dryfit.solid.jcsg..");

  @ArchTest
  static final ArchRule onlyReadersAndWritersKnowJson =
      onlyIn("tools.jackson..", "dryfit.document..", "dryfit.export..");

  @ArchTest
  static final ArchRule onlyPaperKnowsItsPdfLibrary =
      onlyIn("org.apache.pdfbox..", "dryfit.export.paper..");

  @ArchTest
  static final ArchRule onlyTheTerminalKnowsItsCommandLibrary = onlyIn("picocli..", "dryfit.cli..");

  @ArchTest
  static final ArchRule onlyTheWindowKnowsJavaFx =
      onlyIn("javafx..", "dryfit.view..", "dryfit.solid.jcsg..");

  @ArchTest
  static final ArchRule nothingOutsideTheFacesChanges =
      fields()
          .that()
          .areDeclaredInClassesThat(outside("dryfit.cli..", "dryfit.view.."))
          .and()
          .areStatic()
          .should()
          .beFinal();

  private static final Pattern EPSILON_NAME =
      Pattern.compile("^eps|(^|_)EPS|Eps|(?i:epsilon|tolerance)");

  @ArchTest
  static final ArchRule epsilonsLiveInOnePlace =
      fields()
          .that()
          .areDeclaredInClassesThat(outside("dryfit.measure.."))
          .should(
              new com.tngtech.archunit.lang.ArchCondition<>("not be named like an epsilon") {
                @Override
                public void check(
                    com.tngtech.archunit.core.domain.JavaField field, ConditionEvents events) {
                  // "steps" holds the same letters and is no epsilon.
                  boolean named = EPSILON_NAME.matcher(field.getName()).find();
                  if (named) {
                    events.add(
                        com.tngtech.archunit.lang.SimpleConditionEvent.violated(
                            field, field.getFullName() + " belongs in measure.Tolerances"));
                  }
                }
              });

  private static ArchRule onlyIn(String library, String... owners) {
    return noClasses()
        .that(outside(owners))
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(library)
        .allowEmptyShould(true);
  }

  private static DescribedPredicate<JavaClass> outside(String... packages) {
    return DescribedPredicate.not(resideInAnyPackage(packages));
  }

  private static String under(String room) {
    return "dryfit." + room + "..";
  }
}
