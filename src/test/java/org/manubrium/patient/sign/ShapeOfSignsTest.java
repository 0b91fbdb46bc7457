package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Condition;
import org.manubrium.patient.Person;
import org.manubrium.patient.Sex;
import org.manubrium.patient.Variation;
import org.manubrium.tables.Reference;
import org.manubrium.tables.Tables;

/** In every condition a sign is sent in the form that health has, so that the form tells nothing. */
class ShapeOfSignsTest {
    private static final Reference REFERENCE = Tables.shipped();
    private static final Person PERSON = new Person(60, Sex.MALE, Variation.of(7));

    private static final Body HEALTHY = new Body(REFERENCE.anatomy(), REFERENCE.physiology(), PERSON, List.of());

    @Test
    void everyConditionShowsEverySignInTheFormOfHealth() {
        assertThat(different(REFERENCE.conditions().all(), probes(m -> Stream.of(Map.of()))))
                .isEmpty();
    }

    /** In every way in which it can be done; with every twentieth condition, as it is the manoeuvre that tells the form. */
    @Test
    void everyWayOfDoingItHasTheFormOfHealth() {
        List<Condition> all = List.copyOf(REFERENCE.conditions().all());
        List<Condition> some = IntStream.range(0, all.size())
                .filter(i -> i % 20 == 0)
                .mapToObj(all::get)
                .toList();

        assertThat(different(some, probes(ShapeOfSignsTest::ways))).isEmpty();
    }

    private static List<String> different(Collection<Condition> conditions, List<Probe> probes) {
        List<String> shapes =
                probes.stream().map(probe -> shape(HEALTHY, probe)).toList();
        List<String> different = new ArrayList<>();
        for (Condition condition : conditions) {
            Body ill = ill(HEALTHY, condition);
            for (int i = 0; i < probes.size(); i++) {
                String shape = shape(ill, probes.get(i));
                if (!shape.equals(shapes.get(i))) {
                    different.add(condition.id() + " at " + probes.get(i) + ": " + shape + ", not " + shapes.get(i));
                }
            }
        }
        return different;
    }

    /** Each item of the left or of neither side; the right mirrors the left. */
    private static List<Probe> probes(Function<Manoeuvre, Stream<Map<String, String>>> ways) {
        List<Probe> found = new ArrayList<>();
        for (Manoeuvre manoeuvre : REFERENCE.examination().manoeuvres()) {
            String position = manoeuvre.positions().get(0);
            Examination.items(manoeuvre).stream()
                    .filter(item -> item.side() != Side.RIGHT)
                    .forEach(item -> ways.apply(manoeuvre).forEach(way -> found.add(new Probe(item, position, way))));
        }
        return found;
    }

    private static Stream<Map<String, String>> ways(Manoeuvre manoeuvre) {
        return manoeuvre.variants().stream()
                .flatMap(variant -> variant.choices().stream().map(choice -> Map.of(variant.id(), choice.id())));
    }

    private static Body ill(Body healthy, Condition condition) {
        Optional<String> level = condition.levels().stream().findFirst();
        Side side = condition.sided() ? Side.LEFT : Side.NONE;
        return healthy.with(List.of(REFERENCE.conditions().ailment(condition, side, level, 1, Optional.empty())));
    }

    private static String shape(Body body, Probe probe) {
        Appearance shown = REFERENCE.signs().show(body, probe);
        return shown.sign()
                + shown.curves().stream()
                        .map(c ->
                                c.name() + " " + c.unit() + " x " + c.samples().size())
                        .toList()
                + shown.measures().stream().map(m -> m.label() + " " + m.unit()).toList()
                + (shown.words().isEmpty() ? " in silence" : " with words");
    }
}
