package org.manubrium.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.manubrium.anatomy.Segment;
import org.manubrium.anatomy.SegmentSet;

/**
 * The roots of each tendon reflex, from lesion to reading, against each school's form. Every form must hold the root whose
 * loss lessens the reflex most, and no root may lessen it that no school names.
 */
class ReflexRootsTest {
    private static final List<String> TENDON_REFLEXES = List.of(
            "biceps-reflex",
            "brachioradialis-reflex",
            "triceps-reflex",
            "knee-reflex",
            "ankle-reflex",
            "adductor-reflex",
            "medial-hamstring-reflex");

    /** What one root, wholly lost, leaves of a reflex, as the grade that is read. */
    private static double left(String reflex, Segment root) {
        return Patient.with("root " + root + " left").grade(reflex + ":left");
    }

    @DisplayName(
            "MSD Manual Professional, How to assess reflexes; NCBI Bookshelf chapter, Physiology, Deep Tendon Reflexes; "
                    + "university teaching notes (read in secondary texts)")
    @ParameterizedTest
    @CsvSource({
        "biceps-reflex, C5-C6, C5-C6",
        "brachioradialis-reflex, C6, C5-C6",
        "triceps-reflex, C7, C6-C8",
        "finger-flexor-reflex, C8, C7-T1",
        "knee-reflex, L4, L2-L4",
        "ankle-reflex, S1, L5-S2",
        "medial-hamstring-reflex, L5, L5-S1"
    })
    void aRootLessensTheReflexesThatSchoolsGiveItAndNoOther(String reflex, String principal, String widest) {
        double healthy = Patient.healthy().grade(reflex + ":left");
        Set<Segment> lessening = new TreeSet<>();
        Segment.all().stream().filter(root -> left(reflex, root) < healthy).forEach(lessening::add);

        assertThat(SegmentSet.parse(widest).orElseThrow().segments()).containsAll(lessening);
        assertThat(lessening)
                .containsAll(SegmentSet.parse(principal).orElseThrow().segments());
    }

    @DisplayName("a stretch reflex is answered by the muscle that is stretched (muscle of each reflex: MSD Manual "
            + "Professional, How to assess reflexes; read in secondary texts; obturator and hamstring rows as tabled)")
    @ParameterizedTest
    @CsvSource({
        "biceps-reflex, biceps",
        "brachioradialis-reflex, brachioradialis",
        "triceps-reflex, triceps",
        "knee-reflex, quadriceps",
        "ankle-reflex, gastrocnemius-soleus",
        "adductor-reflex, hip-adductors",
        "medial-hamstring-reflex, medial-hamstrings"
    })
    void aReflexIsSilencedByTheLossOfItsOwnMuscleAndNoOtherOfThemIs(String reflex, String muscle) {
        Patient patient = Patient.with("muscle left at " + muscle);
        Patient healthy = Patient.healthy();

        assertThat(patient.grade(reflex + ":left")).isZero();
        assertThat(TENDON_REFLEXES)
                .filteredOn(other -> !other.equals(reflex))
                .allSatisfy(other ->
                        assertThat(patient.grade(other + ":left")).as(other).isEqualTo(healthy.grade(other + ":left")));
    }

    @DisplayName("each convention's own form names the root that matters most (tables of the conventions)")
    @ParameterizedTest
    @CsvSource({
        "biceps-reflex, C5",
        "triceps-reflex, C7",
        "brachioradialis-reflex, C6",
        "knee-reflex, L4",
        "ankle-reflex, S1"
    })
    void everyConventionNamesThePrincipalRoot(String reflex, Segment principal) {
        var conventions = Patient.REFERENCE.marking().conventions();

        assertThat(conventions.ids())
                .hasSizeGreaterThanOrEqualTo(3)
                .allSatisfy(convention -> assertThat(conventions
                                .roots(convention, reflex)
                                .orElseThrow()
                                .accepted())
                        .anySatisfy(set -> assertThat(set.segments()).contains(principal)));
    }
}
