package loftcoil.runner.course;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Something that is read when it is first asked for, and then kept. What is refused is refused at each asking.
 *
 * @param <T> what it is
 */
final class Later<T> {

    private final Supplier<T> reader;
    private @Nullable T read;

    Later(Supplier<T> reader) {
        this.reader = reader;
    }

    synchronized T get() {
        T kept = read;
        if (kept == null) {
            kept = reader.get();
            read = kept;
        }
        return kept;
    }
}
