package hafthold.source;

/**
 * A choice made for the user that an answer rests on: an estimate, an extrapolation, a default, a caution.
 *
 * @param kind what sort of choice
 * @param subject what it is about, such as a material id or an input name
 * @param message one plain sentence, put into words where a report is written
 */
public record Finding(Kind kind, String subject, Message message) {

    /** Sorts of finding, in the order a report shows them. */
    public enum Kind {
        /** The figure is not measured or published for this thing. */
        ESTIMATE,
        /** The models are used outside the range they are stated for. */
        EXTRAPOLATION,
        /** The user said nothing, so this was taken. */
        DEFAULT,
        /** Something that can hurt, or that the law may forbid. */
        CAUTION
    }
}
