package hotidle.plots.scheme;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.elk.alg.layered.options.CrossingMinimizationStrategy;
import org.eclipse.elk.alg.layered.options.CycleBreakingStrategy;
import org.eclipse.elk.alg.layered.options.LayeredOptions;
import org.eclipse.elk.alg.layered.options.LayeringStrategy;
import org.eclipse.elk.alg.layered.options.NodePlacementStrategy;
import org.eclipse.elk.core.RecursiveGraphLayoutEngine;
import org.eclipse.elk.core.data.LayoutMetaDataService;
import org.eclipse.elk.core.math.ElkPadding;
import org.eclipse.elk.core.options.CoreOptions;
import org.eclipse.elk.core.options.Direction;
import org.eclipse.elk.core.options.EdgeRouting;
import org.eclipse.elk.core.options.HierarchyHandling;
import org.eclipse.elk.core.options.PortConstraints;
import org.eclipse.elk.core.options.PortSide;
import org.eclipse.elk.core.options.SizeConstraint;
import org.eclipse.elk.core.util.BasicProgressMonitor;
import org.eclipse.elk.graph.ElkBendPoint;
import org.eclipse.elk.graph.ElkEdge;
import org.eclipse.elk.graph.ElkEdgeSection;
import org.eclipse.elk.graph.ElkNode;
import org.eclipse.elk.graph.ElkPort;
import org.eclipse.elk.graph.util.ElkGraphUtil;

/**
 * Places boxes and tags in layers from the reservoir up and leads lines between them at right angles.
 *
 * <pre>
 * Source  K. Sugiyama, S. Tagawa, M. Toda, IEEE Transactions on Systems, Man and Cybernetics 11 (1981) 109, as Eclipse ELK has it
 * </pre>
 */
final class Layered {

    /** Height in which a frame has its name [mm]. */
    static final double FRAME_HEAD = 4.5;

    /** From the foot of its letters to the lower end of that height [mm]. */
    static final double FRAME_FOOT = 1.4;

    private static final CrossingMinimizationStrategy SWEPT = CrossingMinimizationStrategy.LAYER_SWEEP;

    /** Beginnings of the plain ways of layering, and of those that are bounded in width, on which most depends for a large circuit. */
    private static final int SEEDS = 6;

    private static final int BOUNDED_SEEDS = 14;

    /** Sizes of paper up from A4. */
    private static final int A3 = 1;

    /** Boxes of a frame side by side, so that a full unit goes on A3 (chosen). */
    private static final int BOUND = 4;

    /** Of the library in a millimetre; it rounds places to whole ones, which would set lines off from their pins. */
    private static final double UNITS = 20;

    private final Scheme scheme;
    private final Beginning beginning;
    private final ElkNode root = ElkGraphUtil.createGraph();
    private final Map<String, ElkNode> frames = new LinkedHashMap<>();
    private final Map<String, ElkNode> boxes = new LinkedHashMap<>();
    private final Map<String, ElkNode> tags = new LinkedHashMap<>();
    private final Map<String, BoxPlan> plans = new LinkedHashMap<>();
    private final Map<String, TagPlan> tagPlans = new LinkedHashMap<>();
    private final Map<ElkEdge, Sheet.Wire> wires = new LinkedHashMap<>();

    /**
     * Where a search begins: another one finds another drawing.
     *
     * @param mirrored whether the library lays out the mirror image, which is turned back when read: so that the pump comes to the left as
     *                 often as to the right
     */
    record Beginning(
            int seed, LayeringStrategy strategy, int bound, CrossingMinimizationStrategy order, boolean mirrored) {}

    private Layered(Scheme scheme, Beginning beginning) {
        this.scheme = scheme;
        this.beginning = beginning;
    }

    /** The drawing laid out anew from a number of beginnings, the best of them, whoever waits. */
    static Sheet sheet(Scheme scheme, double more) {
        return sheet(scheme, more, () -> {});
    }

