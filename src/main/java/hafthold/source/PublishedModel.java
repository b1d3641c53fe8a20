package hafthold.source;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Marks a class that computes a published equation; tests resolve the key against {@code sources.csv}. */
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
public @interface PublishedModel {
    /** Key of the row in {@code sources.csv}. */
    String source();

    /** Equation, table, chapter or page inside the source. */
    String locator();

    /** Range of inputs the source states, in words. */
    String validity();
}
