package org.manubrium.patient.sign;

import static org.manubrium.patient.sign.LimbSign.measured;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.manubrium.anatomy.Side;
import org.manubrium.patient.Body;
import org.manubrium.patient.Phase;

/** The reflexes of the skin: stroke or prick it, and a muscle beneath draws together. */
final class SuperficialSigns {
    private SuperficialSigns() {}

    static Map<String, LimbSign> all() {
        Map<String, LimbSign> found = new HashMap<>();
        for (String arc : List.of("abdominal-upper", "abdominal-lower", "cremasteric")) {
            found.put(arc, reflex(arc, true));
        }
        for (String arc : List.of("gluteal", "anal-wink", "bulbocavernosus")) {
            found.put(arc, reflex(arc, false));
        }
        return found;
    }

    /** @param fromAbove whether the reflex needs the descending control, and so is lost with it */
    private static LimbSign reflex(String arc, boolean fromAbove) {
        return new LimbSign(
                "skin-stroke",
                "draws-in",
                (body, side) -> answers(body, arc, side, fromAbove) ? "draws-in" : "still",
                List.of(measured("skin or muscle moves by", "mm", "mm")),
                numbers -> List.of(LimbNumbers.curve(
                        "moves", "mm", 20, 75, t -> numbers.of("mm") * LimbNumbers.bump(t, 0.45, 0.22))),
                (body, side) -> Attention.sides(side).stream()
                        .flatMap(s -> TendonReflexReader.arcAndControl(body, arc, s).stream())
                        .toList());
    }

    private static boolean answers(Body body, String arc, Side side, boolean fromAbove) {
        double conducted = 0;
        double lost = 0;
        List<Side> sides = Attention.sides(side);
        for (Side s : sides) {
            conducted += body.conduction(body.anatomy().arc(arc, s)) / sides.size();
            lost += body.lost(body.anatomy().control(arc, s), fromAbove ? Phase.LOSS : Phase.SHOCK) / sides.size();
        }
        double most = LimbState.constant(body, fromAbove ? "limb.superficial-control-lost" : "limb.superficial-shock");
        return conducted >= LimbState.constant(body, "limb.superficial-arc") && lost < most;
    }
}
