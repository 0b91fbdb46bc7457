package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.manubrium.anatomy.Side;
import org.manubrium.patient.Variation;

/** The neck and the lymph nodes against what texts say of them; the source stands beside each check. */
class NeckSignsTest {
    private static Bedside with(String condition, Side side) {
        return Bedside.healthy(45).condition(condition, side);
    }

    private static Bedside with(String condition) {
        return with(condition, Side.NONE);
    }

    /** Gaddey & Riegel 2016: over 1 cm is abnormal, 0.5 cm above the elbow, any size above the collar bone; 1.5 cm in the
     * groin is from memory. */
    @ParameterizedTest
    @CsvSource({
        "neck-node-size:left@anterior, node.left.anterior.size, 10, true",
        "neck-node-size:left@anterior, node.left.anterior.size, 11, false",
        "neck-node-size:left@supraclavicular, node.left.supraclavicular.size, 5, false",
        "elbow-node-size:left, node.left.elbow.size, 5, true",
        "elbow-node-size:left, node.left.elbow.size, 6, false",
        "groin-node-size:left, node.left.groin.size, 15, true",
        "groin-node-size:left, node.left.groin.size, 16, false"
    })
    void aNodeIsLargeOrNotByItsPlace(String item, String quantity, double mm, boolean normal) {
        double usual = Bedside.REFERENCE.physiology().quantity(quantity).normal();
        Bedside patient = Bedside.healthy(45).shift(quantity, mm - usual);

        assertThat(patient.amount(item)).isEqualTo(mm);
        assertThat(patient.sign(item).normal()).contains(normal);
    }

    /** From memory: abdomen and pelvis drain to the left node above the collar bone by the thoracic duct. */
    @Test
    void aGrowthOfTheStomachIsFoundAboveTheLeftCollarBone() {
        Bedside patient = with("stomach-growth");

        assertThat(patient.word("neck-node-feel:left@supraclavicular")).isEqualTo("hard");
        assertThat(patient.word("neck-node-feel:right@supraclavicular")).isEqualTo("none");
        assertThat(patient.meaning("neck-node-feel:left@supraclavicular")).isEqualTo("nodes-growth");
    }

    /** Node levels (secondary): glandular fever behind the neck muscle; hard and fixed, matted, rubbery by cause. */
    @Test
    void theFeelTellsTheCause() {
        assertThat(with("glandular-fever").word("neck-node-feel:right@posterior"))
                .isEqualTo("painful");
        assertThat(with("glandular-fever").word("spleen-percussion")).isNotEqualTo("resonant");
        assertThat(with("lymphoma").word("neck-node-feel:left@anterior")).isEqualTo("rubbery");
        assertThat(with("lymphoma").word("axilla-node-feel:left")).isEqualTo("rubbery");
        assertThat(with("lymphoma").sign("spleen-percussion").normal()).contains(false);
        assertThat(with("node-tuberculosis", Side.LEFT).word("neck-node-feel:left@posterior"))
                .isEqualTo("matted");
        assertThat(with("throat-growth-node", Side.LEFT).word("neck-node-feel:left@anterior"))
                .isEqualTo("fixed");
        assertThat(with("throat-growth-node", Side.LEFT).word("neck-node-feel:right@anterior"))
                .isIn("none", "slides-soft");
    }

    /** Anatomy texts (secondary): the ulnar hand drains past the elbow to the armpit. */
    @Test
    void anInfectedHandIsFoundAboveTheElbowAndInTheArmpit() {
        Bedside patient = with("hand-infection", Side.RIGHT);

        assertThat(patient.word("elbow-node-feel:right")).isEqualTo("painful");
        assertThat(patient.word("axilla-node-feel:right")).isEqualTo("painful");
        assertThat(patient.word("groin-node-feel:right")).isIn("none", "slides-soft");
    }

    /** Thyroid sequence (secondary): a thyroid rises on swallowing; a cyst of its track on putting out the tongue as well. */
    @Test
    void theSwallowTellsThyroidFromCyst() {
        assertThat(with("multinodular-goitre").word("thyroid-look")).isEqualTo("rises");
        assertThat(with("thyroid-track-cyst").word("thyroid-look")).isEqualTo("rises-tongue");
        assertThat(with("lymphoma").word("thyroid-look")).isEqualTo("none");
    }

