package loftcoil.engine.design;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A value chosen from a short list: the code that files, decisions and exercises keep, and what a person reads. */
public interface Coded {

    /** The code; never changed, since files hold it. */
    String code();

    /** What it is called where it is shown; the code itself unless it says more. */
    default String label() {
        return code();
    }

    /** The codes of all values of a list, in their order. */
    static <E extends Enum<E> & Coded> List<String> codes(Class<E> type) {
        return Stream.of(type.getEnumConstants()).map(Coded::code).toList();
    }

    /** The codes of all values in words, each with its label where that says more. */
    static <E extends Enum<E> & Coded> String inWords(Class<E> type) {
        return Stream.of(type.getEnumConstants())
                .map(value ->
                        value.code().equals(value.label()) ? value.code() : value.code() + " (" + value.label() + ")")
                .collect(Collectors.joining(", "));
    }

    /** The value of a code; empty where there is none. */
    static <E extends Enum<E> & Coded> Optional<E> find(Class<E> type, String code) {
        return Stream.of(type.getEnumConstants())
                .filter(value -> value.code().equals(code))
                .findFirst();
    }
}
