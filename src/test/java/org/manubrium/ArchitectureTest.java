package org.manubrium;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.lang.conditions.ArchPredicates.are;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaConstructorCall;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.Architectures.LayeredArchitecture;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;
import org.manubrium.school.bedside.Encounter;
import org.manubrium.school.bedside.Taken;

/** The boundaries of the house. Each rule says why it is there. */
class ArchitectureTest {
    private static final String BASE = "org.manubrium.";
    private static final int FEWEST_CLASSES = 80;

    /** From the top down: a package may use what stands after it, never what stands before it. */
    private static final List<String> LAYERS = List.of(
            "web|cli",
            "school",
            "exchange",
            "store",
            "security",
            "casefile",
            "tables",
            "learning",
            "measurement",
            "marking",
            "reasoning",
            "patient",
            "appearance",
            "examination",
            "anatomy");

    private static final String[] PURE = {
        BASE + "anatomy..",
        BASE + "examination..",
        BASE + "appearance..",
        BASE + "patient..",
        BASE + "reasoning..",
        BASE + "marking..",
        BASE + "learning..",
        BASE + "measurement.."
    };

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.manubrium");

    @Test
    void theScanIsNotEmpty() {
        assertThat(CLASSES.size()).isGreaterThan(FEWEST_CLASSES);
    }

    @Test
    void packagesFlowDownwardOnly() {
        LayeredArchitecture house = layeredArchitecture()
                .consideringOnlyDependenciesInLayers()
                .withOptionalLayers(true)
                .layer("top")
                .definedBy("org.manubrium");
        for (String layer : LAYERS) {
            house = house.layer(layer).definedBy(packages(layer));
        }
        for (int i = 0; i < LAYERS.size(); i++) {
            String[] above = above(i);
            house = house.whereLayer(LAYERS.get(i)).mayOnlyBeAccessedByLayers(above);
        }
        house.whereLayer("top").mayNotBeAccessedByAnyLayer().check(CLASSES);
    }

    /** So that a new package is given its floor, and not left beside the house. */
    @Test
    void everyPackageHasItsLayer() {
        Set<String> known = Set.copyOf(List.of(String.join("|", LAYERS).split("\\|")));

        assertThat(CLASSES)
                .filteredOn(type -> !type.getPackageName().equals("org.manubrium"))
                .allSatisfy(type -> assertThat(known)
                        .contains(type.getPackageName().substring(BASE.length()).split("\\.")[0]));
    }

