package hotidle.circuits.section;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Shape;
import hotidle.circuits.text.Dimension;
import hotidle.network.Node;
import java.util.List;

/** Places of one pressure: their keys, and how they are read. */
public final class NodeSection {

    private NodeSection() {}

    static final Shape NODE = new Shape(
            "node",
            List.of(
                    Key.text("about", "what it is"),
                    Key.quantity(
                                    "held",
                                    Dimension.PRESSURE,
                                    "gauge pressure at which it is held, as the sump is; left out: free")
                            .neededWhere("no other node is held")
                            .allowed("-1 bar", "500 bar"),
                    Key.quantity(
                                    "rated-pressure",
                                    Dimension.PRESSURE,
                                    "gauge pressure that what holds the oil there bears by its maker: housing, piston, drum; left"
                                            + " out: not judged")
                            .optional()
                            .allowed("0.1 bar", "1000 bar")
                            .usual("5 bar", "100 bar")),
            "about");

    /** All nodes. */
    public static List<Node> nodes(Attributes file) {
        return file.groups("nodes").values().stream()
                .map(node -> new Node(node.name(), node.numberIf("held"), node.numberIf("rated-pressure")))
                .toList();
    }
}
