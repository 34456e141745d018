package loftcoil.engine.design;

import java.util.List;

/**
 * What tank and pipes are made of, besides the metal that the names of the tubes say.
 *
 * @param tank what the tank is made of where the water touches it
 * @param inLoop other metals the loop's water touches, such as nipples and unions
 * @param plasticPipes every plastic pipe that carries this water; none where the list is empty
 */
public record Materials(Metal tank, List<Metal> inLoop, List<PlasticPipe> plasticPipes) {

    /** What the water can touch. */
    public enum Metal implements Coded {
        /** Stainless steel. */
        STAINLESS_STEEL("stainless steel"),
        /** Copper. */
        COPPER("copper"),
        /** Brass. */
        BRASS("brass"),
        /** Bronze. */
        BRONZE("bronze"),
        /** Steel under enamel. */
        ENAMELLED_STEEL("enamelled steel"),
        /** Steel under zinc. */
        GALVANISED_STEEL("galvanised steel"),
        /** Bare steel. */
        PLAIN_STEEL("plain steel"),
        /** Aluminium. */
        ALUMINIUM("aluminium"),
        /** No metal at all. */
        PLASTIC("plastic");

        private final String code;

        Metal(String code) {
            this.code = code;
        }

        @Override
        public String code() {
            return code;
        }
    }

    /** Keeps copies of the lists. */
    public Materials {
        inLoop = List.copyOf(inLoop);
        plasticPipes = List.copyOf(plasticPipes);
    }
}