    @Test
    void doorsDoNotUseOneAnother() {
        noClasses()
                .that()
                .resideInAPackage(BASE + "web..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage(BASE + "cli..")
                .check(CLASSES);
        noClasses()
                .that()
                .resideInAPackage(BASE + "cli..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(BASE + "web..", BASE + "store..")
                .because("a command needs no database; serve, which does, is wired at the top")
                .check(CLASSES);
    }

    @Test
    void noPackageNeedsOneThatNeedsIt() {
        slices().matching("org.manubrium.(**)").should().beFreeOfCycles().check(CLASSES);
    }

    @Test
    void pureClassesReachNoOutsideWorld() {
        noClasses()
                .that()
                .resideInAnyPackage(PURE)
                .should()
                .dependOnClassesThat(resideInAnyPackage(
                                "java.sql..",
                                "javax.sql..",
                                "java.net..",
                                "java.nio.file..",
                                "org.jdbi..",
                                "io.javalin..",
                                "jakarta..",
                                "org.slf4j..",
                                "java.util.logging..")
                        .or(nameMatching(
                                "java\\.io\\.(File|Reader|Writer|InputStream|OutputStream|Print|Buffered|Random).*"))
                        .or(nameMatching("java\\.time\\.Clock|java\\.util\\.concurrent\\.ThreadLocalRandom")))
                .because("a mark must follow from its arguments alone")
                .allowEmptyShould(true)
                .check(CLASSES);
    }

    @Test
    void pureClassesAskNeitherTheTimeNorChance() {
        noClasses()
                .that()
                .resideInAnyPackage(PURE)
                .should()
                .callMethodWhere(readsClockOrChance())
                .orShould()
                .callConstructorWhere(unseededRandom())
                .allowEmptyShould(true)
                .check(CLASSES);
    }

    @Test
    void everyPackageIsNullMarked() {
        assertThat(CLASSES)
                .extracting(JavaClass::getPackage)
                .allSatisfy(where -> assertThat(where.isAnnotatedWith(NullMarked.class))
                        .as(where.getName())
                        .isTrue());
    }

    @Test
    void nothingPrintsPastTheConsole() {
        noClasses()
                .that(are(describe("not the console", type -> !type.getName().equals(BASE + "cli.Console"))))
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .because("standard output belongs to a command's result")
                .check(CLASSES);
    }

    @Test
    void transactionsBelongToTheSchool() {
        noClasses()
                .that()
                .resideInAnyPackage(BASE + "web..", BASE + "exchange..", BASE + "security..")
                .should()
                .callMethodWhere(describe(
                        "Database.inTransaction",
                        (JavaMethodCall call) -> call.getTargetOwner().getName().equals(BASE + "store.Database")
                                && call.getName().equals("inTransaction")))
                .check(CLASSES);
    }

    @Test
    void sqlIsInTheStoreOnly() {
        noClasses()
                .that()
                .resideOutsideOfPackage(BASE + "store..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "java.sql..", "javax.sql..", "org.jdbi..", "com.zaxxer..", "org.h2..", "org.flywaydb..")
                .check(CLASSES);
    }

    /** What a student is sent while the attempt is open cannot hold what it means, because its makers cannot reach it. */
    @Test
    void theBedsidePagesReachNoMeaningConditionOrKey() {
        noClasses()
                .that()
                .haveNameMatching("org\\.manubrium\\.web\\.student\\.(Bedside|Encounter|Choices).*")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        BASE + "patient..",
                        BASE + "casefile..",
                        BASE + "tables..",
                        BASE + "store..",
                        BASE + "school.mark..",
                        BASE + "marking",
                        BASE + "marking.key..",
                        BASE + "marking.compile..",
                        BASE + "marking.credit..")
                .check(CLASSES);
    }

    /** Nor is it among the parts of what the bedside hands out, however deep. */
    @Test
    void whatTheBedsideHandsOutIsMadeOfNothingSecret() {
        Set<Class<?>> seen = new HashSet<>();
        collect(Encounter.class, seen);
        collect(Taken.class, seen);

        assertThat(seen).hasSizeGreaterThan(15);
        assertThat(seen)
                .extracting(Class::getPackageName)
                .noneMatch(
                        name -> name.matches("org\\.manubrium\\.(patient|casefile|store|marking\\.(key|compile)).*"));
    }

    private static void collect(Class<?> type, Set<Class<?>> seen) {
        if (!type.getName().startsWith(BASE) || !seen.add(type)) {
            return;
        }
        if (type.getPermittedSubclasses() != null) {
            Arrays.stream(type.getPermittedSubclasses()).forEach(part -> collect(part, seen));
        }
        if (type.isRecord()) {
            for (RecordComponent component : type.getRecordComponents()) {
                named(component.getGenericType()).forEach(part -> collect(part, seen));
            }
        }
    }

    private static List<Class<?>> named(Type type) {
        if (type instanceof Class<?> one) {
            return List.of(one);
        }
        if (type instanceof ParameterizedType parts) {
            return Stream.concat(Stream.of(parts.getRawType()), Arrays.stream(parts.getActualTypeArguments()))
                    .flatMap(part -> named(part).stream())
                    .collect(Collectors.<Class<?>>toList());
        }
        return List.of();
    }

    private static String[] packages(String layer) {
        return List.of(layer.split("\\|")).stream()
                .map(name -> BASE + name + "..")
                .toArray(String[]::new);
    }

    private static String[] above(int layer) {
        return Stream.concat(Stream.of("top"), LAYERS.subList(0, layer).stream())
                .toArray(String[]::new);
    }

    private static DescribedPredicate<JavaMethodCall> readsClockOrChance() {
        Set<String> forbidden = Set.of(
                "java.lang.System.currentTimeMillis",
                "java.lang.System.nanoTime",
                "java.lang.System.getenv",
                "java.lang.System.getProperty",
                "java.time.Instant.now",
                "java.time.LocalDate.now",
                "java.time.LocalDateTime.now",
                "java.time.ZonedDateTime.now",
                "java.lang.Math.random",
                "java.util.UUID.randomUUID");
        return describe(
                "the clock, the environment or chance",
                call -> forbidden.contains(call.getTargetOwner().getName() + "." + call.getName()));
    }

    private static DescribedPredicate<JavaConstructorCall> unseededRandom() {
        return describe(
                "new Random() without a seed",
                call -> call.getTargetOwner().isEquivalentTo(Random.class)
                        && call.getTarget().getRawParameterTypes().isEmpty());
    }
}
