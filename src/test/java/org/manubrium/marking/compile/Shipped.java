package org.manubrium.marking.compile;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.manubrium.anatomy.Onset;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Item;
import org.manubrium.examination.Reading;
import org.manubrium.marking.compile.CaseTruth.EssentialChoice;
import org.manubrium.marking.compile.CaseTruth.Rival;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.event.Logged;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.marking.key.ConclusionKey.Diagnosis;
import org.manubrium.patient.Ailment;
import org.manubrium.patient.Body;
import org.manubrium.patient.Person;
import org.manubrium.patient.Sex;
import org.manubrium.patient.Variation;
import org.manubrium.reasoning.weigh.Weigher;
import org.manubrium.tables.Reference;
import org.manubrium.tables.Tables;

/** Cases made of the shipped tables, and an attempt at one written by hand. */
final class Shipped {
    static final Reference REFERENCE = Tables.shipped();

    private Shipped() {}

    static Body body(String... sites) {
        return new Body(
                REFERENCE.anatomy(),
                REFERENCE.physiology(),
                new Person(47, Sex.FEMALE, Variation.AVERAGE),
                List.of(sites).stream().map(Shipped::ailment).toList());
    }

    private static Ailment ailment(String site) {
        Onset onset = Onset.parse("6 weeks").orElseThrow();
        return new Ailment(site, false, REFERENCE.anatomy().lesions(site, 0.8, onset), Map.of());
    }

    private static Rival rival(String id, String... sites) {
        return new Rival(new Diagnosis(id, id, List.of()), body(sites));
    }

    static CaseTruth seventhRoot(String side, EssentialChoice... choices) {
        return new CaseTruth(
                "seventh-root",
                body("root C7 " + side),
                List.of(new Diagnosis("seventh-root", "seventh cervical root", List.of("c7-radiculopathy"))),
                List.of(rival("sixth-root", "root C6 " + side), rival("radial-nerve", "radial nerve " + side)),
                List.of("mri-cervical-spine"),
                List.of(choices));
    }

    static CaseTruth healthy() {
        return new CaseTruth(
                "well",
                body(),
                List.of(new Diagnosis("healthy", "nothing wrong", List.of())),
                List.of(rival("seventh-root", "root C7 left"), rival("first-sacral-root", "root S1 left")),
                List.of("nothing-further"),
                List.of());
    }

    /** A person of whom one quantity is moved. */
    static CaseTruth shifted(String quantity, double shift) {
        Ailment ailment = new Ailment(quantity, false, List.of(), Map.of(quantity, shift));
        return new CaseTruth(
                "shifted",
                body().with(List.of(ailment)),
                List.of(new Diagnosis("it", "it", List.of())),
                List.of(),
                List.of(),
                List.of());
    }

    static final CaseWeigher WEIGHER = new CaseWeigher(new Weigher(
            REFERENCE.signs(), REFERENCE.conditions(), REFERENCE.reasoning().grounds()));

    static CompiledKey compile(CaseTruth truth) {
        return new KeyCompiler(
                        REFERENCE.signs(),
                        REFERENCE.marking().conventions(),
                        REFERENCE.conditions(),
                        REFERENCE.marking().related(),
                        REFERENCE.marking().harms(),
                        REFERENCE.hash(),
                        WEIGHER)
                .compile(truth);
    }

    /** What a good student would write of a seventh cervical root, from what books say of it. */
    static List<Logged> byHand(Side bad, String... tricepsRoots) {
        List<Event> events = new ArrayList<>(List.of(new Event.Asked("consent")));
        for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
            boolean hurt = side == bad;
            reflex(events, "brachioradialis-reflex", side, "2", false, "");
            reflex(events, "triceps-reflex", side, hurt ? "1" : "2", hurt, "reflex-arc-root");
            sign(
                    events,
                    new Item("elbow-extension", side, ""),
                    new Reading.Grade(hurt ? "4" : "5", "mrc-power"),
                    hurt,
                    "weak-root",
                    bad);
            sign(
                    events,
                    new Item("light-touch", side, "c7-middle-finger"),
                    new Reading.Grade(hurt ? "1" : "2", "isncsci-feeling"),
                    hurt,
                    "feeling-root",
                    bad);
            sign(events, new Item("pin", side, "c6-thumb"), new Reading.Grade("2", "isncsci-feeling"), false, "", bad);
        }
        events.add(new Event.Answered(new Item("pin", bad, "c6-thumb"), "roots", List.of("C6")));
        Item triceps = new Item("triceps-reflex", bad, "");
        events.add(new Event.Answered(triceps, "roots", List.of(tricepsRoots)));
        events.add(new Event.Answered(triceps, "site", List.of("root C7 " + bad.word())));
        events.add(new Event.Answered(new Item("elbow-extension", bad, ""), "roots", List.of("C7")));
        events.add(new Event.Answered(new Item("light-touch", bad, "c7-middle-finger"), "roots", List.of("C7")));
        events.add(new Event.Answered(new Item("brachioradialis-reflex", bad, ""), "roots", List.of("C6")));
        events.add(new Event.Answered(Event.CONCLUSION, "site", List.of("root C7 " + bad.word())));
        events.add(new Event.Answered(Event.CONCLUSION, "differential", List.of("seventh-root=80", "radial-nerve=20")));
        events.add(new Event.Answered(Event.CONCLUSION, "next", List.of("mri-cervical-spine")));
        events.add(new Event.HandedIn());
        return logged(events);
    }

    private static void reflex(
            List<Event> events, String manoeuvre, Side side, String grade, boolean hurt, String means) {
        Item item = new Item(manoeuvre, side, "");
        events.add(new Event.Probed(item, Map.of("reinforcement", "none")));
        sign(events, item, new Reading.Grade(grade, "ninds-reflex"), hurt, means, side);
    }

    private static void sign(List<Event> events, Item item, Reading reading, boolean hurt, String means, Side bad) {
        events.add(new Event.Probed(item, Map.of()));
        events.add(new Event.Recorded(item, reading));
        events.add(new Event.Answered(item, "normal", List.of(hurt ? "abnormal" : "normal")));
        if (hurt) {
            events.add(new Event.Answered(item, "means", List.of(means)));
            events.add(new Event.Answered(item, "site", List.of("root C7 " + bad.word())));
        }
    }

    static List<Logged> logged(List<Event> events) {
        List<Logged.Keyed> keyed = new ArrayList<>();
        events.forEach(event -> keyed.add(new Logged.Keyed("k" + keyed.size(), event)));
        return Logged.inOrder(keyed, "legs-over-edge");
    }
}