    /**
     * The drawing laid out anew from a number of beginnings, the best of them.
     *
     * @param more height that heading and key take [mm]
     * @param step run before each of them, from any thread; what it throws ends the work
     */
    static Sheet sheet(Scheme scheme, double more, Runnable step) {
        LayoutMetaDataService.getInstance(); // otherwise the library cannot copy its own defaults
        List<CostedSheet> cheapest = new ArrayList<>();
        for (List<Beginning> round : rounds()) {
            cheapest.addAll(round.parallelStream()
                    .map(beginning -> {
                        step.run();
                        return CostedSheet.of(new Layered(scheme, beginning).laidOut(), more);
                    })
                    .toList());
            cheapest.sort(Comparator.comparingDouble(CostedSheet::cost));
            if (good(scheme, cheapest.get(0).sheet(), more)) {
                break;
            }
        }
        return Packed.of(fewestFlaws(scheme, cheapest), more);
    }

    /** Whether no more beginnings are tried: a full unit without a flaw on A3. A group is small, and all are tried for it. */
    private static boolean good(Scheme scheme, Sheet sheet, double more) {
        return scheme.frames().size() > 1
                && Paper.step(sheet.width(), sheet.height() + more) <= A3
                && Flaws.of(scheme, sheet).isEmpty();
    }

    /** From which a drawing is laid out, round by round: the plain ways of layering, then half of the bounded ones, then the others. */
    static List<List<Beginning>> rounds() {
        List<Beginning> plain = new ArrayList<>();
        for (int seed = 1; seed <= SEEDS; seed++) {
            plain.add(new Beginning(seed, LayeringStrategy.NETWORK_SIMPLEX, 0, SWEPT, seed % 2 > 0));
            plain.add(new Beginning(seed, LayeringStrategy.LONGEST_PATH, 0, SWEPT, seed % 2 > 0));
        }
        List<Beginning> bounded = new ArrayList<>();
        for (int seed = 1; seed <= BOUNDED_SEEDS; seed++) {
            bounded.add(new Beginning(seed, LayeringStrategy.COFFMAN_GRAHAM, BOUND, SWEPT, false));
            bounded.add(new Beginning(seed, LayeringStrategy.COFFMAN_GRAHAM, BOUND, SWEPT, true));
        }
        return List.of(
                plain, bounded.subList(0, bounded.size() / 2), bounded.subList(bounded.size() / 2, bounded.size()));
    }

    /** The first with the fewest flaws. They take as long to find as a drawing, so none is asked after the first without any. */
    private static Sheet fewestFlaws(Scheme scheme, List<CostedSheet> cheapest) {
        Sheet best = null;
        int fewest = Integer.MAX_VALUE;
        for (int i = 0; i < cheapest.size() && fewest > 0; i++) {
            int flaws = Flaws.of(scheme, cheapest.get(i).sheet()).size();
            if (flaws < fewest) {
                fewest = flaws;
                best = cheapest.get(i).sheet();
            }
        }
        return best;
    }

    /** A drawing and what is against it. */
    private record CostedSheet(Sheet sheet, double cost) {
        static CostedSheet of(Sheet sheet, double more) {
            return new CostedSheet(sheet, sheet.cost(more));
        }
    }

    /**
     * The boxes and lines in layers in which each stands in the order of the description, without frames: a measure of what the search for
     * fewer crossings gains.
     */
    static Sheet inOrder(Scheme scheme) {
        LayoutMetaDataService.getInstance();
        Scheme bare =
                new Scheme(scheme.title(), scheme.notes(), List.of(), scheme.parts(), scheme.nets(), scheme.scale());
        return new Layered(
                        bare,
                        new Beginning(1, LayeringStrategy.NETWORK_SIMPLEX, 0, CrossingMinimizationStrategy.NONE, false))
                .laidOut();
    }

    private Sheet laidOut() {
        options();
        for (String frame : scheme.frames()) {
            ElkNode node = ElkGraphUtil.createNode(root);
            node.setProperty(
                    LayeredOptions.PADDING, new ElkPadding(units(FRAME_HEAD), units(1.5), units(1.5), units(1.5)));
            tight(node);
            frames.put(frame, node);
        }
        scheme.nets().stream()
                .filter(net -> net.look() != SchemeNet.Look.RESERVOIR)
                .forEach(this::tag);
        scheme.parts().forEach(this::box);
        scheme.parts().forEach(part -> part.pins().forEach(pin -> wire(part, pin)));
        new RecursiveGraphLayoutEngine().layout(root, new BasicProgressMonitor());
        return read();
    }

