package org.manubrium.anatomy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Expected numbers are worked out by hand from the rows of {@link TinyBody}. */
class AnatomyTest {
    private static final Offset<Double> CLOSE = within(1e-12);
    private static final Onset WEEKS = Onset.parse("6 weeks").orElseThrow();

    private final Anatomy anatomy = TinyBody.anatomy();

    private double kept(Pathway path, double loss, String... sites) {
        List<Lesion> lesions = new ArrayList<>();
        for (String site : sites) {
            lesions.addAll(anatomy.lesions(site, loss, WEEKS));
        }
        return path.conduction(at -> lesions.stream()
                .filter(lesion -> lesion.site().covers(at))
                .mapToDouble(lesion -> 1 - lesion.loss())
                .reduce(1, (a, b) -> a * b));
    }

    @Nested
    class ReflexArcs {
        private final Pathway arc = anatomy.arc("triceps-reflex", Side.LEFT);

        @Test
        void aRootTakesItsShare() {
            assertThat(kept(arc, 0.8, "root C7 left")).isCloseTo(1 - 0.75 * 0.8, CLOSE);
            assertThat(kept(arc, 1, "root C6 left", "root C7 left")).isZero();
        }

        @Test
        void aNerveTakesAllOfItFromItsBranchDown() {
            assertThat(kept(arc, 1, "radial nerve left at axilla")).isZero();
            assertThat(kept(arc, 1, "radial nerve left at spiral groove")).isEqualTo(1);
            assertThat(kept(arc, 1, "radial nerve left")).isZero();
        }

        @Test
        void eachRootRunsThroughItsOwnTrunk() {
            assertThat(kept(arc, 1, "brachial plexus left at upper trunk")).isCloseTo(0.75, CLOSE);
            assertThat(kept(arc, 1, "brachial plexus left at middle trunk")).isCloseTo(0.25, CLOSE);
        }

        @Test
        void theSegmentIsPassedOnceOnTheWayInAndOnceOnTheWayOut() {
            assertThat(kept(arc, 0.5, "dorsal horn C7 left", "anterior horn C7 left"))
                    .isCloseTo(0.25 + 0.75 * 0.25, CLOSE);
        }

        @Test
        void theMuscleAndItsJunctionEndTheArc() {
            assertThat(kept(arc, 0.5, "muscle left at triceps")).isCloseTo(0.5, CLOSE);
            assertThat(kept(arc, 0.5, "neuromuscular junction left")).isCloseTo(0.5, CLOSE);
        }

        @Test
        void theOtherSideAndTheTractsAreNotPartOfIt() {
            assertThat(kept(arc, 1, "root C7 right", "radial nerve right", "motor cortex both"))
                    .isEqualTo(1);
            assertThat(kept(arc, 1, "lateral corticospinal tract C7 left")).isEqualTo(1);
        }

        @Test
        void itsControlComesFromTheOtherSideOfTheBrain() {
            Pathway control = anatomy.control("triceps-reflex", Side.LEFT);

            assertThat(kept(control, 1, "motor cortex right at arm")).isZero();
            assertThat(kept(control, 1, "motor cortex left", "motor cortex right at leg"))
                    .isEqualTo(1);
            assertThat(kept(control, 1, "lateral corticospinal tract C7 left")).isCloseTo(0.25, CLOSE);
        }
    }

    @Nested
    class Movements {
        private final Pathway power = anatomy.motor("elbow-extension", Side.RIGHT);

        @Test
        void aCorticalLesionLeavesTheShareOfTheOtherTracts() {
            assertThat(kept(power, 1, "motor cortex left")).isCloseTo(0.1, CLOSE);
            assertThat(kept(power, 1, "motor cortex left", "reticulospinal tract C3 right"))
                    .isZero();
        }

        @Test
        void theLowerMotorNeuroneAloneDoesNotFeelIt() {
            Pathway lower = anatomy.lowerMotor("elbow-extension", Side.RIGHT);

            assertThat(kept(lower, 1, "motor cortex left", "reticulospinal tract C3 right"))
                    .isEqualTo(1);
            assertThat(kept(lower, 1, "anterior horn C7 right")).isCloseTo(0.25, CLOSE);
        }

