package wickmark.cli;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.codeUnits;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** The rules that keep the modules apart; DEVELOPERS.md says why each is there. */
@AnalyzeClasses(packages = "wickmark", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {
  private static final DescribedPredicate<JavaClass> OURS_OR_THE_JDKS =
      describe(
          "ours or the JDK's",
          type -> {
            String name = type.getBaseComponentType().getPackageName();
            return name.isEmpty() || name.startsWith("java.") || name.startsWith("wickmark.");
          });

  /** The order in which a picture goes through imaging; findings belong to all of them. */
  private static final List<String> STAGES =
      List.of(
          "photo",
          "raster",
          "strip",
          "pose",
          "card",
          "straight",
          "paper",
          "scale",
          "line",
          "lane",
          "spot",
          "measure");

  @ArchTest
  static void stagesUseOnlyEarlierStages(JavaClasses classes) {
    for (int stage = 0; stage < STAGES.size(); stage++) {
      for (String later : STAGES.subList(stage + 1, STAGES.size())) {
        noClasses()
            .that()
            .resideInAPackage("wickmark.imaging." + STAGES.get(stage) + "..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("wickmark.imaging." + later + "..")
            .check(classes);
      }
    }
  }

  @ArchTest
  static void everyPackageOfImagingIsAStageOrFinding(JavaClasses classes) {
    Set<String> packages = new TreeSet<>();
    for (JavaClass type : classes) {
      if (type.getPackageName().startsWith("wickmark.imaging.")) {
        packages.add(type.getPackageName().substring("wickmark.imaging.".length()));
      }
    }
    Set<String> known = new TreeSet<>(STAGES);
    known.add("finding");
    assertThat(packages).isEqualTo(known);
  }

  @ArchTest
  static final ArchRule CORE_KNOWS_NO_PIXELS_FILES_OR_SCREENS =
      noClasses()
          .that()
          .resideInAPackage("wickmark.core..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "wickmark.imaging..",
              "wickmark.cli..",
              "java.awt..",
              "javax.imageio..",
              "java.io..",
              "java.nio..",
              "picocli..",
              "boofcv..",
              "georegression..",
              "org.ddogleg..",
              "org.ejml..");

  @ArchTest
  static final ArchRule IMAGING_KNOWS_NO_FILES_OR_OPTIONS =
      noClasses()
          .that()
          .resideInAPackage("wickmark.imaging..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "wickmark.cli..", "java.io..", "java.nio.file..", "javax.imageio..", "picocli..");

  @ArchTest
  static final ArchRule NO_FOREIGN_TYPES_IN_PUBLIC_SIGNATURES =
      codeUnits()
          .that()
          .arePublic()
          .and()
          .areDeclaredInClassesThat()
          .resideInAnyPackage("wickmark.core..", "wickmark.imaging..")
          .and()
          .areDeclaredInClassesThat()
          .arePublic()
          .should()
          .haveRawReturnType(OURS_OR_THE_JDKS)
          .andShould()
          .haveRawParameterTypes(
              describe(
                  "all ours or the JDK's",
                  (List<JavaClass> types) -> types.stream().allMatch(OURS_OR_THE_JDKS)));

  @ArchTest
  static final ArchRule ONLY_THE_COMMAND_LINE_PRINTS =
      noClasses()
          .that()
          .resideOutsideOfPackage("wickmark.cli..")
          .should()
          .accessField(System.class, "out")
          .orShould()
          .accessField(System.class, "err");

  @ArchTest
  static final ArchRule ONLY_MAIN_ENDS_THE_PROCESS =
      noClasses()
          .that()
          .doNotHaveFullyQualifiedName(Wickmark.class.getName())
          .should()
          .callMethod(System.class, "exit", int.class)
          .orShould()
          .callMethod(Runtime.class, "halt", int.class);

  @ArchTest
  static final ArchRule NOTHING_USES_THE_NETWORK =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "java.net..", "javax.net..", "java.rmi..", "javax.naming..", "javax.management..")
          .orShould()
          .dependOnClassesThat()
          .haveNameMatching("java\\.nio\\.channels\\..*(Socket|Datagram|Network).*");

  @ArchTest
  static final ArchRule NO_PACKAGE_CYCLES =
      slices().matching("wickmark.(*).(*)..").should().beFreeOfCycles();
}
