package org.manubrium.school.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.manubrium.anatomy.SegmentSet;
import org.manubrium.examination.Reading;
import org.manubrium.marking.key.KeyLine;
import org.manubrium.marking.key.ReadingKey;
import org.manubrium.marking.key.SiteKey;

/** What an invented student makes of a sign: mostly what is there, now and then a plausible slip. */
final class Slip {
    private static final double TENTHS = 10;
    private static final double MISREAD_BY = 4;

    private final RandomGenerator random;
    private final double skill;

    /** @param skill how often the student is right, 0..1 */
    Slip(RandomGenerator random, double skill) {
        this.random = random;
        this.skill = skill;
    }

    boolean right() {
        return random.nextDouble() < skill;
    }

    /** Left out, rarer than done wrong. */
    boolean forgets() {
        return random.nextDouble() > Math.sqrt(skill);
    }

    Reading reading(KeyLine line, String convention) {
        if (line.reading() instanceof ReadingKey.Graded graded) {
            String scale = line.form(convention).scale();
            return grade(graded.on(scale).orElse(graded.scales().get(0)));
        }
        if (line.reading() instanceof ReadingKey.Measured measured) {
            double off = (right() ? 0.5 : MISREAD_BY) * measured.tolerance() * random.nextGaussian();
            double value = Math.round((measured.value() + off) * TENTHS) / TENTHS;
            return new Reading.Amount(Math.max(0, value), measured.unit());
        }
        ReadingKey.Chosen chosen = (ReadingKey.Chosen) line.reading();
        return new Reading.Seen(right() ? chosen.code() : any(chosen.codes()));
    }

    private Reading grade(ReadingKey.ScaleKey scale) {
        int at = scale.codes().indexOf(scale.right());
        int step = right() ? 0 : random.nextBoolean() ? 1 : -1;
        int read = Math.max(0, Math.min(scale.codes().size() - 1, at + step));
        return new Reading.Grade(scale.codes().get(read), scale.scale());
    }

    List<String> roots(SegmentSet taught) {
        List<String> roots = new ArrayList<>(
                taught.segments().stream().sorted().map(Object::toString).toList());
        if (!right() && roots.size() > 1) {
            roots.remove(random.nextInt(roots.size()));
        }
        return roots;
    }

    String site(SiteKey site) {
        return right() || site.near().isEmpty()
                ? site.place()
                : any(site.near()).words();
    }

    <T> T any(List<T> from) {
        return from.get(random.nextInt(from.size()));
    }
}