    private void options() {
        root.setProperty(CoreOptions.ALGORITHM, LayeredOptions.ALGORITHM_ID);
        root.setProperty(LayeredOptions.DIRECTION, Direction.UP);
        root.setProperty(LayeredOptions.EDGE_ROUTING, EdgeRouting.ORTHOGONAL);
        root.setProperty(LayeredOptions.HIERARCHY_HANDLING, HierarchyHandling.INCLUDE_CHILDREN);
        root.setProperty(LayeredOptions.RANDOM_SEED, beginning.seed());
        tight(root);
        root.setProperty(LayeredOptions.PADDING, new ElkPadding(0));
    }

    /** Frames do not take these from the whole. */
    private void tight(ElkNode of) {
        of.setProperty(LayeredOptions.CROSSING_MINIMIZATION_STRATEGY, beginning.order());
        of.setProperty(LayeredOptions.LAYERING_STRATEGY, beginning.strategy());
        if (beginning.strategy() == LayeringStrategy.COFFMAN_GRAHAM) {
            of.setProperty(LayeredOptions.LAYERING_COFFMAN_GRAHAM_LAYER_BOUND, beginning.bound());
        }
        of.setProperty(LayeredOptions.SPACING_NODE_NODE, units(1.5));
        of.setProperty(LayeredOptions.SPACING_EDGE_NODE, units(1.2));
        of.setProperty(LayeredOptions.SPACING_EDGE_EDGE, units(1.2));
        of.setProperty(LayeredOptions.SPACING_NODE_NODE_BETWEEN_LAYERS, units(1.8));
        of.setProperty(LayeredOptions.SPACING_EDGE_NODE_BETWEEN_LAYERS, units(1.2));
        of.setProperty(LayeredOptions.SPACING_EDGE_EDGE_BETWEEN_LAYERS, units(1.2));
        of.setProperty(LayeredOptions.NODE_PLACEMENT_STRATEGY, NodePlacementStrategy.NETWORK_SIMPLEX);
        of.setProperty(LayeredOptions.CYCLE_BREAKING_STRATEGY, CycleBreakingStrategy.DEPTH_FIRST);
        of.setProperty(LayeredOptions.THOROUGHNESS, 40);
    }

    private void tag(SchemeNet net) {
        TagPlan plan = TagPlan.of(net);
        ElkNode node = ElkGraphUtil.createNode(parent(net.frame()));
        node.setDimensions(units(plan.width()), units(plan.height()));
        node.setProperty(LayeredOptions.PORT_CONSTRAINTS, PortConstraints.FIXED_POS);
        node.setProperty(LayeredOptions.NODE_SIZE_CONSTRAINTS, EnumSet.noneOf(SizeConstraint.class));
        port(node, PortSide.SOUTH, plan.across(), plan.height());
        port(node, PortSide.NORTH, plan.across(), 0);
        port(node, PortSide.NORTH, plan.across() + TagPlan.PILOT_BESIDE, 0);
        port(node, PortSide.SOUTH, plan.across() - TagPlan.PILOT_BESIDE / 1.5, plan.height());
        tags.put(net.name(), node);
        tagPlans.put(net.name(), plan);
    }

    private void box(SchemePart part) {
        BoxPlan plan = BoxPlan.of(part, scheme);
        ElkNode node = ElkGraphUtil.createNode(parent(part.frame()));
        node.setDimensions(units(plan.width()), units(plan.height()));
        node.setProperty(LayeredOptions.PORT_CONSTRAINTS, PortConstraints.FIXED_POS);
        boxes.put(part.name(), node);
        plans.put(part.name(), plan);
    }

    private static double units(double millimetres) {
        return Math.round(millimetres * UNITS);
    }

    private ElkNode parent(String frame) {
        return frames.getOrDefault(frame, root);
    }

    private ElkPort port(ElkNode node, PortSide side, double x, double y) {
        ElkPort port = ElkGraphUtil.createPort(node);
        port.setDimensions(0, 0);
        port.setLocation(beginning.mirrored() ? node.getWidth() - units(x) : units(x), units(y));
        port.setProperty(LayeredOptions.PORT_SIDE, side);
        return port;
    }

