package loftcoil.engine.run;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * The last few results of something dear that follows from its key alone, so that designs which differ little share them, and
 * so do the faces that show one design: whoever turns at the panes need not have the loop searched anew. For use by several threads.
 *
 * @param <K> all that the result depends on, compared by value
 * @param <V> an immutable result
 */
public final class Recent<K, V> {

    private final Map<K, V> kept;

    /**
     * Keeps none yet.
     *
     * @param most how many it keeps at most, those asked for last; 1 or more
     */
    public Recent(int most) {
        kept = new LinkedHashMap<>(2 * most, 0.75f, true) {
            private static final long serialVersionUID = 1;

            @Override
            protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
                return size() > most;
            }
        };
    }

    /**
     * The result for a key, worked out where it is not among those kept; two threads may both work it out.
     *
     * @param key what it follows from
     * @param worked works it out; what it throws is thrown, and nothing is kept
     */
    public V of(K key, Function<K, V> worked) {
        synchronized (kept) {
            V known = kept.get(key);
            if (known != null) {
                return known;
            }
        }
        V made = worked.apply(key);
        synchronized (kept) {
            kept.put(key, made);
        }
        return made;
    }
}
