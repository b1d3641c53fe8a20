package hafthold.air;

/** Sheltered outdoors: under a roof, in the shade, in the wind. */
public record Outdoors() implements Setting {
    /** The only one. */
    public static Outdoors usual() {
        return new Outdoors();
    }

    @Override
    public String id() {
        return "outdoors";
    }

    @Override
    public String name() {
        return "sheltered outdoors";
    }

    @Override
    public String rule() {
        return "The outdoor air as it is, out of rain and sun.";
    }

    @Override
    public String basis() {
        return "the place's climate figures";
    }

    @Override
    public AirSeries inside(AirSeries outdoor) {
        return outdoor;
    }
}
