package hafthold.air;

import hafthold.source.Message;

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
    public Message rule() {
        return Message.of("rule.outdoors");
    }

    @Override
    public Message basis() {
        return Message.of("basis.outdoors");
    }

    @Override
    public AirSeries inside(AirSeries outdoor) {
        return outdoor;
    }
}
