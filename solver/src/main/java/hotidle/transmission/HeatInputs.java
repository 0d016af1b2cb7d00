package hotidle.transmission;

import java.util.Map;

/**
 * What the heat of a unit depends on beside its oil circuit. Heat masses are those that warm and cool together.
 *
 * @param ambient           temperature of the air around the unit [K]
 * @param caseLoss          heat that case and pan give to the air for each kelvin of the sump above it [W/K]
 * @param housingLoss       heat that the converter's housing gives to the air for each kelvin of the converter's oil above it [W/K]
 * @param sumpHeatMass      of the oil in pan, valve body and gear set with the metal that follows it [J/K]
 * @param converterHeatMass of the oil in the converter with its steel [J/K]
 * @param meshLoss          share of the turbine's power that meshes and bearings under load turn into heat [-]
 * @param churning          drag of turning parts in oil and of unloaded bearings, at the turbine's speed of 1 rev/s [N·m·s/rev]:
 *                          torque in proportion to speed
 * @param oilLimit          highest temperature of the sump [K]
 * @param converterLimit    highest temperature of the oil that leaves the converter [K]
 */
public record HeatInputs(
        double ambient,
        double caseLoss,
        double housingLoss,
        double sumpHeatMass,
        double converterHeatMass,
        double meshLoss,
        double churning,
        double oilLimit,
        double converterLimit) {

    public HeatInputs {
        Map.of(
                        "loss of the case", caseLoss,
                        "loss of the housing", housingLoss,
                        "mesh loss", meshLoss,
                        "churning", churning)
                .forEach((what, value) -> {
                    if (!(value >= 0)) {
                        throw new IllegalArgumentException(what + " is " + value + " and must not be below zero");
                    }
                });
        if (!(sumpHeatMass > 0 && converterHeatMass > 0)) {
            throw new IllegalArgumentException("heat masses must be above zero");
        }
        if (!(oilLimit > ambient && converterLimit > ambient)) {
            throw new IllegalArgumentException("the limits of temperature must lie above the air's");
        }
    }
}
