package hafthold.simulate;

import java.util.Objects;
import java.util.function.Supplier;

/**
 * Something that is worked out when it is first asked for, and never again: of a whole rack hardly anything is told about
 * most materials. Equal to another one that comes to the same.
 *
 * @param <T> what it comes to; never null
 */
public final class Once<T> implements Supplier<T> {
    private Supplier<T> source;
    private T value;

    private Once(Supplier<T> source) {
        this.source = source;
    }

    /** Something to be worked out. */
    public static <T> Once<T> from(Supplier<T> source) {
        return new Once<>(source);
    }

    /** Something that is known. */
    public static <T> Once<T> of(T value) {
        return new Once<>(() -> value);
    }

    @Override
    public synchronized T get() {
        if (value == null) {
            value = Objects.requireNonNull(source.get());
            source = null; // it may hold whole years
        }
        return value;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Once<?> once && get().equals(once.get());
    }

    /** One for all: nothing is worked out only to tell it apart. */
    @Override
    public int hashCode() {
        return 1;
    }

    @Override
    public String toString() {
        return get().toString();
    }
}
