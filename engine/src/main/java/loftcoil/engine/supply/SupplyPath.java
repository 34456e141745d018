package loftcoil.engine.supply;

import java.util.List;

/** The way from the tank to one outlet: its outlet, the numbers of the pipes on the way in order, and their volume in m³. */
record SupplyPath(Outlet outlet, List<Integer> pipes, double volumeM3) {

    SupplyPath {
        pipes = List.copyOf(pipes);
    }

    int lastPipe() {
        return pipes.get(pipes.size() - 1);
    }
}
