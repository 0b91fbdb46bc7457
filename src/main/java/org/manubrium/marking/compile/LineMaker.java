package org.manubrium.marking.compile;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Item;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Place;
import org.manubrium.examination.PlaceMode;
import org.manubrium.examination.Probe;
import org.manubrium.marking.convention.Conventions;
import org.manubrium.marking.key.Form;
import org.manubrium.marking.key.KeyLine;
import org.manubrium.marking.key.KeyLine.Necessity;
import org.manubrium.marking.key.Origin;
import org.manubrium.marking.key.Showing;
import org.manubrium.marking.key.SiteKey;
import org.manubrium.patient.Body;
import org.manubrium.patient.Sign;
import org.manubrium.patient.sign.Signs;
import org.manubrium.patient.sign.Strand;

/** Makes the line of the key for each item of one body. */
final class LineMaker {
    private final Signs signs;
    private final Body body;
    private final Meant meant;
    private final ReadingKeys readings;
    private final Forms forms;
    private final SiteKeys sites;
    private final Unopened unopened;
    private final Map<String, Optional<Origin>> explaining = new HashMap<>();

    LineMaker(
            Signs signs,
            Conventions conventions,
            Meant meant,
            Unopened unopened,
            Body body,
            Look patient,
            HealthyPeople people) {
        this.signs = signs;
        this.body = body;
        this.meant = meant;
        this.readings = new ReadingKeys(signs, patient, people);
        this.forms = new Forms(conventions, signs, patient, new Look(signs, body.healthy()));
        this.unopened = unopened;
        this.sites = new SiteKeys(body.anatomy());
    }

    SiteKeys sites() {
        return sites;
    }

    KeyLine line(Manoeuvre manoeuvre, Item item, Necessity necessity, Showing showing) {
        Sign sign = signs.sign(body, Signs.usual(manoeuvre, item));
        List<Form> taught = forms.of(manoeuvre, sign);
        return new KeyLine(
                item,
                manoeuvre.name(),
                label(manoeuvre, item),
                manoeuvre.intimacy(),
                manoeuvre.placeMode() == PlaceMode.TOGETHER,
                necessity,
                showing,
                manoeuvre.questions(),
                readings.of(manoeuvre, item),
                taught,
                forms.published(manoeuvre, item),
                necessity.essential() ? site(item, sign) : SiteKey.NONE,
                meant.of(sign),
                forms.own(manoeuvre),
                beneath(sign, taught));
    }

    private List<Origin> beneath(Sign sign, List<Form> taught) {
        return Stream.concat(
                        unopened.scales(taught.stream().map(Form::scale).toList()).stream(),
                        sign.meaning().ailments().stream()
                                .flatMap(said -> explaining.computeIfAbsent(said, unopened::explaining).stream())
                                .distinct())
                .toList();
    }

    private SiteKey site(Item item, Sign sign) {
        return sites.on(
                strands(item).stream().map(Strand::pathway).toList(),
                sign.meaning().sites());
    }

    List<Strand> strands(Item item) {
        Manoeuvre manoeuvre = signs.examination().manoeuvre(item.manoeuvre()).orElseThrow();
        Probe usual = Signs.usual(manoeuvre, item);
        return signs.strands(body, usual);
    }

    private static String label(Manoeuvre manoeuvre, Item item) {
        Stream<String> place = manoeuvre.places().stream()
                .filter(p -> p.id().equals(item.place()))
                .map(Place::name);
        Stream<String> side = Stream.of(item.side()).filter(s -> s != Side.NONE).map(Side::word);
        return Stream.of(Stream.of(manoeuvre.name()), place, side)
                .flatMap(parts -> parts)
                .collect(Collectors.joining(", "));
    }
}
