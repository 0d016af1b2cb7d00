package hotidle.study;

import hotidle.network.Network;
import hotidle.network.Placed;
import hotidle.part.AnnularGap;
import hotidle.part.Bushing;
import hotidle.part.FaceGap;
import hotidle.part.Fit;
import hotidle.part.PumpChamber;
import hotidle.part.PumpSlip;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** The ten nodes with five of their fits as sizes that can be changed: bores, hub face, the primary's face and mesh, and its tip. */
public final class Fits {

    private Fits() {}

    public static Adjustable worn(double wear) {
        Transmission unit = TenNodes.worn(wear);
        double bore = 0.0127 * 12;
        return new Adjustable(
                unit,
                List.of(
                        size("bores", "bore", bore + 24e-6 * wear, bore + 24e-6, bore + 60e-6),
                        size("hub-face", "depth", 0.01304, 0.01303, 0.01310),
                        size("primary", "face", 0.01304 + 12e-6 * (wear - 1), 0.01304, 0.01310),
                        size("primary", "tip", 0.0841 + 40e-6 * (wear - 1), 0.0841, 0.0843),
                        new WearSize(
                                "primary",
                                "orifice-slip-area",
                                WearSize.SizeKind.AREA,
                                0.4e-6 * wear,
                                0.4e-6,
                                OptionalDouble.empty(),
                                OptionalDouble.empty())),
                sizes -> unit.with(remade(unit.network(), sizes), unit.command()));
    }

    /** The same with the bore of the hub's bushing alone, new. */
    static Adjustable withHub() {
        Transmission unit = TenNodes.worn(1);
        return new Adjustable(
                unit,
                List.of(size("hub", "bore", 0.050060, 0.050060, 0.050140)),
                sizes -> unit.with(remade(unit.network(), sizes), unit.command()));
    }

    private static WearSize size(String part, String key, double value, double fresh, double limit) {
        return new WearSize(
                part, key, WearSize.SizeKind.LENGTH, value, fresh, OptionalDouble.of(limit), OptionalDouble.empty());
    }

    private static Network remade(Network network, Map<String, Double> sizes) {
        Network made = network;
        for (Map.Entry<String, Double> size : sizes.entrySet()) {
            String name = size.getKey().substring(0, size.getKey().indexOf('.'));
            Placed placed = made.part(name).orElseThrow();
            made = made.with(
                    placed.with(changed(placed.part(), size.getKey().substring(name.length() + 1), size.getValue())));
        }
        return made;
    }

    private static hotidle.part.Part changed(hotidle.part.Part part, String key, double value) {
        if (part instanceof AnnularGap gap) {
            if (value <= gap.fit().inner()) {
                throw new IllegalArgumentException("a bore narrower than its valve");
            }
            return new AnnularGap(Fit.same(value, gap.fit().inner()), gap.length(), gap.eccentricity());
        }
        if (part instanceof FaceGap gap) {
            return new FaceGap(
                    gap.inner(),
                    gap.outer(),
                    Fit.same(value, gap.fit().inner()),
                    gap.share(),
                    gap.sector(),
                    gap.faces(),
                    gap.turns());
        }
        if (part instanceof Bushing hub) {
            return new Bushing(
                    Fit.same(value, hub.fit().inner()),
                    hub.length(),
                    hub.loads(),
                    hub.weight(),
                    hub.weightAngle(),
                    hub.permissibleFilm(),
                    hub.permissibleLoad(),
                    hub.tilt(),
                    hub.heated());
        }
        return chamber((PumpChamber) part, key, value);
    }

    private static PumpChamber chamber(PumpChamber pump, String key, double value) {
        PumpSlip slip = pump.slip();
        PumpSlip.Face face = slip.faces().get(0);
        PumpSlip.Tip tip = slip.tips().get(0);
        Fit depth = Fit.same(
                key.equals("face") ? value : face.fit().outer(), face.fit().inner());
        Fit pocket = Fit.same(
                key.equals("tip") ? value : tip.fit().outer(), tip.fit().inner());
        PumpSlip made = new PumpSlip(
                List.of(new PumpSlip.Face(
                        face.name(), depth, face.inner(), face.outer(), face.sector(), face.count(), face.turns())),
                List.of(new PumpSlip.Tip(
                        tip.name(), pocket, tip.land(), tip.teeth(), tip.width(), tip.surface(), tip.hub())),
                slip.opening(),
                slip.fitted(),
                key.equals("orifice-slip-area") ? value : slip.orificeArea(),
                slip.lost());
        return new PumpChamber(pump.displacement(), made, pump.drag(), pump.slide());
    }
}
