package org.manubrium.marking.compile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Item;
import org.manubrium.examination.Reading;
import org.manubrium.exchange.KeyJson;
import org.manubrium.marking.DomainName;
import org.manubrium.marking.MarkSheet;
import org.manubrium.marking.Marker;
import org.manubrium.marking.compile.CaseTruth.EssentialChoice;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.event.Logged;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.marking.key.KeyLine;
import org.manubrium.marking.key.ReadingKey;
import org.manubrium.reasoning.Advice;
import org.manubrium.reasoning.Verdict;
import org.manubrium.reasoning.Worth;

/** Keys compiled from the shipped tables, against what books say of a cervical root. */
class ShippedKeyTest {
    private static final CompiledKey LEFT = Shipped.compile(Shipped.seventhRoot("left"));

    private static MarkSheet mark(CompiledKey key, String convention, List<Logged> events) {
        return Marker.mark(key, convention, Shipped.REFERENCE.marking().weights(), events);
    }

    private static MarkSheet.Line roots(String convention, String... roots) {
        return mark(LEFT, convention, Shipped.byHand(Side.LEFT, roots)).lines().stream()
                .filter(line -> line.id().equals("roots/triceps-reflex"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aRootTurnsOnItsReflexItsPowerAndItsSkinOnBothSides() {
        assertThat(LEFT.essentials().stream().map(line -> line.item().toString()))
                .contains(
                        "triceps-reflex:right",
                        "triceps-reflex:left",
                        "elbow-extension:left",
                        "light-touch:left@c7-middle-finger");
        assertThat(LEFT.essentials()).hasSizeLessThan(14);
    }

    @Test
    void theKeyReadsBackAsItWasWritten() {
        assertThat(KeyJson.read(KeyJson.write(LEFT))).isEqualTo(LEFT);
    }

    @Test
    void compilingAgainGivesTheSameText() {
        assertThat(KeyJson.write(Shipped.compile(Shipped.seventhRoot("left")))).isEqualTo(KeyJson.write(LEFT));
    }

    /** Grades are read at the bedside, not in a book: of them only that they are at most one level off. */
    @Test
    void anAttemptWrittenFromTheBooksIsRightInAllItSaysAndConcludes() {
        MarkSheet sheet = mark(LEFT, "alder", Shipped.byHand(Side.LEFT, "C7"));

        assertThat(sheet.domain(DomainName.ESSENTIAL).percent()).isEqualTo(100);
        assertThat(sheet.domain(DomainName.INTERPRETATION).percent()).isEqualTo(100);
        assertThat(sheet.domain(DomainName.CONCLUSION).percent()).isEqualTo(100);
        assertThat(sheet.domain(DomainName.READING).lines())
                .allSatisfy(line -> assertThat(line.credit()).isGreaterThanOrEqualTo(0.5));
        assertThat(sheet.harms()).isEmpty();
    }

    @Test
    void theMirroredCaseAndAttemptScoreTheSame() {
        CompiledKey right = Shipped.compile(Shipped.seventhRoot("right"));

        for (String convention : LEFT.conventions()) {
            assertThat(mark(right, convention, Shipped.byHand(Side.RIGHT, "C6", "C7"))
                            .total())
                    .isEqualTo(mark(LEFT, convention, Shipped.byHand(Side.LEFT, "C6", "C7"))
                            .total());
        }
    }

    @Test
    void c6ToC7ForTheTricepsIsFullUnderOneConventionAndPartUnderAnother() {
        assertThat(roots("rowan", "C6", "C7").credit()).isEqualTo(1);
        assertThat(roots("alder", "C6", "C7").credit()).isEqualTo(0.5);
        assertThat(roots("alder", "C6", "C7").why()).contains("taught elsewhere");
    }

    @Test
    void tickingC5ToT1IsPoorUnderEveryConvention() {
        assertThat(LEFT.conventions())
                .hasSizeGreaterThanOrEqualTo(3)
                .allSatisfy(convention -> assertThat(
                                roots(convention, "C5", "C6", "C7", "C8", "T1").credit())
                        .isLessThanOrEqualTo(0.4));
    }

    @Test
    void everyLineOfASheetSaysWhyAndWhereFrom() {
        assertThat(mark(LEFT, "birch", List.of()).lines()).isNotEmpty().allSatisfy(line -> {
            assertThat(line.why()).endsWith(".");
            assertThat(line.origin().source()).isNotBlank();
            assertThat(line.origin().confidence()).isNotBlank();
        });
    }

    @Test
    void threeNormalSignsCalledAbnormalCostVisiblyInAHealthyPerson() {
        CompiledKey key = Shipped.compile(Shipped.healthy());
        List<Event> events = new ArrayList<>();
        key.essentials().forEach(line -> right(events, line));
        events.add(new Event.Answered(Event.CONCLUSION, "differential", List.of("healthy")));
        events.add(new Event.Answered(Event.CONCLUSION, "next", List.of("nothing-further")));
        double reading = mark(key, "alder", Shipped.logged(events))
                .domain(DomainName.READING)
                .percent();
        assertThat(reading).isEqualTo(100);

        key.lines().stream()
                .filter(line -> !line.necessity().essential())
                .limit(3)
                .forEach(line -> events.add(new Event.Answered(line.item(), "normal", List.of("abnormal"))));

        assertThat(mark(key, "alder", Shipped.logged(events))
                        .domain(DomainName.READING)
                        .percent())
                .isLessThan(reading - 10);
    }

    private static void right(List<Event> events, KeyLine line) {
        events.add(new Event.Probed(line.item(), Map.of()));
        if (line.reading() instanceof ReadingKey.Graded graded) {
            ReadingKey.ScaleKey scale = graded.scales().get(0);
            events.add(new Event.Recorded(line.item(), new Reading.Grade(scale.right(), scale.scale())));
        } else if (line.reading() instanceof ReadingKey.Measured measured) {
            events.add(new Event.Recorded(line.item(), new Reading.Amount(measured.value(), measured.unit())));
        } else if (line.reading() instanceof ReadingKey.Chosen chosen) {
            events.add(new Event.Recorded(line.item(), new Reading.Seen(chosen.code())));
        }
        events.add(new Event.Answered(line.item(), "normal", List.of("normal")));
    }

    @Test
    void anEducatorMayAddAndTakeAwayWithAReason() {
        CompiledKey key = Shipped.compile(Shipped.seventhRoot(
                "left",
                new EssentialChoice("finger-extension", "", true, "taught this week"),
                new EssentialChoice("brachioradialis-reflex", "", false, "not asked of first years")));

        assertThat(key.line(new Item("finger-extension", Side.LEFT, ""))
                        .orElseThrow()
                        .necessity())
                .isEqualTo(new KeyLine.Necessity(true, "The educator's choice: taught this week"));
        assertThat(key.line(new Item("brachioradialis-reflex", Side.LEFT, ""))
                        .orElseThrow()
                        .necessity()
                        .essential())
                .isFalse();
    }

    private static Set<String> marked(CompiledKey key) {
        return key.essentials().stream().map(line -> line.item().manoeuvre()).collect(Collectors.toSet());
    }

    private static Set<String> called(CompiledKey key, Worth worth) {
        return key.weighing().verdicts().stream()
                .filter(verdict -> verdict.worth() == worth)
                .map(Verdict::manoeuvre)
                .collect(Collectors.toSet());
    }

    @Test
    void whatIsMarkedIsWhatTheWeighingCallsEssential() {
        CompiledKey changed = Shipped.compile(Shipped.seventhRoot(
                "left",
                new EssentialChoice("finger-extension", "", true, "taught this week"),
                new EssentialChoice("triceps-reflex", "", false, "not asked of first years")));

        assertThat(called(LEFT, Worth.ESSENTIAL)).isEqualTo(marked(LEFT));
        assertThat(called(changed, Worth.ESSENTIAL))
                .isEqualTo(marked(changed))
                .contains("finger-extension")
                .doesNotContain("triceps-reflex");
    }

    @Test
    void whatIsMarkedTellsMoreThanALittleAndHoldsTheShortestThatSuffices() {
        List<Item> shortest = Shipped.WEIGHER.weigh(Shipped.seventhRoot("left")).shortest();

        assertThat(marked(LEFT))
                .allSatisfy(m -> assertThat(LEFT.weighing().bits(m)).isGreaterThanOrEqualTo(Advice.LITTLE))
                .containsAll(shortest.stream().map(Item::manoeuvre).toList());
        assertThat(shortest).isNotEmpty();
    }

    @Test
    void aNeighbouringRootIsAStepAwayAndTheOtherSideIsNot() {
        var site = LEFT.conclusion().sites().get(0);

        assertThat(site.place()).isEqualTo("root C7 left");
        assertThat(site.steps("root C7 left")).hasValue(0);
        assertThat(site.steps("root C8 left")).hasValue(1);
        assertThat(site.steps("root T1 left")).hasValue(2);
        assertThat(site.steps("root T2 left")).isEmpty();
        assertThat(site.steps("root C7 right")).isEmpty();
        assertThat(site.steps("brachial plexus left at middle trunk")).hasValue(1);
    }

    @Test
    void whereTheLimitOfClonusDiffersTheConventionDecidesWhatIsNormal() {
        CompiledKey key = Shipped.compile(Shipped.healthy());
        var line = key.line(new Item("ankle-clonus", Side.LEFT, "")).orElseThrow();

        assertThat(line.form("alder").most()).isEqualTo(2);
        assertThat(line.form("birch").most()).isEqualTo(4);
        assertThat(line.form("alder").within(3)).isFalse();
        assertThat(line.form("birch").within(3)).isTrue();
        assertThat(((ReadingKey.Measured) line.reading()).value()).isCloseTo(0, within(2.0));
    }

    private static final Item HEIGHT = new Item("neck-vein-height", Side.NONE, "");
    private static final Item STANDING = new Item("pressure-standing-3-minutes", Side.NONE, "systolic");

    private static boolean normal(Item item, String convention, String quantity, double shift) {
        return Shipped.compile(Shipped.shifted(quantity, shift))
                .line(item)
                .orElseThrow()
                .form(convention)
                .normal();
    }

    @Test
    void aRiseOnStandingIsAbnormalThoughConventionsTeachOnlyTheFall() {
        assertThat(normal(STANDING, "alder", "standing-pressor", 0)).isTrue();
        assertThat(normal(STANDING, "alder", "standing-pressor", 40)).isFalse();
    }

    @Test
    void aHighVeinIsAbnormalUnderEveryConvention() {
        for (String convention : LEFT.conventions()) {
            assertThat(normal(HEIGHT, convention, "right-atrial-pressure", 0)).isTrue();
            assertThat(normal(HEIGHT, convention, "right-atrial-pressure", 12)).isFalse();
        }
    }

    @Test
    void aHeightBetweenTheLimitsDependsOnTheConvention() {
        CompiledKey key = Shipped.compile(Shipped.shifted("right-atrial-pressure", 7));
        KeyLine line = key.line(HEIGHT).orElseThrow();
        double height = ((ReadingKey.Measured) line.reading()).value();

        assertThat(height).isBetween(3.1, 4.9);
        assertThat(line.form("alder").normal()).isFalse();
        assertThat(line.form("rowan").normal()).isTrue();
    }

    @Test
    void aFallOnStandingIsCountedFromTheLyingPressure() {
        KeyLine line = Shipped.compile(Shipped.healthy()).line(STANDING).orElseThrow();
        KeyLine lying = Shipped.compile(Shipped.healthy())
                .line(new Item("pressure-lying", Side.NONE, "systolic"))
                .orElseThrow();
        double before = ((ReadingKey.Measured) lying.reading()).value();

        assertThat(line.form("alder").within(before - 20)).isFalse();
        assertThat(line.form("alder").within(before - 19)).isTrue();
    }

    @Test
    void everyLimitOfAConventionNamesAnItemThatExists() {
        CompiledKey key = Shipped.compile(Shipped.healthy());
        var items = key.lines().stream()
                .map(line -> line.item().manoeuvre()
                        + (line.item().place().isEmpty()
                                ? ""
                                : "@" + line.item().place()))
                .toList();
        for (String id : key.conventions()) {
            assertThat(Shipped.REFERENCE.marking().conventions().facts(id).stream()
                            .filter(fact -> fact.fact().matches(".* (lowest normal|highest normal|abnormal fall)"))
                            .map(fact -> fact.fact().substring(0, fact.fact().indexOf(' '))))
                    .isNotEmpty()
                    .allMatch(items::contains);
        }
    }

    @Test
    void everyFactOfAConventionNamesAScaleOrAManoeuvreThatExists() {
        var examination = Shipped.REFERENCE.examination();
        var conventions = Shipped.REFERENCE.marking().conventions();
        for (String id : conventions.ids()) {
            conventions.facts(id).stream()
                    .filter(fact -> fact.fact().endsWith(" roots"))
                    .forEach(
                            fact -> assertThat(examination.manoeuvre(fact.fact().replace(" roots", "")))
                                    .as(fact.fact())
                                    .isPresent());
            assertThat(examination
                            .scale(conventions.scale(id, "reflex").orElseThrow())
                            .quantity())
                    .isEqualTo("reflex");
        }
    }
}
