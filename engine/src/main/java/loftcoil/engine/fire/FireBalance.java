package loftcoil.engine.fire;

import java.util.function.Function;

/**
 * Where the heat of the wood goes; fuel = unburnt + coil + room + flue.
 *
 * @param fuelW net heat in the wood, W
 * @param unburntW of that, unburnt, W
 * @param coilW of that, into the water, W
 * @param roomW of that, into the room from walls and body of the heater, W
 * @param flueW of that, up the flue as hot gas, W above room air; below zero where a coil of cold water leaves the gas colder
 *     than the room
 * @param afterCoilC temperature of the gas after the coil, °C
 * @param flueC temperature of the gas as it leaves the heater, °C
 */
public record FireBalance(
        double fuelW, double unburntW, double coilW, double roomW, double flueW, double afterCoilC, double flueC)
        implements FireAccount {

    static FireBalance of(CoilInFire fire, double gasW, double radiatedW) {
        Burn burn = fire.burn();
        double leftInGas = fire.gasPoolW() - gasW;
        double body = Math.max(0, leftInGas) * fire.firebox().bodyShare();
        double flueW = leftInGas - body;
        double walls = fire.radiatedPoolW() - radiatedW;
        return new FireBalance(
                burn.fuelW(),
                burn.unburntW(),
                gasW + radiatedW,
                walls + body,
                flueW,
                fire.gasC(leftInGas),
                fire.gasC(flueW));
    }

    /** Share of the wood's net heat that reaches the water, 0 to 1. */
    public double coilShare() {
        return coilW / fuelW;
    }

    /** Share of the wood's net heat that reaches water and room, 0 to 1. */
    public double efficiency() {
        return (coilW + roomW) / fuelW;
    }

    @Override
    public <T> T match(Function<FireBalance, T> balanced, Function<OverdrawnFire, T> overdrawn) {
        return balanced.apply(this);
    }
}
