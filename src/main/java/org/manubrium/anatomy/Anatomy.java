package org.manubrium.anatomy;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** The map of the body. Immutable; every answer comes from the tables. */
public final class Anatomy {
    /** Where the rows of a tract end and those of the segment begin. */
    private static final String TRUNK = "@trunk";

    private static final String HORN = "anterior horn";

    private static final String ENTRY = "dorsal horn";
    private static final String VENTRAL = "ventral root";
    private static final String ROOT = "root";
    private static final String MUSCLE = "muscle";
    private static final String JUNCTION = "neuromuscular junction";
    private static final Segment NO_LEVEL = Segment.C1;

    private final AnatomyTables tables;
    private final Map<String, Structure> structures;
    private final Map<String, Station> stations;
    private final Map<String, Muscle> muscles;
    private final Map<String, Movement> movements;
    private final Map<String, Arc> arcs;
    private final Map<String, SkinPoint> points;
    private final Map<String, Modality> modalities;
    private final Map<String, List<RootShare>> roots;
    private final SiteReader reader;
    private final Tracts tracts;
    /** Laying a pathway costs more than walking it, and every patient has the same ones. */
    private final Map<Key, Pathway> laid = new ConcurrentHashMap<>();

    public Anatomy(AnatomyTables tables) {
        this.tables = tables;
        this.structures = by(tables.structures(), Structure::name);
        this.stations = by(tables.stations(), Station::id);
        this.muscles = by(tables.muscles(), Muscle::id);
        this.movements = by(tables.movements(), Movement::id);
        this.arcs = by(tables.arcs(), Arc::id);
        this.points = by(tables.points(), SkinPoint::id);
        this.modalities = by(tables.modalities(), Modality::id);
        this.roots = tables.rootShares().stream().collect(Collectors.groupingBy(RootShare::owner));
        this.reader = new SiteReader(
                structures, by(tables.regions(), r -> (r.name() + " " + r.extent()).trim()), tables.siteNames());
        this.tracts = new Tracts(tables.tractSteps());
    }

    private static <T> Map<String, T> by(Collection<T> rows, Function<T, String> id) {
        Map<String, T> found = new LinkedHashMap<>();
        for (T row : rows) {
            if (found.put(id.apply(row), row) != null) {
                throw new IllegalArgumentException("two rows are called \"" + id.apply(row) + "\"");
            }
        }
        return found;
    }

    public AnatomyTables tables() {
        return tables;
    }

    /**
     * The lesions of single structures that a lesion "there" amounts to.
     *
     * @param where a site or region as a clinician says it
     * @throws UnknownSite when the text names none
     */
    public List<Lesion> lesions(String where, double loss, Onset onset) {
        return reader.read(where).stream()
                .map(share -> new Lesion(share.site(), loss * share.share(), onset))
                .toList();
    }

    public Structure structure(String name) {
        return known(structures, name, "structure");
    }

    public Movement movement(String id) {
        return known(movements, id, "movement");
    }

    public Arc arc(String id) {
        return known(arcs, id, "reflex arc");
    }

    public SkinPoint point(String id) {
        return known(points, id, "skin point");
    }

    public Collection<SkinPoint> points() {
        return points.values();
    }

    public Modality modality(String id) {
        return known(modalities, id, "modality");
    }

    /** The shares of the roots in a muscle, arc or point, by its id. */
    public List<RootShare> roots(String owner) {
        return known(roots, owner, "owner of roots");
    }

    private record Key(String kind, String id, String other, Side side, Segment level) {}

    /** Found without a lock, as it nearly always is. */
    private Pathway laid(Key key, Supplier<Pathway> lay) {
        Pathway known = laid.get(key);
        return known == null ? laid.computeIfAbsent(key, k -> lay.get()) : known;
    }

    /** A tract by name; see {@link Tracts#lay}. */
    public Pathway tract(String name, Side side, Segment level, String area) {
        return laid(new Key("tract", name, area, side, level), () -> layTract(name, side, level, area));
    }

    private Pathway layTract(String name, Side side, Segment level, String area) {
        return tracts.lay(name, side, level, area);
    }

    /** From the cortex to the muscles of a movement, all descending tracts in their shares. */
    public Pathway motor(String movementId, Side side) {
        return laid(new Key("motor", movementId, "", side, NO_LEVEL), () -> layMotor(movementId, side));
    }

