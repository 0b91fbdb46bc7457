package org.manubrium.patient.sign;

import java.util.Set;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;
import org.manubrium.patient.lung.LungQuantity;
import org.manubrium.patient.lung.LungZone;
import org.manubrium.patient.lung.Zone;

/** A sign of the chest that is tried zone by zone. */
abstract class ZoneReader extends ChestReader {
    private final LungQuantity[] dependsOn;

    ZoneReader(Examination examination, LungQuantity... dependsOn) {
        super(examination);
        this.dependsOn = dependsOn;
    }

    abstract Finding find(LungZone zone, Manoeuvre manoeuvre, Probe probe);

    @Override
    public final Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        return find(new LungZone(body, side(probe), zone(probe)), manoeuvre, probe);
    }

    @Override
    public final Set<String> quantities(Body body, Manoeuvre manoeuvre, Probe probe) {
        return LungQuantity.ids(side(probe), zone(probe), dependsOn);
    }

    private static Side side(Probe probe) {
        return probe.item().side();
    }

    private static Zone zone(Probe probe) {
        return Zone.of(probe.item().place());
    }
}
