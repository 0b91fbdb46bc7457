package org.manubrium.marking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Item;
import org.manubrium.examination.Reading;
import org.manubrium.marking.MarkSheet.Line;
import org.manubrium.marking.event.Event;

class MarkerTest {
    private static final Item LEFT = Student.reflex(Side.LEFT);
    private static final Item TOE = new Item("toe", Side.LEFT, "");
    private static final Item SYSTOLIC = new Item("pressure", Side.NONE, "systolic");

    private static Line line(MarkSheet sheet, String id) {
        return sheet.lines().stream().filter(l -> l.id().equals(id)).findFirst().orElseThrow();
    }

    private static double credit(Student student, String id) {
        return line(student.marked("oak"), id).credit();
    }

    @Nested
    class Whole {
        @Test
        void anEmptyAttemptScoresNothingInEveryDomain() {
            MarkSheet sheet = new Student().marked("oak");

            assertThat(sheet.total()).isZero();
            assertThat(sheet.domains())
                    .hasSize(4)
                    .allSatisfy(d -> assertThat(d.percent()).isZero());
            assertThat(sheet.lines()).allSatisfy(l -> assertThat(l.done()).isEmpty());
        }

        @Test
        void everythingRightScoresAHundred() {
            MarkSheet sheet = Student.perfect(Side.LEFT).marked("oak");

            assertThat(sheet.total()).isEqualTo(100);
            assertThat(sheet.harms()).isEmpty();
        }

        @Test
        void theTotalWeighsTheDomains() {
            Student student = new Student()
                    .probes(LEFT)
                    .probes(Student.reflex(Side.RIGHT))
                    .probes(Student.NECK);

            assertThat(student.marked("oak").total()).isEqualTo(20);
        }

        @Test
        void aConventionTheKeyDoesNotHoldIsRefused() {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new Student().marked("ash"))
                    .withMessageContaining("no form of the convention \"ash\"")
                    .withMessageContaining("[oak, elm]");
        }

        @Test
        void tickingEverythingScoresPoorly() {
            Student student = new Student();
            for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
                student.answers(Student.reflex(side), "roots", "L4", "L5", "S1", "S2", "S3")
                        .answers(Student.reflex(side), "means", "arc-root", "arc-nerve")
                        .answers(Student.reflex(side), "normal", "normal", "abnormal");
            }
            student.answers(Event.CONCLUSION, "site", "root L5 left", "root S1 left", "root S1 right", "root L5 right")
                    .answers(Event.CONCLUSION, "differential", "a=50", "b=50", "root=50", "nerve=50", "c=50")
                    .answers(Event.CONCLUSION, "next", "mri", "x", "y", "z");

