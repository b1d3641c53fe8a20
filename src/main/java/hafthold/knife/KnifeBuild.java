package hafthold.knife;

import java.util.Set;

/** One knife handle as the maker describes it. Materials are ids: whether a table has them is checked where it is. */
public sealed interface KnifeBuild permits FullTangBuild, TangStackBuild {

    /** Whom it is for and what it must stand. */
    Order order();

    /** The stock at final sanding: zero of every step and gap. */
    WorkState made();

    /** Finish on the outside, an id of {@code finishes.csv}. */
    String finishId();

    /** Every material id in the build, in the order of the file. */
    Set<String> materialIds();
}