    private Pathway layMotor(String movementId, Side side) {
        Movement movement = movement(movementId);
        return overMuscles(movement, side, root -> descending(movement, side, root));
    }

    /** From the anterior horn to the muscles of a movement: the lower motor neurone alone. */
    public Pathway lowerMotor(String movementId, Side side) {
        return laid(new Key("lower", movementId, "", side, NO_LEVEL), () -> layLowerMotor(movementId, side));
    }

    private Pathway layLowerMotor(String movementId, Side side) {
        return overMuscles(movement(movementId), side, root -> Pathway.series(List.of()));
    }

    /** From the anterior horn to one muscle. */
    public Pathway supply(String muscleId, Side side) {
        return laid(new Key("supply", muscleId, "", side, NO_LEVEL), () -> laySupply(muscleId, side));
    }

    private Pathway laySupply(String muscleId, Side side) {
        Muscle muscle = known(muscles, muscleId, "muscle");
        Movement alone = new Movement(
                muscleId, muscle.name(), Map.of(muscleId, 1.0), "", 0, muscle.source(), muscle.confidence());
        return overMuscles(alone, side, root -> Pathway.series(List.of()));
    }

    /** From the cortex to the anterior horns of a movement: the upper motor neurone alone. */
    public Pathway upperMotor(String movementId, Side side) {
        return laid(new Key("upper", movementId, "", side, NO_LEVEL), () -> layUpperMotor(movementId, side));
    }

    private Pathway layUpperMotor(String movementId, Side side) {
        Movement movement = movement(movementId);
        List<Pathway.Branch> branches = new ArrayList<>();
        movement.muscles()
                .forEach((id, share) -> roots(id)
                        .forEach(root -> branches.add(
                                new Pathway.Branch(share * root.weight(), descending(movement, side, root.root())))));
        return Pathway.parallel(branches);
    }

    private Pathway overMuscles(Movement movement, Side side, Function<Segment, Pathway> above) {
        List<Pathway.Branch> branches = new ArrayList<>();
        movement.muscles().forEach((id, share) -> {
            Muscle muscle = known(muscles, id, "muscle");
            for (RootShare root : roots(id)) {
                Pathway path = Pathway.series(
                        above.apply(root.root()),
                        Pathway.at(Site.at(HORN, root.root(), side)),
                        Pathway.at(Site.at(VENTRAL, root.root(), side)),
                        peripheral(root.root(), muscle.station(), side),
                        toMuscle(muscle, side));
                branches.add(new Pathway.Branch(share * root.weight(), path));
            }
        });
        return Pathway.parallel(branches);
    }

    private Pathway descending(Movement movement, Side side, Segment root) {
        double share = movement.corticospinalShare();
        return Pathway.parallel(List.of(
                new Pathway.Branch(share, layTract("corticospinal", side, root, movement.area())),
                new Pathway.Branch(1 - share, layTract("other descending", side, root, movement.area()))));
    }

    /** The arc of a reflex: in by the nerve, through the segment, out by the nerve to the muscle. */
    public Pathway arc(String arcId, Side side) {
        return laid(new Key("arc", arcId, "", side, NO_LEVEL), () -> layArc(arcId, side));
    }

    private Pathway layArc(String arcId, Side side) {
        Arc arc = arc(arcId);
        Muscle muscle = known(muscles, arc.muscle(), "muscle");
        return Pathway.series(
                Pathway.parallel(roots(arcId).stream()
                        .map(share -> new Pathway.Branch(
                                share.weight(),
                                Pathway.series(
                                        peripheral(share.root(), arc.station(), side),
                                        Pathway.at(Site.at(ENTRY, share.root(), side)),
                                        Pathway.at(Site.at(HORN, share.root(), side)))))
                        .toList()),
                toMuscle(muscle, side));
    }

    /** The descending control of a reflex, to each of its roots in their shares. */
    public Pathway control(String arcId, Side side) {
        return laid(new Key("control", arcId, "", side, NO_LEVEL), () -> layControl(arcId, side));
    }

    private Pathway layControl(String arcId, Side side) {
        Arc arc = arc(arcId);
        return Pathway.parallel(roots(arcId).stream()
                .map(share ->
                        new Pathway.Branch(share.weight(), layTract("corticospinal", side, share.root(), arc.area())))
                .toList());
    }

