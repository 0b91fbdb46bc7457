package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.manubrium.anatomy.Side;
import org.manubrium.patient.Variation;
import org.manubrium.patient.lung.LungQuantity;
import org.manubrium.patient.lung.Zone;

/** Published statements about the chest, each by its id and source. */
class ChestChecksTest {
    private static final String BASE = ":right@lower-back";

    private static Bedside base(Bedside patient, LungQuantity quantity, double by) {
        return patient.shift(quantity.id(Side.RIGHT, Zone.LOWER_BACK), by);
    }

    private static Bedside side(Bedside patient, LungQuantity quantity, double by) {
        Bedside changed = patient;
        for (Zone zone : Zone.values()) {
            changed = changed.shift(quantity.id(Side.RIGHT, zone), by);
        }
        return changed;
    }

    /** X62, McMaster Textbook of Internal Medicine. */
    @Test
    void x62SolidLungIsDullAndCarriesSoundFluidIsStonyDullAndHoldsItBack() {
        Bedside solid = base(Bedside.healthy(50), LungQuantity.SOLID, 0.9);
        Bedside fluid = base(Bedside.healthy(50), LungQuantity.FLUID, 1);

        assertThat(solid.word("percussion-back" + BASE)).isEqualTo("dull");
        assertThat(solid.word("breath-sounds-back" + BASE)).isEqualTo("bronchial");
        assertThat(solid.word("vocal-resonance-back" + BASE)).isEqualTo("increased");
        assertThat(fluid.word("percussion-back" + BASE)).isEqualTo("stony-dull");
        assertThat(fluid.word("breath-sounds-back" + BASE)).isIn("absent", "reduced");
        assertThat(fluid.word("vocal-resonance-back" + BASE)).isEqualTo("reduced");
    }

    /** X63, McMaster Textbook of Internal Medicine. */
    @Test
    void x63PleuralAirIsHyperResonantAndQuietAndMovesTheTracheaOnlyUnderTension() {
        Bedside air = side(Bedside.healthy(50), LungQuantity.GAS, 0.85);
        Bedside tension = air.shift("lung.right.pressure", 1);

        assertThat(air.word("percussion-front:right@upper-front")).isEqualTo("hyper-resonant");
        assertThat(air.word("breath-sounds-front:right@upper-front")).isIn("absent", "reduced");
        assertThat(air.word("tactile-fremitus-front:right@upper-front")).isIn("absent", "reduced");
        assertThat(air.word("trachea:right")).isEqualTo("central");
        assertThat(tension.word("trachea:right")).isEqualTo("away");
        assertThat(tension.word("trachea:left")).isEqualTo("toward");
    }

    /** X64, McMaster Textbook of Internal Medicine. */
    @Test
    void x64CollapseBehindABlockedBronchusIsDullAndQuietAndPullsTheTrachea() {
        Bedside patient = side(
                side(side(Bedside.healthy(50), LungQuantity.SOLID, 0.75), LungQuantity.BLOCKED, 1),
                LungQuantity.SHRUNK,
                0.8);

        assertThat(patient.word("percussion-back" + BASE)).isEqualTo("dull");
        assertThat(patient.word("breath-sounds-back" + BASE)).isEqualTo("reduced");
        assertThat(patient.word("trachea:right")).isEqualTo("toward");
        assertThat(patient.word("trachea:left")).isEqualTo("away");
    }

    /** X65, Nath & Capel 1974 Thorax 29:223 and 1980 Thorax 35:694. */
    @Test
    void x65CracklesOfLargeAirwaysComeEarlyThoseOfStiffLungLate() {
        Bedside airways = base(base(Bedside.healthy(60), LungQuantity.NARROW, 0.4), LungQuantity.SECRETION, 0.35);
        Bedside stiff = base(Bedside.healthy(60), LungQuantity.STIFF, 0.8);

        assertThat(airways.word("crackles-back" + BASE)).startsWith("early");
        assertThat(stiff.word("crackles-back" + BASE)).startsWith("late");
        assertThat(shares(airways)).isNotEmpty().allMatch(share -> share < 0.4);
        assertThat(shares(stiff)).isNotEmpty().allMatch(share -> share > 0.66);
    }

