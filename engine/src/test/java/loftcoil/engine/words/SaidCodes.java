package loftcoil.engine.words;

import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** The codes of all sentences in a record and in what it is made of. */
public final class SaidCodes {

    private final Set<String> codes = new TreeSet<>();

    private SaidCodes() {}

    /** Of records, lists and optionals, however deep. */
    public static Set<String> of(Object said) {
        SaidCodes found = new SaidCodes();
        found.walk(said);
        return found.codes;
    }

    private void walk(Object said) {
        if (said instanceof MeasuredText text) {
            codes.addAll(List.of(text.code().split(" ", -1)));
            codes.remove("");
        } else if (said instanceof Optional<?> optional) {
            optional.ifPresent(this::walk);
        } else if (said instanceof List<?> list) {
            list.forEach(this::walk);
        } else if (said instanceof Record record) {
            for (RecordComponent part : record.getClass().getRecordComponents()) {
                walk(read(record, part));
            }
        }
    }

    private static Object read(Record record, RecordComponent part) {
        try {
            part.getAccessor().setAccessible(true);
            return part.getAccessor().invoke(record);
        } catch (ReflectiveOperationException closed) {
            throw new IllegalStateException(closed);
        }
    }
}
