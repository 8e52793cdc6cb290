package org.marktwice;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.name;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaPackage;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.awt.geom.Point2D;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/** The arrows between packages and what the engine must do without, as the contributors' guide promises them. */
@AnalyzeClasses(packages = "org.marktwice", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    private static final String ROOT = "org.marktwice.";
    private static final Path SOURCES = Path.of("src/main/java/org/marktwice");

    /** Each package with those that it may use, besides itself. */
    private static final Map<String, List<String>> ARROWS = arrows();

    private static Map<String, List<String>> arrows() {
        Map<String, List<String>> arrows = new LinkedHashMap<>();
        List<String> engine = List.of(
                "timber", "drawing", "scenario", "bench", "fit", "advice", "rulebook"); // each uses those before it
        for (int i = 0; i < engine.size(); i++) arrows.put(engine.get(i), engine.subList(0, i));
        arrows.put("files", List.of("timber", "drawing", "scenario", "bench"));
        arrows.put("picture", engine);
        arrows.put("quiz", and(engine, "files", "picture"));
        arrows.put("feedback", and(engine, "picture"));
        arrows.put("classroom", and(engine, "files", "picture", "feedback", "quiz"));
        arrows.put("print", and(engine, "files", "picture", "feedback", "quiz", "classroom"));
        arrows.put("view", and(engine, "files", "picture", "feedback", "quiz", "classroom", "print"));
        arrows.put("cli", and(engine, "files", "picture", "feedback", "quiz", "classroom", "print", "view"));
        return arrows;
    }

    private static List<String> and(List<String> some, String... more) {
        return Stream.concat(some.stream(), Arrays.stream(more)).toList();
    }

    private static String[] packages(List<String> names) {
        return names.stream().map(n -> ROOT + n + "..").toArray(String[]::new);
    }

    /** Below the window and the command line. */
    private static String[] below(String... others) {
        List<String> below = new ArrayList<>(ARROWS.keySet());
        below.removeAll(List.of("view", "cli"));
        below.removeAll(List.of(others));
        return packages(below);
    }

    @ArchTest
    void packagesUseOnlyWhatLiesBelowThem(JavaClasses all) {
        for (Map.Entry<String, List<String>> arrow : ARROWS.entrySet()) {
            if (!all.containPackage(ROOT + arrow.getKey())) continue;
            String[] allowed = packages(and(arrow.getValue(), arrow.getKey()));
            classes()
                    .that()
                    .resideInAPackage(ROOT + arrow.getKey() + "..")
                    .should()
                    .onlyDependOnClassesThat(resideOutsideOfPackage(ROOT + ".").or(resideInAnyPackage(allowed)))
                    .check(all);
        }
    }

    @ArchTest
    void everyPackageHasItsPlace(JavaClasses all) {
        List<String> found = all.getPackage("org.marktwice").getSubpackages().stream()
                .map(JavaPackage::getRelativeName)
                .toList();

        assertThat(found).contains("timber", "rulebook", "view").isSubsetOf(ARROWS.keySet());
    }

    @ArchTest
    static final ArchRule THE_ENGINE_DRAWS_NOTHING = noClasses()
            .that()
            .resideInAnyPackage(below("picture", "feedback", "quiz", "classroom", "print"))
            .should()
            .dependOnClassesThat(
                    resideInAnyPackage("java.awt..").and(not(resideInAnyPackage(Point2D.class.getPackageName()))));

    @ArchTest
    static final ArchRule ONLY_THE_WINDOW_AND_ITS_STARTER_KNOW_SWING = noClasses()
            .that()
            .resideInAnyPackage(below())
            .should()
            .dependOnClassesThat()
            .resideInAPackage("javax.swing..");

    @ArchTest
    static final ArchRule THE_ENGINE_PRINTS_NOTHING_AND_NEVER_EXITS = noClasses()
            .that()
            .resideInAnyPackage(below())
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .orShould()
            .callMethod(System.class, "exit", int.class)
            .orShould()
            .callMethod(Runtime.class, "halt", int.class)
            .orShould()
            .callMethod(Throwable.class, "printStackTrace");

    @ArchTest
    static final ArchRule THE_ENGINE_HAS_NO_CLOCK = noClasses()
            .that()
            .resideInAnyPackage(below())
            .should()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(System.class, "nanoTime")
            .orShould()
            .callMethod(Clock.class, "systemUTC")
            .orShould()
            .callMethod(Clock.class, "systemDefaultZone")
            .orShould()
            .callMethod(Instant.class, "now")
            .orShould()
            .callMethodWhere(target(name("now")).and(target(owner(resideInAnyPackage("java.time..")))));

    @ArchTest
    static final ArchRule THE_ENGINE_LEAVES_NOTHING_TO_CHANCE = noClasses()
            .that()
            .resideInAnyPackage(below())
            .should()
            .callConstructor(Random.class)
            .orShould()
            .callMethod(Math.class, "random")
            .orShould()
            .dependOnClassesThat()
            .haveNameMatching("java\\.util\\.concurrent\\.ThreadLocalRandom|java\\.security\\.SecureRandom");

    @ArchTest
    static final ArchRule THE_ENGINE_SPEAKS_THE_SAME_EVERYWHERE = noClasses()
            .that()
            .resideInAnyPackage(below())
            .should()
            .callMethod(Locale.class, "getDefault")
            .orShould()
            .callMethod(String.class, "format", String.class, Object[].class)
            .orShould()
            .callMethod(String.class, "formatted", Object[].class)
            .orShould()
            .callMethod(String.class, "toLowerCase")
            .orShould()
            .callMethod(String.class, "toUpperCase");

    @ArchTest
    static final ArchRule THE_ENGINE_KEEPS_NO_PREFERENCES = noClasses()
            .that()
            .resideInAnyPackage(below())
            .should()
            .dependOnClassesThat()
            .resideInAPackage("java.util.prefs..");

    @Test
    void everyPackageSaysWhatLivesThereAndIsNullMarked() throws IOException, ClassNotFoundException {
        List<Path> folders = sources().stream().map(Path::getParent).distinct().toList();

        assertThat(folders).hasSizeGreaterThan(8);
        for (Path folder : folders) {
            Path info = folder.resolve("package-info.java");
            assertThat(info).exists();
            assertThat(Files.readString(info)).startsWith("/**");
            String name = Path.of("src/main/java").relativize(folder).toString().replace(File.separatorChar, '.');
            assertThat(Class.forName(name + ".package-info").getPackage().isAnnotationPresent(NullMarked.class))
                    .as(name)
                    .isTrue();
        }
    }

    @Test
    void noSourceFileIsOver600LinesAndNineInTenAreUnder300() throws IOException {
        Map<Path, Integer> lines = new TreeMap<>();
        for (Path file : sources()) lines.put(file, Files.readAllLines(file).size());

        assertThat(lines).hasSizeGreaterThan(50);
        assertThat(lines.entrySet().stream().filter(e -> e.getValue() > 600)).isEmpty();
        List<Map.Entry<Path, Integer>> over =
                lines.entrySet().stream().filter(e -> e.getValue() > 300).toList();
        assertThat(over.size() * 10).as("over 300 lines: %s", over).isLessThanOrEqualTo(lines.size());
    }

    private static List<Path> sources() throws IOException {
        try (Stream<Path> walk = Files.walk(SOURCES)) {
            return walk.filter(p -> p.toString().endsWith(".java")).sorted().toList();
        }
    }
}
