package hafthold.material;

import hafthold.source.Evidence;
import hafthold.source.Finding;
import java.util.List;

/** What a scale can be made of: one material, or a hybrid of several side by side. */
public sealed interface ScaleMaterial permits Material, Hybrid {

    /** Kebab-case id. */
    String id();

    /** Name for people. */
    String name();

    /** Family. */
    Family family();

    /** The weakest evidence among the figures that movement rests on. */
    Evidence evidence();

    /** The cut it is usually sold in; {@link Cut#NONE} where cut means nothing. */
    Cut usualCut();

    /** Choices made on the way from tables to model. */
    List<Finding> findings();
}