            assertThat(student.marked("oak").domain(DomainName.INTERPRETATION).percent())
                    .isLessThan(10);
            assertThat(student.marked("oak").domain(DomainName.CONCLUSION).percent())
                    .isLessThan(25);
        }
    }

    @Nested
    class Essential {
        @Test
        void aPositionThatCannotShowTheSignDoesNotCount() {
            Student student = new Student().does(new Event.Moved("standing")).probes(LEFT);

            assertThat(credit(student, "essential/ankle-reflex:left")).isZero();
            assertThat(credit(student.does(new Event.Moved("lying")).probes(LEFT), "essential/ankle-reflex:left"))
                    .isEqualTo(1);
        }

        @Test
        void aBlindTechniqueDoesNotCount() {
            Student student = new Student().does(new Event.Probed(LEFT, Map.of("hammer", "soft")));

            assertThat(credit(student, "essential/ankle-reflex:left")).isZero();
        }

        @Test
        void oneSideIsNotTheOther() {
            assertThat(credit(new Student().probes(Student.reflex(Side.RIGHT)), "essential/ankle-reflex:left"))
                    .isZero();
        }
    }

    @Nested
    class ReadingOf {
        @Test
        void aReadingCountsOnlyAfterTheItemWasExamined() {
            Student early = new Student().measures(Student.NECK, 4, "cm").probes(Student.NECK);

            assertThat(credit(early, "reading/neck-vein")).isZero();
            assertThat(credit(early.measures(Student.NECK, 4, "cm"), "reading/neck-vein"))
                    .isEqualTo(1);
        }

        @Test
        void theLastReadingCounts() {
            Student student = new Student()
                    .probes(Student.NECK)
                    .measures(Student.NECK, 9, "cm")
                    .measures(Student.NECK, 4.5, "cm");

            assertThat(credit(student, "reading/neck-vein")).isEqualTo(1);
        }

        @Test
        void absentCountsOnlyAfterReinforcement() {
            Student student = new Student().probes(LEFT).grades(LEFT, "0");

            assertThat(credit(student, "reading/ankle-reflex:left")).isZero();
            assertThat(line(student.marked("oak"), "reading/ankle-reflex:left").why())
                    .contains("reinforcement");

            student.does(new Event.Probed(LEFT, Map.of("reinforcement", "clench")))
                    .grades(LEFT, "0");
            assertThat(credit(student, "reading/ankle-reflex:left")).isEqualTo(1);
        }

        @Test
        void aNumberInAnotherUnitEarnsNothing() {
            Student student = new Student().probes(Student.NECK).measures(Student.NECK, 4, "mm");

            assertThat(line(student.marked("oak"), "reading/neck-vein").why())
                    .isEqualTo("It is measured in cm, not in mm.");
        }

        @Test
        void aNormalSignCalledAbnormalCostsWhereverItIsRecorded() {
            Student student = Student.perfect(Side.LEFT);
            double before = student.marked("oak").domain(DomainName.READING).percent();
            student.probes(TOE).sees(TOE, "up");

            MarkSheet sheet = student.marked("oak");
            assertThat(sheet.domain(DomainName.READING).percent()).isEqualTo(before * 3 / 4);
            assertThat(line(sheet, "reading/toe:left").why()).startsWith("A normal sign was called abnormal");
        }

        @Test
        void callingItAbnormalInWordsCostsTheSame() {
            Student student = Student.perfect(Side.LEFT).sees(TOE, "down").answers(TOE, "normal", "abnormal");

            assertThat(student.marked("oak").domain(DomainName.READING).percent())
                    .isEqualTo(75);
        }

        @Test
        void aRightReadingElsewhereAddsNothing() {
            Student student =
                    Student.perfect(Side.LEFT).probes(TOE).sees(TOE, "down").answers(TOE, "normal", "normal");

            assertThat(student.marked("oak").lines()).noneMatch(l -> l.id().equals("reading/toe:left"));
        }

        @Test
        void oneProbeOfAManoeuvreTakenTogetherShowsAllItsPlaces() {
            Student student = Student.perfect(Side.LEFT)
                    .probes(new Item("pressure", Side.NONE, ""))
                    .answers(new Item("pressure", Side.NONE, ""), "normal", "abnormal");

            assertThat(student.marked("oak").lines().stream().filter(l -> l.id().startsWith("reading/pressure")))
                    .as("an answer about the whole counts once")
                    .hasSize(1);
        }

        @Test
        void aNumberNearTheTruthIsNoFalseAlarmThoughOverTheLimit() {
            Student near = Student.perfect(Side.LEFT).measures(SYSTOLIC, 122, "mmHg");
            Student far = Student.perfect(Side.LEFT).measures(SYSTOLIC, 150, "mmHg");

            assertThat(near.marked("oak").total()).isEqualTo(100);
            assertThat(far.marked("oak").total()).isLessThan(100);
        }
    }

    @Nested
    class Interpretation {
        @Test
        void theConventionDecidesWhatIsNormal() {
            Student student = Student.perfect(Side.LEFT);

            assertThat(line(student.marked("oak"), "normal/neck-vein").credit()).isEqualTo(1);
            assertThat(line(student.marked("elm"), "normal/neck-vein").credit()).isZero();
        }

        @Test
        void theConventionDecidesWhichRootsEarnAll() {
            Student student = Student.perfect(Side.LEFT);

            assertThat(line(student.marked("oak"), "roots/ankle-reflex").credit())
                    .isEqualTo(1);
            assertThat(line(student.marked("elm"), "roots/ankle-reflex").credit())
                    .isEqualTo(0.5);
        }

        @Test
        void aSetTaughtElsewhereEarnsItsOverlapAndANote() {
            Student student = new Student().answers(LEFT, "roots", "L5", "S1", "S2");
            Line line = line(student.marked("elm"), "roots/ankle-reflex");

            assertThat(line.credit()).isEqualTo(2 / 3.0);
            assertThat(line.why()).startsWith("This set is taught elsewhere.");
        }

        @Test
        void noRootIsAnAnswerAndNothingIsNone() {
            assertThat(line(new Student().answers(LEFT, "roots", "none").marked("oak"), "roots/ankle-reflex")
                            .why())
                    .isEqualTo("It shares no root with S1.");
            assertThat(line(new Student().marked("oak"), "roots/ankle-reflex").why())
                    .isEqualTo("It was not answered.");
        }

        @Test
        void takingAnAnswerBackLeavesItUnanswered() {
            Student student = Student.perfect(Side.LEFT).answers(LEFT, "means");

            assertThat(line(student.marked("oak"), "means/ankle-reflex:left").why())
                    .isEqualTo("It was not answered.");
        }

        @Test
        void whatWasNotExaminedCannotBeJudged() {
            Student student = new Student().answers(LEFT, "normal", "abnormal").answers(LEFT, "means", "arc-root");

            assertThat(credit(student, "normal/ankle-reflex:left")).isZero();
            assertThat(credit(student, "means/ankle-reflex:left")).isZero();
        }

        @Test
        void wordsOutsideTheTermsEarnNothingAndAreKept() {
            MarkSheet sheet = Student.perfect(Side.LEFT)
                    .answers(LEFT, "means", "other:a pinched nerve")
                    .marked("oak");

            assertThat(line(sheet, "means/ankle-reflex:left").credit()).isZero();
            assertThat(sheet.notes()).contains("Kept for your teacher, not marked: a pinched nerve");
        }
    }

    @Nested
    class Harm {
        @Test
        void touchingBeforeConsentIsFlaggedAndTakesNothingOff() {
            Student late = Student.perfect(Side.LEFT);
            late.events.remove(0);
            late.events.add(new Event.Asked("consent"));

            assertThat(late.marked("oak").harms())
                    .extracting(MarkSheet.Harm::id)
                    .containsExactly("no-consent");
            assertThat(late.marked("oak").total()).isEqualTo(100);
        }

        @Test
        void anIntimateExaminationWantsAChaperoneOffered() {
            Item tone = new Item("anal-tone", Side.NONE, "");
            Student student = new Student().does(new Event.Asked("consent")).probes(tone);

            assertThat(student.marked("oak").harms())
                    .extracting(MarkSheet.Harm::id)
                    .containsExactly("no-chaperone");
            student.events.add(1, new Event.Asked("chaperone"));
            assertThat(student.marked("oak").harms()).isEmpty();
        }

        @Test
        void standingWantsAQuestionAboutFaints() {
            Student student = new Student().does(new Event.Moved("standing"));

            assertThat(student.marked("oak").harms())
                    .extracting(MarkSheet.Harm::text)
                    .containsExactly("Stood up unasked.");
        }

        @Test
        void pressingBothCarotidsAtOnceIsAHarmThatNoQuestionMakesRight() {
            Item beat = new Item("carotid-beat", Side.RIGHT, "");
            Student one = new Student().does(new Event.Asked("consent")).probes(beat);

            assertThat(one.marked("oak").harms()).isEmpty();
            assertThat(one.does(new Event.Probed(beat, Map.of("carotid-hands", "both")))
                            .marked("oak")
                            .harms())
                    .extracting(MarkSheet.Harm::text)
                    .containsExactly("Both at once.");
        }

        @Test
        void anAttemptThatTouchesNobodyHarmsNobody() {
            assertThat(new Student().marked("oak").harms()).isEmpty();
        }
    }

    @Test
    void aLineFromMemoryIsMarkedUnverified() {
        MarkSheet sheet = new Student().marked("oak");

        assertThat(line(sheet, "normal/neck-vein").unverified()).isTrue();
        assertThat(line(sheet, "normal/ankle-reflex:left").unverified()).isFalse();
    }

    @Test
    void confidenceIsReportedBesideTheMark() {
        assertThat(Student.perfect(Side.LEFT).marked("oak").notes())
                .contains("You were 70 per cent sure of what was right.")
                .anySatisfy(note -> assertThat(note).startsWith("How sure you were scores 0.91 of 1"));
    }

    @Test
    void aReadingOfAnotherKindEarnsNothing() {
        Student student = new Student().probes(LEFT).does(new Event.Recorded(LEFT, new Reading.Seen("gone")));

        assertThat(line(student.marked("oak"), "reading/ankle-reflex:left").why())
                .isEqualTo("This sign is not read in that way.");
    }
}
