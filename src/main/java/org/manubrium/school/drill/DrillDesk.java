package org.manubrium.school.drill;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.manubrium.exchange.QuestionJson;
import org.manubrium.learning.FiveSigns;
import org.manubrium.learning.Forgetting;
import org.manubrium.learning.Met;
import org.manubrium.learning.question.QuestionMaker;
import org.manubrium.learning.question.SignQuestion;
import org.manubrium.school.account.Refused;
import org.manubrium.school.bedside.Choices;
import org.manubrium.school.mark.ToDrill;
import org.manubrium.store.Attempt;
import org.manubrium.store.Cohort;
import org.manubrium.store.Database;
import org.manubrium.store.DrillQuestion;
import org.manubrium.store.Stores;

/**
 * Today's signs of a student. They are made when the student first comes on a day and stay as they are; what is not
 * answered by the end of the day is gone, and nothing piles up.
 */
public final class DrillDesk {
    /** What can always be answered; it counts as not known. */
    public static final String DO_NOT_KNOW = "I do not know";

    private static final int LOOKED_BACK = 5;
    private static final int SPARE = 20;

    private final Database database;
    private final QuestionMaker maker;
    private final ToDrill toDrill;
    private final Function<String, Choices> choices;
    private final String usualConvention;
    private final Clock clock;
    private final FiveSigns five = new FiveSigns(Forgetting.USUAL);

    /** @param choices what can be done and read under a teaching convention */
    public DrillDesk(
            Database database,
            QuestionMaker maker,
            ToDrill toDrill,
            Function<String, Choices> choices,
            String usualConvention,
            Clock clock) {
        this.database = database;
        this.maker = maker;
        this.toDrill = toDrill;
        this.choices = choices;
        this.usualConvention = usualConvention;
        this.clock = clock;
    }

    /** Today's signs, made if this is the first look. */
    public Today today(long account) {
        String day = today();
        String convention = database.direct(stores -> convention(stores, account));
        List<DrillQuestion> there = database.direct(stores -> stores.drill().of(account, day));
        List<DrillQuestion> questions = there.isEmpty() ? keep(account, day, make(account, day, convention)) : there;
        return new Today(day, questions.stream().map(DrillDesk::asked).toList(), choices.apply(convention));
    }

    /**
     * Answers one of today's questions; the first answer stands.
     *
     * @param option its place among the options
     * @throws Refused if there is no such question today
     */
    public Today.Answered answer(long account, int number, int option) {
        String day = today();
        return database.inTransaction(stores -> {
            DrillQuestion question = find(stores, account, day, number);
            QuestionJson.Solution solution = QuestionJson.readSolution(question.solution());
            stores.drill()
                    .answer(
                            question.id(),
                            option,
                            QuestionJson.option(question.question(), option),
                            option == solution.right(),
                            clock.instant());
            return asked(find(stores, account, day, number)).answer().orElseThrow();
        });
    }

    /** By the school's own calendar. */
    private String today() {
        return LocalDate.ofInstant(clock.instant(), ZoneId.systemDefault()).toString();
    }

    private static DrillQuestion find(Stores stores, long account, String day, int number) {
        return stores.drill().of(account, day).stream()
                .filter(question -> question.number() == number)
                .findFirst()
                .orElseThrow(() -> new Refused("That question is not one of today’s. Load the page again."));
    }

    private static Today.Asked asked(DrillQuestion question) {
        Optional<Today.Answered> answer = question.chosen().map(chosen -> {
            QuestionJson.Solution solution = QuestionJson.readSolution(question.solution());
            return new Today.Answered(
                    chosen, solution.right(), solution.why(), solution.source(), solution.confidence());
        });
        return new Today.Asked(question.number(), question.question(), answer);
    }

    /** Of two tabs that come at once the first makes the day's questions and the other finds them. */
    private List<DrillQuestion> keep(long account, String day, List<DrillQuestion> made) {
        return database.inTransaction(stores -> {
            if (stores.drill().of(account, day).isEmpty()) {
                made.forEach(stores.drill()::add);
            }
            return stores.drill().of(account, day);
        });
    }

    private List<DrillQuestion> make(long account, String day, String convention) {
        long seed = 31 * account + day.hashCode();
        Set<String> facts = new HashSet<>(maker.facts());
        List<DrillQuestion> made = new ArrayList<>();
        for (int i = 0; i < SPARE && made.size() < FiveSigns.MOST; i++) {
            Set<String> left = leftOf(facts, made);
            List<String> chosen = choose(account, left, seed);
            for (String fact : chosen.subList(0, Math.min(chosen.size(), FiveSigns.MOST - made.size()))) {
                facts.remove(fact);
                question(account, fact, convention, seed)
                        .ifPresent(q -> made.add(DrillQuestion.made(
                                account,
                                day,
                                made.size() + 1,
                                fact,
                                QuestionJson.asked(q, DO_NOT_KNOW),
                                QuestionJson.solution(q))));
            }
        }
        return made;
    }

    /** What can still be asked: a kind that has had its turns waits, unless there is no other. */
    private static Set<String> leftOf(Set<String> facts, List<DrillQuestion> made) {
        Set<String> left = facts.stream()
                .filter(fact -> made.stream()
                                .filter(q -> kind(q.fact()).equals(kind(fact)))
                                .count()
                        < FiveSigns.OF_ONE_KIND)
                .collect(Collectors.toSet());
        return left.isEmpty() ? facts : left;
    }

    private static String kind(String fact) {
        return fact.substring(0, fact.indexOf(':'));
    }

    private Optional<SignQuestion> question(long account, String fact, String convention, long seed) {
        List<String> confused = database.direct(stores -> Confusions.of(stores, account, fact)).stream()
                .filter(text -> !text.equals(DO_NOT_KNOW))
                .toList();
        return maker.ask(fact, convention, confused, seed);
    }

    private List<String> choose(long account, Set<String> facts, long seed) {
        Instant now = clock.instant();
        return database.direct(stores ->
                five.choose(facts, met(stores, account), wishes(stores, account), (double) now.getEpochSecond(), seed));
    }

    private static List<Met> met(Stores stores, long account) {
        return stores.drill().answered(account).stream()
                .map(question -> new Met(
                        question.fact(),
                        question.answeredAt().orElseThrow().getEpochSecond(),
                        question.wasRight().orElse(false)))
                .toList();
    }

    /** What went wrong in the last marked attempts and has not been answered rightly since. */
    private List<String> wishes(Stores stores, long account) {
        List<DrillQuestion> answered = stores.drill().answered(account);
        return stores.attempts().ofStudent(account).stream()
                .filter(attempt -> attempt.isHandedIn() && !attempt.trial())
                .limit(LOOKED_BACK)
                .flatMap(attempt -> toDrill.of(stores, attempt).stream()
                        .map(ToDrill.Wish::fact)
                        .filter(fact -> answered.stream().noneMatch(q -> putRight(q, fact, attempt))))
                .toList();
    }

    private static boolean putRight(DrillQuestion question, String fact, Attempt attempt) {
        return question.fact().equals(fact)
                && question.wasRight().orElse(false)
                && question.answeredAt()
                        .orElseThrow()
                        .isAfter(attempt.handedInAt().orElseThrow());
    }

    private String convention(Stores stores, long account) {
        return stores.cohorts().of(account).stream()
                .map(Cohort::convention)
                .findFirst()
                .orElse(usualConvention);
    }
}