        @Test
        void aCordLesionBelowItsRootsSparesIt() {
            assertThat(kept(power, 1, "spinal cord C8 right half")).isEqualTo(1);
        }
    }

    @Nested
    class Feeling {
        @Test
        void pinCrossesWithinTwoSegments() {
            String cut = "spinal cord T8 right half";

            assertThat(pin("t8", Side.LEFT, cut)).isEqualTo(1);
            assertThat(pin("t9", Side.LEFT, cut)).isCloseTo(0.5, CLOSE);
            assertThat(pin("t10", Side.LEFT, cut)).isZero();
            assertThat(pin("t10", Side.RIGHT, cut)).isEqualTo(1);
            assertThat(pin("t8", Side.RIGHT, cut)).isZero();
        }

        @Test
        void vibrationStaysOnItsSideAndNeighboursHelp() {
            Pathway right = anatomy.sensory("vibration", "t9", Side.RIGHT);

            assertThat(kept(right, 1, "root T9 right")).isCloseTo(0.5, CLOSE);
            assertThat(kept(right, 1, "root T8 right")).isCloseTo(0.75, CLOSE);
            assertThat(kept(right, 1, "spinal cord T8 right half")).isZero();
            assertThat(kept(right, 1, "spinal cord T8 left half")).isEqualTo(1);
        }

        @Test
        void aPatchHasItsOwnRootsAndNoNeighbours() {
            Pathway web = anatomy.sensory("vibration", "web", Side.RIGHT);

            assertThat(kept(web, 1, "root C7 right")).isCloseTo(0.5, CLOSE);
            assertThat(kept(web, 1, "root C8 right", "root C5 right")).isEqualTo(1);
            assertThat(kept(web, 1, "radial nerve right at spiral groove")).isZero();
        }

        @Test
        void theMiddleOfTheCordTakesPinOnBothSides() {
            assertThat(pin("t9", Side.LEFT, "spinal cord T8-9 central")).isZero();
            assertThat(pin("t9", Side.RIGHT, "spinal cord T8-9 central")).isZero();
            assertThat(pin("t10", Side.RIGHT, "spinal cord T8-9 central")).isCloseTo(0.5, CLOSE);
        }

        private double pin(String point, Side side, String lesion) {
            return kept(anatomy.sensory("pin", point, side), 1, lesion);
        }
    }

    @Nested
    class Refusals {
        @Test
        void unknownIdsAreNamed() {
            assertThatThrownBy(() -> anatomy.movement("elbow-bending"))
                    .hasMessage("no movement is called \"elbow-bending\"");
            assertThatThrownBy(() -> anatomy.arc("knee-reflex", Side.LEFT))
                    .hasMessage("no reflex arc is called \"knee-reflex\"");
            assertThatThrownBy(() -> anatomy.tract("pyramid", Side.LEFT, Segment.C7, "arm"))
                    .hasMessage("no tract is called \"pyramid\"");
        }

        @Test
        void aCourseThatRunsInACircleIsNamed() {
            Anatomy circle = new Anatomy(TinyBody.tables(List.of(
                    TinyBody.station("radial-axilla", "radial nerve", "axilla", "radial-groove"),
                    TinyBody.station("radial-groove", "radial nerve", "spiral groove", "radial-axilla"))));

            assertThatThrownBy(() -> circle.arc("triceps-reflex", Side.LEFT))
                    .hasMessage("the course of \"radial-axilla\" runs in a circle");
        }

        @Test
        void twoRowsOfOneNameAreNamed() {
            List<Station> twice = new ArrayList<>(TinyBody.stations());
            twice.addAll(TinyBody.stations());

            assertThatThrownBy(() -> new Anatomy(TinyBody.tables(twice))).hasMessage("two rows are called \"trunk\"");
        }
    }
}