    private void wire(SchemePart part, Pin pin) {
        if (scheme.reservoir(pin.net())) {
            return;
        }
        BoxPlan plan = plans.get(part.name());
        boolean out = part.upwards(pin);
        ElkPort own = port(
                boxes.get(part.name()),
                out ? PortSide.NORTH : PortSide.SOUTH,
                plan.pins().get(pin).getX(),
                out ? 0 : plan.height());
        ElkNode tag = tags.get(pin.net());
        ElkPort other = tag.getPorts().get((out ? 0 : 1) + (pin.role().pilot() ? out ? 3 : 1 : 0));
        ElkEdge edge = out ? ElkGraphUtil.createSimpleEdge(own, other) : ElkGraphUtil.createSimpleEdge(other, own);
        if (pin.role().pilot()) {
            edge.setProperty(LayeredOptions.PRIORITY_DIRECTION, 0);
        } else {
            edge.setProperty(LayeredOptions.PRIORITY_DIRECTION, 10);
        }
        wires.put(edge, new Sheet.Wire(part.name(), pin, List.of()));
    }

    private Sheet read() {
        List<Sheet.Wire> led = new ArrayList<>();
        wires.forEach((edge, wire) -> led.add(new Sheet.Wire(wire.part(), wire.pin(), corners(edge))));
        List<Sheet.Frame> framed = new ArrayList<>();
        frames.forEach((name, node) -> {
            if (!node.getChildren().isEmpty()) {
                framed.add(framed(name, area(node), led));
            }
        });
        List<Sheet.Box> placed = new ArrayList<>();
        for (SchemePart part : scheme.parts()) {
            placed.add(new Sheet.Box(part, plans.get(part.name()), area(boxes.get(part.name()))));
        }
        List<Sheet.Tag> tagged = new ArrayList<>();
        tags.forEach((name, node) -> tagged.add(new Sheet.Tag(scheme.net(name), tagPlans.get(name), area(node))));
        return new Sheet(root.getWidth() / UNITS, root.getHeight() / UNITS, framed, placed, tagged, led);
    }

    /** The name stands at the left where it can; where a line enters there, to the right of it. */
    private static Sheet.Frame framed(String name, Rectangle2D area, List<Sheet.Wire> wires) {
        double width = Lettering.width(name, Lettering.PLAIN, Lettering.FRAME) + 2;
        double step = 1;
        for (double x = area.getMinX() + 1; x + width < area.getMaxX(); x += step) {
            Rectangle2D text = new Rectangle2D.Double(x, area.getMinY(), width, FRAME_HEAD - 0.5);
            if (wires.stream().noneMatch(wire -> wire.meets(text))) {
                return new Sheet.Frame(name, area, new Point2D.Double(x + 1, area.getMinY() + FRAME_HEAD - FRAME_FOOT));
            }
        }
        return new Sheet.Frame(name, area, new Point2D.Double(area.getMinX() + 1, area.getMinY() - 1));
    }

    private List<Point2D> corners(ElkEdge edge) {
        Point2D from = origin(edge.getContainingNode());
        List<Point2D> corners = new ArrayList<>();
        for (ElkEdgeSection section : edge.getSections()) {
            corners.add(corner(from, section.getStartX(), section.getStartY()));
            for (ElkBendPoint bend : section.getBendPoints()) {
                corners.add(corner(from, bend.getX(), bend.getY()));
            }
            corners.add(corner(from, section.getEndX(), section.getEndY()));
        }
        return List.copyOf(corners);
    }

    private Point2D corner(Point2D from, double x, double y) {
        double across = from.getX() + x / UNITS;
        return new Point2D.Double(
                beginning.mirrored() ? root.getWidth() / UNITS - across : across, from.getY() + y / UNITS);
    }

    private Rectangle2D area(ElkNode node) {
        Point2D at = origin(node);
        double width = node.getWidth() / UNITS;
        double left = beginning.mirrored() ? root.getWidth() / UNITS - at.getX() - width : at.getX();
        return new Rectangle2D.Double(left, at.getY(), width, node.getHeight() / UNITS);
    }

    private static Point2D origin(ElkNode node) {
        double x = 0;
        double y = 0;
        for (ElkNode one = node; one != null; one = one.getParent()) {
            x += one.getX() / UNITS;
            y += one.getY() / UNITS;
        }
        return new Point2D.Double(x, y);
    }
}
