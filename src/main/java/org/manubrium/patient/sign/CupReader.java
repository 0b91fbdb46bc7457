package org.manubrium.patient.sign;

import java.util.List;
import java.util.Set;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;

/** The height of the cup of the optic disc, as a share of the height of the disc. */
final class CupReader implements SignReader {
    private static final Look DISC = FundusLooks.cup();

    @Override
    public String name() {
        return "cup";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        Side eye = probe.item().side();
        String view = DISC.read(body, eye);
        return view.equals("no-view") ? new Finding.Seen(view) : new Finding.Measured(ratio(body, eye), "ratio");
    }

    private static double ratio(Body body, Side eye) {
        return Math.round(body.quantity(id(eye)) * 100) / 100.0;
    }

    private static String id(Side eye) {
        return "eye." + eye.word() + ".cup";
    }

    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        return DISC.show(body, probe.item().side());
    }

    @Override
    public List<Strand> strands(Body body, Manoeuvre manoeuvre, Probe probe) {
        return List.of(new Strand("media", new Sight(body, probe.item().side()).media()));
    }

    @Override
    public Set<String> quantities(Body body, Manoeuvre manoeuvre, Probe probe) {
        return Set.of(id(probe.item().side()));
    }

    /** Neither large nor much larger than the other eye's. */
    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        if (!(finding instanceof Finding.Measured measured)) {
            return false;
        }
        double other = ratio(body, probe.item().side().opposite());
        return measured.value() < body.physiology().constant("fundus.cup-normal")
                && measured.value() - other < body.physiology().constant("fundus.cup-unequal");
    }
}