    /** WHO 1992: 0 neither felt nor seen, 1 felt only (a lump in a gland of usual size counts), 2 seen. */
    @Test
    void goitresAreGradedByHandAndEye() {
        Bedside healthy = Bedside.healthy(45);

        assertThat(healthy.word("goitre-grade")).isEqualTo("0");
        assertThat(healthy.shift("thyroid.right.lump", 14).word("goitre-grade")).isEqualTo("1");
        assertThat(healthy.shift("thyroid.right.volume", 8)
                        .shift("thyroid.left.volume", 8)
                        .word("goitre-grade"))
                .isEqualTo("1");
        assertThat(with("simple-goitre").word("goitre-grade")).isEqualTo("2");
        assertThat(with("simple-goitre").word("thyroid-feel:left")).isEqualTo("smooth");
    }

    /** An overactive, bruit-bearing gland goes with a quick pulse and quick reflexes (X45: BMJ 1965; 1:158). */
    @Test
    void stimulatingAntibodiesShowInNeckPulseEyesAndAnkle() {
        Bedside patient = with("graves-disease");

        assertThat(patient.word("thyroid-bruit")).isEqualTo("blowing");
        assertThat(patient.word("thyroid-feel:right")).isEqualTo("smooth");
        assertThat(patient.amount("pulse-rate")).isGreaterThan(95);
        assertThat(patient.meaning("thyroid-bruit")).isEqualTo("thyroid-rush");
        assertThat(with("sore-thyroid").word("thyroid-feel:right")).isEqualTo("painful");
        assertThat(with("immune-thyroiditis").word("thyroid-feel:right")).isEqualTo("firm");
        assertThat(with("thyroid-growth", Side.LEFT).word("thyroid-feel:left")).isEqualTo("hard");
    }

    /** Goitre text (secondary): raised arms squeeze what fills the inlet of the chest. */
    @Test
    void raisedArmsShowAFullInlet() {
        assertThat(with("deep-goitre").word("arms-raised")).isEqualTo("congested");
        assertThat(with("caval-obstruction").word("arms-raised")).isEqualTo("congested");
        assertThat(with("simple-goitre").word("arms-raised")).isEqualTo("unchanged");
    }

    /** From memory: a narrow carotid blows, the narrowest is silent; it beats until it is nearly shut. */
    @Test
    void theNarrowestCarotidIsSilent() {
        Bedside healthy = Bedside.healthy(70);

        assertThat(healthy.shift("carotid.left.narrow", 0.3).word("carotid-bruit:left"))
                .isEqualTo("quiet");
        assertThat(healthy.shift("carotid.left.narrow", 0.75).word("carotid-bruit:left"))
                .isEqualTo("blowing");
        assertThat(healthy.shift("carotid.left.narrow", 0.75).word("carotid-beat:left"))
                .isEqualTo("full");
        assertThat(with("carotid-occlusion", Side.LEFT).word("carotid-bruit:left"))
                .isEqualTo("quiet");
        assertThat(with("carotid-occlusion", Side.LEFT).word("carotid-beat:left"))
                .isEqualTo("absent");
        assertThat(with("carotid-occlusion", Side.LEFT).word("carotid-beat:right"))
                .isEqualTo("full");
    }

    @Test
    void aLargerNodeNeverFeelsSmaller() {
        double before = -1;
        for (double mm = 0; mm <= 40; mm += 2) {
            double felt = Bedside.person(45, Variation.of(3))
                    .shift("node.right.axilla.size", mm)
                    .amount("axilla-node-size:right");
            assertThat(felt).isGreaterThanOrEqualTo(before);
            before = felt;
        }
    }

    /** What was not probed is not sent: the answer for one group holds nothing of another. */
    @Test
    void oneGroupAnswersForItselfAlone() {
        Bedside patient = Bedside.healthy(45).shift("node.left.posterior.size", 30);

        assertThat(patient.show("neck-node-size:left@anterior", Map.of()))
                .isEqualTo(Bedside.healthy(45).show("neck-node-size:left@anterior", Map.of()));
    }
}
