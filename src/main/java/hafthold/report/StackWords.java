package hafthold.report;

import hafthold.decide.StackFit;
import hafthold.knife.SizeRange;
import hafthold.knife.StackTang;
import hafthold.knife.TangStackBuild;
import hafthold.quantity.Band;
import hafthold.quantity.Length;
import hafthold.simulate.StackYear;
import hafthold.simulate.StackYear.PartYear;
import hafthold.source.Evidence;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a stack on a tang does, row by row. */
record StackWords(LengthUnits units, StackFit fit) {
    private static final double SHOWS = 0.005e-3;

    void write(TextColumns rows) {
        StackYear year = fit.year();
        TangStackBuild build = fit.knife().build();
        StackTang tang = build.tang();
        rows.row("Made", "drawn up at " + FitText.state(build.made()));
        rows.row(
                "Handle",
                SizeRange.millimetres(build.length()) + " from guard to nut on a "
                        + tang.kind().word() + " tang of " + SizeRange.millimetres(tang.width()) + " by "
                        + SizeRange.millimetres(tang.thickness()) + "; nut "
                        + (tang.preload().newtons() == 0
                                ? "snug"
                                : Math.round(tang.preload().newtons()) + " N"));
        rows.row("Stack", stack(year));
        for (PartYear part : year.parts()) {
            rows.row("", part(part));
        }
        if (year.parts().stream().anyMatch(StackWords::isEstimate)) {
            rows.row("", "* at least one figure behind it is estimated or not known");
        }
        rows.row("Doubt", DriverWords.row(fit.likelihood(), year.drivers()).replace("the edge", "the length"));
    }

    private String stack(StackYear year) {
        List<PartYear> parts = year.parts();
        StringBuilder text = new StringBuilder();
        if (year.gap().value() > SHOWS) {
            text.append("comes loose by ")
                    .append(sized(year.gap()))
                    .append(", most in ")
                    .append(MonthWord.of(year.gapMonth()));
            if (parts.size() > 1) {
                text.append("; the first joint to open is that of ")
                        .append(parts.get(year.firstJoint()).name())
                        .append(" and ")
                        .append(parts.get(year.firstJoint() + 1).name());
            }
        } else {
            text.append("stays tight all year");
        }
        if (year.growth().value() > SHOWS) {
            text.append("; in the damp it wants to be ")
                    .append(sized(year.growth()))
                    .append(" longer than the steel and presses with up to ")
                    .append(Math.round(year.load().value()))
                    .append(Paragraph.HOLD)
                    .append("N");
        }
        if (year.set().value() > SHOWS) {
            text.append("; that crushes ").append(sized(year.set())).append(" for good");
        }
        return text.toString();
    }

    private String part(PartYear part) {
        String movement = part.shrinks().value() <= SHOWS && part.grows().value() <= SHOWS
                ? "stays"
                : Stream.of(
                                part.shrinks().value() > SHOWS ? "shrinks " + sized(part.shrinks()) : "",
                                part.grows().value() > SHOWS ? "grows " + sized(part.grows()) : "")
                        .filter(text -> !text.isEmpty())
                        .collect(Collectors.joining(", "));
        return SizeRange.millimetres(new Length(part.length())) + " " + part.name() + ": " + movement
                + (isEstimate(part) ? " *" : "");
    }

    private static boolean isEstimate(PartYear part) {
        return part.evidence().compareTo(Evidence.PUBLISHED) > 0;
    }

    private String sized(Band band) {
        BenchLength length = new BenchLength(band);
        return length.hundredths(units) + (band.isExact() ? "" : " (" + length.hundredthsRange() + ")");
    }
}
