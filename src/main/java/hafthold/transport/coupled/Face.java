package hafthold.transport.coupled;

/** What a slab borders on at one of its two ends. */
public sealed interface Face permits SealedFace, OpenFace, WetFace {}
