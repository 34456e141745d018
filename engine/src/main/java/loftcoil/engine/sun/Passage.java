package loftcoil.engine.sun;

import java.util.List;

/**
 * Where the light that meets a stack of panes goes; the shares add up to 1.
 *
 * @param transmitted share that comes out behind
 * @param reflected share thrown back in front
 * @param absorbed share kept by each pane, outermost first
 */
public record Passage(double transmitted, double reflected, List<Double> absorbed) {

    /** Copies the list. */
    public Passage {
        absorbed = List.copyOf(absorbed);
    }
}