    /** From a point of the skin to the cortex, for one kind of feeling. */
    public Pathway sensory(String modalityId, String pointId, Side side) {
        return laid(
                new Key("sensory", modalityId, pointId, side, NO_LEVEL), () -> laySensory(modalityId, pointId, side));
    }

    private Pathway laySensory(String modalityId, String pointId, Side side) {
        Modality modality = modality(modalityId);
        SkinPoint point = point(pointId);
        List<Pathway.Branch> branches = new ArrayList<>();
        for (RootShare root : overlapping(point, modality)) {
            Pathway tractsOf = Pathway.parallel(modality.tracts().entrySet().stream()
                    .map(t -> new Pathway.Branch(t.getValue(), layTract(t.getKey(), side, root.root(), point.area())))
                    .toList());
            branches.add(new Pathway.Branch(
                    root.weight(), Pathway.series(peripheral(root.root(), point.station(), side), tractsOf)));
        }
        return Pathway.parallel(branches);
    }

    /** How it is felt where a limb is: by the position of the joints at its points, in their shares. */
    public Pathway position(String area, Side side) {
        return laid(new Key("position", area, "", side, NO_LEVEL), () -> layPosition(area, side));
    }

    private Pathway layPosition(String area, Side side) {
        return Pathway.parallel(tables.limbPoints().stream()
                .filter(felt -> felt.area().equals(area))
                .map(felt -> new Pathway.Branch(felt.share(), laySensory("joint-position", felt.point(), side)))
                .toList());
    }

    /** Each root of a point is helped by its two neighbours, as far as the modality overlaps. */
    private List<RootShare> overlapping(SkinPoint point, Modality modality) {
        Map<Segment, Double> shares = new EnumMap<>(Segment.class);
        for (RootShare own : roots(point.id())) {
            double left = own.weight();
            for (int step : new int[] {-1, 1}) {
                Optional<Segment> next = own.root().down(step).filter(n -> joins(n, point.station()));
                if (next.isPresent()) {
                    double help = own.weight() * modality.neighbourShare();
                    shares.merge(next.get(), help, Double::sum);
                    left -= help;
                }
            }
            shares.merge(own.root(), left, Double::sum);
        }
        return shares.entrySet().stream()
                .filter(s -> s.getValue() > 0)
                .map(s -> new RootShare(point.id(), s.getKey(), s.getValue(), modality.source(), modality.confidence()))
                .toList();
    }

    /** Whether a root can reach a station: only the roots of the brachial plexus run through its trunks. */
    private boolean joins(Segment root, String station) {
        return tables.trunks().containsKey(root)
                || course(station).stream().noneMatch(s -> s.level().equals(Optional.of(TRUNK)));
    }

    /** The root and the stretches of plexus and nerve down to a station. */
    private Pathway peripheral(Segment root, String station, Side side) {
        List<Pathway> course = new ArrayList<>();
        course.add(Pathway.at(Site.at(ROOT, root, side)));
        for (Station stretch : course(station)) {
            Optional<String> level = stretch.level().map(l -> l.equals(TRUNK) ? trunk(root, station) : l);
            course.add(Pathway.at(new Site(stretch.structure(), Optional.empty(), side, level)));
        }
        return Pathway.series(course);
    }

    private String trunk(Segment root, String station) {
        String trunk = tables.trunks().get(root);
        if (trunk == null) {
            throw new IllegalArgumentException("root " + root + " joins no trunk on its way to \"" + station + "\"");
        }
        return trunk;
    }

    private List<Station> course(String station) {
        List<Station> found = new ArrayList<>();
        Optional<String> next = Optional.of(station).filter(s -> !s.isBlank());
        while (next.isPresent()) {
            Station stretch = known(stations, next.get(), "station");
            found.add(0, stretch);
            next = stretch.parent();
            if (found.size() > stations.size()) {
                throw new IllegalArgumentException("the course of \"" + station + "\" runs in a circle");
            }
        }
        return found;
    }

    private static Pathway toMuscle(Muscle muscle, Side side) {
        return Pathway.series(
                Pathway.at(Site.at(JUNCTION, side, muscle.id())), Pathway.at(Site.at(MUSCLE, side, muscle.id())));
    }

    private static <T> T known(Map<String, T> rows, String id, String what) {
        T row = rows.get(id);
        if (row == null) {
            throw new IllegalArgumentException("no " + what + " is called \"" + id + "\"");
        }
        return row;
    }
}
