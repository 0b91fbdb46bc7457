package org.manubrium.patient.sign;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.manubrium.patient.trunk.Node;
import org.manubrium.patient.trunk.Spot;

/** Lymph nodes: how large, how hard, how they slide. */
final class NodeSigns {
    /** Groups that have a manoeuvre of their own; the others are places of one manoeuvre. */
    private static final List<String> ALONE = List.of("axilla", "elbow", "groin");

    private NodeSigns() {}

    static Map<String, TrunkSign> all() {
        Map<String, TrunkSign> found = new HashMap<>();
        found.put("node-size", size("@place"));
        found.put("node-feel", feel("@place"));
        for (String group : ALONE) {
            found.put(group + "-size", size(group));
            found.put(group + "-feel", feel(group));
        }
        return found;
    }

    private static Node node(Spot spot, String group) {
        return new Node(spot, spot.named(group));
    }

    private static TrunkSign size(String group) {
        return TrunkSign.number("node", "mm", spot -> node(spot, group).felt(), "zero", "node.most." + group)
                .shows(
                        "under the finger, across",
                        "mm",
                        spot -> node(spot, group).felt())
                .shows(
                        "slides under the skin by",
                        "mm",
                        spot -> node(spot, group).slides())
                .shows("gives way by", "mm", spot -> node(spot, group).gives())
                .shows("others within 20 mm", "", spot -> node(spot, group).others())
                .shows(
                        "others that move along with it",
                        "",
                        spot -> node(spot, group).joined())
                .says("node", spot -> node(spot, group).pain())
                .needs(Node.quantities(group));
    }

    private static TrunkSign feel(String group) {
        TrunkSign read = TrunkSign.word(
                "node", Set.of("none", "slides-soft"), spot -> node(spot, group).feel());
        TrunkSign same = size(group);
        return new TrunkSign(
                same.drawing(),
                read.read(),
                read.health(),
                same.shown(),
                same.says(),
                same.moving(),
                spot -> Node.textures(spot.named(group)),
                same.paths());
    }
}
