package hafthold.knife;

/**
 * Under what name the shop keeps its own figures of a material.
 *
 * @param id kebab-case id that other commands take
 * @param name name for people
 * @param basedOn id whose figures fill the gaps; empty where own figures replace those of a material of the tables
 */
public record OwnStock(String id, String name, String basedOn) {
    /** Whether it is a name of the shop's own. */
    public boolean isNew() {
        return !basedOn.isEmpty();
    }
}
