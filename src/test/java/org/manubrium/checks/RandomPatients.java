package org.manubrium.checks;

import static org.manubrium.checks.Patient.REFERENCE;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.random.RandomGenerator;
import org.manubrium.anatomy.Lesion;
import org.manubrium.anatomy.Onset;
import org.manubrium.anatomy.Segment;
import org.manubrium.anatomy.Side;
import org.manubrium.anatomy.Site;
import org.manubrium.anatomy.Structure;
import org.manubrium.patient.Ailment;
import org.manubrium.patient.Body;
import org.manubrium.patient.Person;
import org.manubrium.patient.Quantity;
import org.manubrium.patient.Sex;
import org.manubrium.patient.Variation;

/** Draws patients with lesions anywhere. */
final class RandomPatients {
    private static final List<String> ONSETS = List.of("hours", "3 days", "2 weeks", "6 weeks", "5 years");

    private RandomPatients() {}

    static Patient healthy(RandomGenerator random) {
        Person person = new Person(
                random.nextInt(20, 96),
                random.nextBoolean() ? Sex.FEMALE : Sex.MALE,
                Variation.of(random.nextLong(1, 1_000_000)));
        return new Patient(new Body(REFERENCE.anatomy(), REFERENCE.physiology(), person, List.of()));
    }

    /** A healthy person with so many lesions of single sites, each an ailment of its own. */
    static Patient with(int lesions, RandomGenerator random) {
        List<Ailment> ailments = new ArrayList<>();
        for (int i = 0; i < lesions; i++) {
            Lesion lesion = lesion(random);
            ailments.add(new Ailment(lesion.site() + " " + i, false, List.of(lesion), Map.of()));
        }
        return new Patient(healthy(random).body().with(ailments));
    }

    /** The same patient with one quantity moved anywhere within its limits. */
    static Patient moved(Patient patient, RandomGenerator random) {
        List<Quantity> quantities = REFERENCE.physiology().quantities().stream()
                .sorted(Comparator.comparing(Quantity::id))
                .toList();
        Quantity quantity = one(quantities, random);
        double to = quantity.least() + random.nextDouble() * (quantity.most() - quantity.least());
        return patient.shifted(quantity.id(), to - quantity.normal());
    }

    private static Lesion lesion(RandomGenerator random) {
        Structure structure = one(REFERENCE.anatomy().tables().structures(), random);
        Side side = structure.sided() ? one(List.of(Side.RIGHT, Side.LEFT), random) : Side.NONE;
        Optional<Segment> segment = structure.segments() ? Optional.of(one(Segment.all(), random)) : Optional.empty();
        Optional<String> level = structure.levels().isEmpty() || random.nextInt(4) == 0
                ? Optional.empty()
                : Optional.of(one(structure.levels(), random));
        double loss = random.nextInt(3) == 0 ? 1 : random.nextDouble();
        Onset onset = Onset.parse(one(ONSETS, random)).orElseThrow();
        return new Lesion(new Site(structure.name(), segment, side, level), loss, onset);
    }

    private static <T> T one(List<T> of, RandomGenerator random) {
        return of.get(random.nextInt(of.size()));
    }
}
