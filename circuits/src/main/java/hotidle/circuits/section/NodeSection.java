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
                            .allowed("-1 bar", "500 bar")),
            "about");

    /** All nodes. */
    public static List<Node> nodes(Attributes file) {
        return file.groups("nodes").values().stream()
                .map(node -> new Node(node.name(), node.numberIf("held")))
                .toList();
    }
}
