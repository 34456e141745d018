package loftcoil.engine.run;

/**
 * What came out of the taps, in L of mixed water.
 *
 * @param asWanted as warm as wanted
 * @param tooCool cooler than wanted
 * @param missing not at all: the port was dry, or the tap is not below the waterline
 */
public record Litres(double asWanted, double tooCool, double missing) {

    Litres and(Litres other, double times) {
        return new Litres(
                asWanted + times * other.asWanted, tooCool + times * other.tooCool, missing + times * other.missing);
    }

    Litres since(Litres before) {
        return new Litres(asWanted - before.asWanted, tooCool - before.tooCool, missing - before.missing);
    }
}
