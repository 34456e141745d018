package loftcoil.engine.design;

import java.util.List;

/**
 * What tank and pipes are made of, besides the copper tube of the loop.
 *
 * @param tank what the tank is made of where the water touches it
 * @param inLoop other metals the loop's water touches, such as nipples and unions
 * @param plasticPipes every plastic pipe that carries this water; none where the list is empty
 */
public record Materials(String tank, List<String> inLoop, List<PlasticPipe> plasticPipes) {

    /** The materials known. */
    public static final List<String> KNOWN = List.of(
            "stainless steel",
            "copper",
            "brass",
            "bronze",
            "enamelled steel",
            "galvanised steel",
            "plain steel",
            "aluminium",
            "plastic");

    /** Keeps copies of the lists. */
    public Materials {
        inLoop = List.copyOf(inLoop);
        plasticPipes = List.copyOf(plasticPipes);
    }
}