    /** Where in the breath in the clicks lie that are shown. */
    private static List<Double> shares(Bedside patient) {
        List<Double> clicks = patient.curve("crackles-back" + BASE, "clicks");
        double in = measure(patient, "crackles-back" + BASE, "breath in lasts");
        List<Double> shares = new ArrayList<>();
        for (int i = 0; i < clicks.size(); i++) {
            if (clicks.get(i) > 0) {
                shares.add(i * 10 / in);
            }
        }
        return shares;
    }

    /** X66, Sci Rep 2021 11:17186 Table 1. */
    @Test
    void x66FineCracklesAreHighAndShortCoarseOnesLowAndLong() {
        Bedside fine = base(Bedside.healthy(60), LungQuantity.STIFF, 0.8);
        Bedside coarse = base(Bedside.healthy(60), LungQuantity.SECRETION, 0.4);

        assertThat(measure(fine, "crackles-back" + BASE, "click pitch")).isEqualTo(650);
        assertThat(measure(fine, "crackles-back" + BASE, "click lasts")).isEqualTo(5);
        assertThat(measure(coarse, "crackles-back" + BASE, "click pitch")).isEqualTo(350);
        assertThat(measure(coarse, "crackles-back" + BASE, "click lasts")).isEqualTo(15);
    }

    /** Nath & Capel 1980: the crackles of bronchiectasis are fewer after a cough; those of stiff lung are not. */
    @Test
    void aCoughThinsCoarseCracklesOnly() {
        Bedside coarse = base(Bedside.healthy(60), LungQuantity.SECRETION, 0.4);
        Bedside fine = base(Bedside.healthy(60), LungQuantity.STIFF, 0.8);
        Map<String, String> after = Map.of("cough", "after");

        assertThat(coarse.sign("crackles-back" + BASE, after).normal()).contains(true);
        assertThat(fine.sign("crackles-back" + BASE, after).normal()).contains(false);
    }

    private static double measure(Bedside patient, String item, String label) {
        return patient.show(item, Map.of()).measures().stream()
                .filter(measure -> measure.label().equals(label))
                .findFirst()
                .orElseThrow()
                .amount();
    }

    /**
     * X72, Wong 2009 JAMA 301:309: dullness argues for an effusion (LR+ 8.7), fremitus that is not reduced against it (LR-
     * 0.21). Over effusions of every severity and equally many other chests the body agrees in direction.
     */
    @Test
    void x72DullnessArguesForAnEffusionAndKeptFremitusAgainstIt() {
        Random random = new Random(72);
        int patients = 400;
        double dullWith = 0;
        double dullWithout = 0;
        double keptWith = 0;
        double keptWithout = 0;
        for (int i = 0; i < patients; i++) {
            Bedside person = Bedside.person(30 + random.nextInt(50), Variation.of(1 + random.nextInt(10_000)));
            Bedside effusion = base(person, LungQuantity.FLUID, 0.1 + 0.9 * random.nextDouble());
            Bedside other = other(person, random);
            dullWith += dull(effusion);
            dullWithout += dull(other);
            keptWith += kept(effusion);
            keptWithout += kept(other);
        }

        assertThat(dullWith / dullWithout).isGreaterThan(4);
        assertThat(keptWith / keptWithout).isLessThan(0.4);
    }

    /** Most who come short of breath without an effusion have obstruction or water on the lungs, some solid lung. */
    private static Bedside other(Bedside person, Random random) {
        double draw = random.nextDouble();
        if (draw < 0.1) {
            return base(person, LungQuantity.SOLID, 0.9);
        }
        return draw < 0.4 ? base(person, LungQuantity.WET, 0.7) : base(person, LungQuantity.NARROW, 0.5);
    }

    private static int dull(Bedside patient) {
        return patient.word("percussion-back" + BASE).endsWith("dull") ? 1 : 0;
    }

    private static int kept(Bedside patient) {
        return List.of("normal", "increased").contains(patient.word("tactile-fremitus-back" + BASE)) ? 1 : 0;
    }
}
