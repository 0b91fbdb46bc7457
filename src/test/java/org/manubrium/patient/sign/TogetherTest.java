package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.manubrium.anatomy.Side;
import org.manubrium.patient.Ailment;
import org.manubrium.patient.Finding;
import org.manubrium.patient.heart.Heart;
import org.manubrium.patient.heart.Load;
import org.manubrium.patient.heart.Pressures;
import org.manubrium.patient.heart.ValveSounds;

/**
 * Each ill moves a sign the way it should, and two together move it further than either. The ways are common practice, no
 * source; only amounts of the model are compared with each other.
 */
class TogetherTest {
    private static Bedside healthy() {
        return Bedside.healthy(50);
    }

    private static double found(Bedside patient, String item) {
        Finding finding = patient.sign(item).finding();
        return finding instanceof Finding.Graded graded ? graded.amount() : ((Finding.Measured) finding).value();
    }

    @ParameterizedTest
    @CsvSource({
        "passive-range:left@knee-flexion, joint.left.knee.stiff, 0.4, joint.left.knee.fluid, 80, less",
        "passive-range:left@knee-flexion, joint.left.knee.worn, 0.6, joint.left.knee.inflamed, 0.6, less",
        "active-range:left@shoulder-abduction, joint.left.shoulder.torn, 0.5, joint.left.shoulder.pain, 0.6, less",
        "breathing-effort, airway.upper, 0.4, lung.left.pressure, 0.3, more",
        "breathing-effort, lung.left.lower-back.narrow, 0.6, airway.upper, 0.4, more",
        "diaphragm-travel:left, lung.left.lower-back.trapped, 0.4, lung.left.diaphragm, 0.4, less",
        "diaphragm-travel:left, lung.left.lower-back.fluid, 0.3, lung.left.lower-back.stiff, 0.4, less",
        "calf-girth:left, vein.left.calf.block, 0.5, vein.left.thigh.block, 0.5, more",
        "toe-refill:left, circulation.constriction, 0.4, artery.left.femoral.narrow, 0.5, more",
        "neck-node-size:left@posterior, node.left.posterior.size, 8, node.left.posterior.size, 9, more",
        "second-sound-loudness@aortic, aortic-leak, 0.4, aortic-valve-mobility, -0.6, less"
    })
    void twoIllsMoveASignFurtherThanEither(
            String item, String one, double much, String other, double more, String way) {
        double sign = way.equals("more") ? 1 : -1;
        double health = sign * found(healthy(), item);
        double first = sign * found(healthy().shift(one, much), item);
        double second = sign * found(healthy().shift(other, more), item);
        double both = sign * found(healthy().shift(one, much).shift(other, more), item);

        assertThat(first).isGreaterThan(health);
        assertThat(second).isGreaterThan(health);
        assertThat(both).isGreaterThan(first).isGreaterThan(second);
    }

    /** A raised venous pressure sheds water into the leg the sooner, the less albumin holds it back. */
    @Test
    void waterIsShedWhereItIsPushedAndNotHeld() {
        Bedside wet = healthy().shift("tissue.water", 8);
        double pushed = found(wet.shift("right-atrial-pressure", 6), "oedema-depth:left@ankle");
        double unheld = found(wet.shift("blood.albumin", -16), "oedema-depth:left@ankle");
        double both =
                found(wet.shift("right-atrial-pressure", 6).shift("blood.albumin", -16), "oedema-depth:left@ankle");

        assertThat(both).isGreaterThan(pushed).isGreaterThan(unheld);
    }

    private static Heart heart(Bedside patient) {
        return new Heart(patient.body(), new Pressures(120, 80, 70), Load.REST);
    }

    /** A leaking mitral valve empties the ventricle early, a narrow aortic valve late. */
    @Test
    void theAorticValveClosesEarlyInAMitralLeakAndLateInANarrowValve() {
        double usual = new ValveSounds(heart(healthy())).aorticAt();

        assertThat(new ValveSounds(heart(healthy().shift("mitral-leak", 0.5))).aorticAt())
                .isLessThan(usual);
        assertThat(new ValveSounds(heart(healthy().shift("aortic-valve-area", -2.8))).aorticAt())
                .isGreaterThan(usual);
    }

    /** What fills the ventricle or resists it makes it larger, and so a slack valve gives way later; standing up the reverse. */
    @Test
    void aSlackValveGivesWayEarlierStandingAndLaterSquatting() {
        Heart rest = heart(healthy().shift("mitral-slack", 1));
        Map<String, Double> at = Map.of(
                "standing",
                        rest.under(Load.of(rest.body().physiology(), "standing"))
                                .giveWay(),
                "squatting",
                        rest.under(Load.of(rest.body().physiology(), "squatting"))
                                .giveWay(),
                "grip", rest.under(new Load(1, 1, 1.3, 1, 1)).giveWay(),
                "driven", rest.under(new Load(1, 1, 1, 1.3, 1)).giveWay());

        assertThat(at.get("standing")).isLessThan(rest.giveWay());
        assertThat(at.get("squatting")).isGreaterThan(rest.giveWay());
        assertThat(at.get("grip")).isGreaterThan(rest.giveWay());
        assertThat(at.get("driven")).isLessThan(rest.giveWay());
    }

    /** A blink of both eyes, a jaw that opens straight and an ankle that lets go in time pass as normal; their like do not. */
    @Test
    void normalIsSaidOfTheNormalFindingAndOfNoOther() {
        Bedside facial = healthy().lesion("facial nerve left", 1, "3 weeks");
        Bedside jaw = healthy().lesion("trigeminal nerve mandibular left", 1, "3 months");

        assertThat(healthy().sign("corneal-reflex:left").normal()).contains(true);
        assertThat(facial.sign("corneal-reflex:left").normal()).contains(false);
        assertThat(healthy().sign("jaw-opening").normal()).contains(true);
        assertThat(jaw.sign("jaw-opening").normal()).contains(false);
        assertThat(healthy().sign("ankle-relaxation:left").normal()).contains(true);
        assertThat(healthy()
                        .condition("underactive-thyroid", Side.NONE)
                        .sign("ankle-relaxation:left")
                        .normal())
                .contains(false);
    }

    /** An illness half as bad takes half as much, of a structure and of a quantity. */
    @Test
    void halfTheSeverityTakesHalfAsMuch() {
        var conditions = Bedside.REFERENCE.conditions();
        for (String id : List.of("fibular-neck-palsy", "pleural-effusion")) {
            var condition = conditions.condition(id).orElseThrow();
            Optional<String> level = condition.levels().stream().findFirst();
            Ailment full = conditions.ailment(condition, Side.LEFT, level, 1, Optional.empty());
            Ailment half = conditions.ailment(condition, Side.LEFT, level, 0.5, Optional.empty());

            assertThat(half.lesions()).hasSameSizeAs(full.lesions());
            for (int i = 0; i < full.lesions().size(); i++) {
                assertThat(half.lesions().get(i).loss())
                        .isCloseTo(full.lesions().get(i).loss() / 2, within(1e-9));
            }
            full.shifts()
                    .forEach((quantity, shift) ->
                            assertThat(half.shifts().get(quantity)).isCloseTo(shift / 2, within(1e-9)));
        }
    }
}
