package hafthold.knife;

import hafthold.material.Finish;

/** A build with its materials in hand: what the engines work on. */
public sealed interface Knife permits FullTangKnife, TangStackKnife {

    /** The build, as its maker wrote it. */
    KnifeBuild build();

    /** Finish on the outside. */
    Finish finish();
}
