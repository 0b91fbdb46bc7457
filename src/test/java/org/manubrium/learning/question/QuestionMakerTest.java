package org.manubrium.learning.question;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.manubrium.TestSchool;
import org.manubrium.appearance.Appearance;
import org.manubrium.exchange.QuestionJson;
import org.manubrium.tables.Reference;

class QuestionMakerTest {
    private static final Reference REFERENCE = TestSchool.REFERENCE;
    private static final String CONVENTION =
            REFERENCE.marking().conventions().ids().get(0);
    private static final QuestionMaker MAKER = new QuestionMaker(
            REFERENCE.anatomy(),
            REFERENCE.physiology(),
            REFERENCE.conditions(),
            REFERENCE.signs(),
            REFERENCE.marking().conventions());

    private static Optional<SignQuestion> ask(String fact, long seed) {
        return MAKER.ask(fact, CONVENTION, List.of(), seed);
    }

    private static Stream<SignQuestion> some(String kind) {
        return MAKER.facts().stream()
                .filter(fact -> fact.startsWith(kind + ":"))
                .sorted()
                .limit(12)
                .flatMap(fact -> ask(fact, 4).stream());
    }

    @ParameterizedTest
    @ValueSource(strings = {"roots", "read", "tell", "next", "where"})
    void eachKindHasQuestionsWithASourceAndAnExplanation(String kind) {
        List<SignQuestion> questions = some(kind).toList();

        assertThat(questions).hasSizeGreaterThan(3);
        assertThat(questions).allSatisfy(question -> {
            assertThat(question.asked()).isNotBlank();
            assertThat(question.why()).hasSizeGreaterThan(20);
            assertThat(question.origin().source()).isNotBlank();
            assertThat(question.options()).hasSizeBetween(2, 8).doesNotHaveDuplicates();
        });
    }

    @Test
    void sameSeedMakesTheSameQuestion() {
        String fact = "roots:triceps-reflex";

        assertThat(ask(fact, 9)).isPresent().isEqualTo(ask(fact, 9));
    }

    /** The roots of the triceps reflex are C7, alone or with a neighbour: X-rows of the shipped tables name the source. */
    @Test
    void noWrongAnswerIsInPrintAnywhere() {
        var published = REFERENCE.marking().conventions().published("triceps-reflex").stream()
                .map(p -> p.roots().toString())
                .toList();
        for (int seed = 0; seed < 20; seed++) {
            SignQuestion question = ask("roots:triceps-reflex", seed).orElseThrow();
            List<String> wrong = question.options().stream()
                    .filter(option -> question.options().indexOf(option) != question.right())
                    .toList();
            assertThat(wrong).doesNotContainAnyElementsOf(published).hasSizeGreaterThanOrEqualTo(2);
        }
    }

    @Test
    void whatFellowStudentsTakeItForIsAmongTheAnswers() {
        SignQuestion question = MAKER.ask("roots:triceps-reflex", CONVENTION, List.of("L4", "rubbish"), 1)
                .orElseThrow();

        assertThat(question.options()).contains("L4").doesNotContain("rubbish");
    }

    /** What is sent before the answer is told by the manoeuvre alone: the two patients of a pair look alike but for numbers. */
    @Test
    void pairHasTheSameShapeOnBothSides() {
        assertThat(some("tell")).isNotEmpty().allSatisfy(question -> {
            assertThat(question.panels()).hasSize(2);
            assertThat(shape(question.panels().get(0)))
                    .isEqualTo(shape(question.panels().get(1)));
        });
    }

    private static List<String> shape(SignQuestion.Panel panel) {
        return panel.looks().stream()
                .map(look -> look.side() + look.place() + look.technique() + names(look.appearance()))
                .toList();
    }

    private static String names(Appearance shown) {
        return shown.sign()
                + shown.curves().stream()
                        .map(c -> c.name() + c.unit() + c.stepMs() + c.samples().size())
                        .toList()
                + shown.measures().stream().map(m -> m.label() + m.unit()).toList();
    }

    @Test
    void eitherOfAPairCanBeTheOne() {
        String fact = MAKER.facts().stream()
                .filter(f -> f.startsWith("tell:"))
                .sorted()
                .filter(f -> ask(f, 1).isPresent())
                .findFirst()
                .orElseThrow();

        Set<Integer> right = IntStream.range(0, 20)
                .mapToObj(seed -> ask(fact, seed).orElseThrow().right())
                .collect(Collectors.toSet());

        assertThat(right).containsExactlyInAnyOrder(0, 1);
    }

    @Test
    void whatIsAskedHoldsNeitherTheFactNorTheExplanation() {
        assertThat(Stream.of("roots", "read", "tell", "next", "where").flatMap(QuestionMakerTest::some))
                .allSatisfy(question -> {
                    String sent = QuestionJson.asked(question, "I do not know");
                    assertThat(sent).doesNotContain("\"right\":", "\"fact\":", "\"why\":", question.why());
                    QuestionJson.Solution solution = QuestionJson.readSolution(QuestionJson.solution(question));
                    assertThat(QuestionJson.option(sent, solution.right()))
                            .isEqualTo(question.options().get(question.right()));
                });
    }

    @ParameterizedTest
    @ValueSource(strings = {"roots", "read", "tell", "next", "where"})
    void aQuestionKnowsTheFactThatItAsks(String kind) {
        String fact = MAKER.facts().stream()
                .filter(f -> f.startsWith(kind + ":"))
                .sorted()
                .filter(f -> ask(f, 4).isPresent())
                .findFirst()
                .orElseThrow();

        assertThat(ask(fact, 4).orElseThrow().fact()).isEqualTo(fact);
        assertThat(MAKER.ask("riddles:" + fact, CONVENTION, List.of(), 4)).isEmpty();
        assertThat(MAKER.ask(kind + ":nothing of ours", CONVENTION, List.of(), 4))
                .isEmpty();
    }

    private static final Pattern BOTH_READINGS = Pattern.compile(
            "(?:In|has) (.+?)(?:: | \\()(.+?)(?:\\. In |\\); Patient . has )(.+?)(?:: | \\()(.+?)(?:\\)\\.|\\. The others.*)");

    /** What the step reads in one disease is not what it reads in the other, and the two are not the same disease. */
    @ParameterizedTest
    @ValueSource(strings = {"tell", "next"})
    void whatIsSaidToTellTwoDiseasesApartDoes(String kind) {
        assertThat(some(kind)).hasSizeGreaterThan(3).allSatisfy(question -> {
            Matcher both = BOTH_READINGS.matcher(question.why());
            assertThat(both.find()).as(question.why()).isTrue();
            assertThat(both.group(1)).isNotEqualTo(both.group(3));
            assertThat(both.group(2)).isNotEqualTo(both.group(4));
        });
    }

    @Test
    void aSignOfTwoSidesIsAskedForOnOne() {
        String fact = "read:triceps-reflex";

        assertThat(ask(fact, 3).orElseThrow().asked()).containsPattern("(?i)triceps reflex, (left|right)");
    }

    @Test
    void theRightAnswerStandsAmongThreeOthersAtMost() {
        Options options = Options.of("C7", List.of("C5", "C7", "C6", "C8", "T1"), new Random(3));

        assertThat(options.words()).containsExactlyInAnyOrder("C5", "C6", "C7", "C8");
        assertThat(options.words().get(options.right())).isEqualTo("C7");
    }
}
