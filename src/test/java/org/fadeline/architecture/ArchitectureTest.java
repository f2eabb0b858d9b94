package org.fadeline.architecture;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.Set;
import org.jspecify.annotations.NullMarked;

/** Which package may know which, each rule with its reason. */
@AnalyzeClasses(
    packages = "org.fadeline",
    importOptions = {ImportOption.DoNotIncludeTests.class})
class ArchitectureTest {
  private static final String JDK = "java..";
  private static final String NULLNESS = "org.jspecify..";

  private static ArchRule onlyKnows(String where, String why, String... packages) {
    String[] allowed = new String[packages.length + 3];
    allowed[0] = JDK;
    allowed[1] = NULLNESS;
    allowed[2] = "org.fadeline." + where;
    System.arraycopy(packages, 0, allowed, 3, packages.length);
    return classes()
        .that()
        .resideInAPackage("org.fadeline." + where)
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage(allowed)
        .because(why);
  }

  @ArchTest
  static final ArchRule MODEL =
      onlyKnows("model..", "the record of a match outlives every way of showing it");

  @ArchTest
  static final ArchRule STATS =
      onlyKnows(
          "stats..",
          "the numerics know nothing of angling, so that a statistician can judge them alone",
          "org.apache.commons.statistics..",
          "org.apache.commons.numbers..",
          "org.apache.commons.rng..");

  @ArchTest
  static final ArchRule ANALYSIS =
      onlyKnows(
          "analysis..",
          "a review is a function of the record and the settings, of no file and no screen",
          "org.fadeline.model..",
          "org.fadeline.stats..");

  @ArchTest
  static final ArchRule REPLAY =
      onlyKnows(
          "replay..",
          "what shows at an instant depends on the record alone",
          "org.fadeline.model..");

  @ArchTest
  static final ArchRule IO =
      onlyKnows(
          "io..",
          "files hold the record, not what is concluded from it",
          "org.fadeline.model..",
          "tools.jackson..",
          "com.fasterxml.jackson.annotation..",
          "org.apache.commons.csv..");

  @ArchTest
  static final ArchRule LOG =
      onlyKnows(
          "log..",
          "what a press makes of the record must be the same on every screen and in every test",
          "org.fadeline.model..",
          "org.fadeline.replay..",
          "org.fadeline.io..");

  @ArchTest
  static final ArchRule JAVAFX_ONLY_IN_UI =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.fadeline.ui..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("javafx..", "org.controlsfx..", "atlantafx..", "org.jfree.fx..")
          .because("everything but the window must run where there is no toolkit and no display");

  @ArchTest
  static final ArchRule STATE_WITHOUT_SCENE =
      noClasses()
          .that()
          .resideInAPackage("org.fadeline.ui.state..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("javafx.scene..", "javafx.stage..")
          .because("the workbench's state must be testable without a window")
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule SCREENS_KEEP_APART =
      slices()
          .matching("org.fadeline.ui.(*)..")
          .namingSlices("$1")
          .that(areScreens())
          .should()
          .notDependOnEachOther()
          .because("a screen that knows another cannot be changed alone")
          .allowEmptyShould(true);

  private static DescribedPredicate<com.tngtech.archunit.library.dependencies.Slice> areScreens() {
    return DescribedPredicate.describe(
        "are screens",
        slice -> !Set.of("state", "control", "window", "start").contains(slice.getDescription()));
  }

  @ArchTest
  static final ArchRule CONTROLS_KNOW_NO_SCREEN =
      classes()
          .that()
          .resideInAnyPackage("org.fadeline.ui.control..", "org.fadeline.ui.state..")
          .should()
          .onlyDependOnClassesThat(
              resideOutsideOfPackage("org.fadeline.ui..")
                  .or(resideInAnyPackage("org.fadeline.ui.control..", "org.fadeline.ui.state..")))
          .because("what every screen uses must not change with one of them");

  @ArchTest
  static final ArchRule NO_SCREEN_KNOWS_THE_WINDOW =
      noClasses()
          .that()
          .resideOutsideOfPackages("org.fadeline.ui", "org.fadeline.ui.window..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.fadeline.ui.window..")
          .because("a screen is shown in any window, and in a test in none");

  @ArchTest
  static final ArchRule STATE_WITHOUT_CONTROLS =
      noClasses()
          .that()
          .resideInAPackage("org.fadeline.ui.state..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.fadeline.ui.control..")
          .because("what is shown is decided before anything shows it");

  @ArchTest
  static final ArchRule NO_CYCLES =
      slices()
          .matching("org.fadeline.(**)")
          .should()
          .beFreeOfCycles()
          .because("packages that need each other are one package that nobody can read");

  @ArchTest
  static final ArchRule STREAMS_ONLY_IN_CLI =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.fadeline.cli..")
          .should()
          .accessField(System.class, "out")
          .orShould()
          .accessField(System.class, "err")
          .because("a window or a library that prints spoils JSON on standard output");

  @ArchTest
  static final ArchRule NOBODY_KNOWS_THE_ROOT =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.fadeline")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.fadeline")
          .because("the entry point chooses between window and command line; nothing needs it");

  @ArchTest
  static final ArchRule CLI_AND_UI_KEEP_APART =
      noClasses()
          .that()
          .resideInAPackage("org.fadeline.ui..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.fadeline.cli..")
          .because("the window is handed to the command line by the entry point, not looked up");

  @ArchTest
  static final ArchRule CLI_WITHOUT_UI =
      noClasses()
          .that()
          .resideInAPackage("org.fadeline.cli..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.fadeline.ui..")
          .because("a command must start where there is no toolkit");

  @ArchTest
  static final ArchRule ONE_PLACE_ASKS_FOR_FILES =
      noClasses()
          .that()
          .doNotHaveSimpleName("DialogPathChooser")
          .should()
          .dependOnClassesThat()
          .haveNameMatching("javafx\\.stage\\.(FileChooser|DirectoryChooser).*")
          .because("a test cannot answer the system's own dialogs; it can answer a PathChooser");

  @ArchTest
  static final ArchRule NULLNESS_IS_CHECKED_EVERYWHERE =
      classes()
          .should(liveInANullMarkedPackage())
          .because("the null checker looks only at packages that are marked");

  private static ArchCondition<JavaClass> liveInANullMarkedPackage() {
    return new ArchCondition<>("live in a package marked @NullMarked") {
      @Override
      public void check(JavaClass item, ConditionEvents events) {
        boolean marked = item.getPackage().isAnnotatedWith(NullMarked.class);
        events.add(
            new SimpleConditionEvent(
                item, marked, item.getName() + (marked ? " is" : " is not") + " null-marked"));
      }
    };
  }
}
