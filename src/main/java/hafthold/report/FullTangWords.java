package hafthold.report;

import hafthold.decide.FullTangFit;
import hafthold.knife.FullTangBuild;
import hafthold.knife.Pin;
import hafthold.knife.SizeRange;
import hafthold.quantity.Band;
import hafthold.simulate.FitYear;
import hafthold.simulate.FitYear.BolsterYear;
import hafthold.simulate.FitYear.BowYear;
import hafthold.simulate.FitYear.PinYear;
import hafthold.simulate.FitYear.SideYear;
import hafthold.simulate.HandleYear;
import hafthold.simulate.Settling;
import hafthold.simulate.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What a full-tang knife does, row by row. */
record FullTangWords(LengthUnits units, FullTangFit fit) {
    private static final double SHOWS = 0.005e-3;
    private static final double BOW_SHOWS = 0.02e-3;

    void write(TextColumns rows) {
        FitYear year = fit.year();
        FullTangBuild build = fit.knife().build();
        String glueUp = FitText.state(build.glueUp());
        String made = FitText.state(build.made());
        rows.row(
                "Made",
                (glueUp.equals(made) ? "glued and sanded at " + made : "glued at " + glueUp + ", sanded at " + made)
                        + "; " + AnswerWords.percent(year.whole().moisture().finish()) + " % MC when sanded, "
                        + AnswerWords.moistureRange(year.whole()) + " % there");
        rows.row("Handle", handle(build));
        rows.row("Edges", edges(year));
        if (year.sides().size() > 1) {
            year.sides().forEach(side -> rows.row("- " + side.name(), side(side)));
        }
        if (year.places().size() > 1) {
            rows.row("", "Along the handle: " + places(year) + ".");
        }
        Settling.of(fit.knife(), fit.destination())
                .ifPresent(settling -> rows.row("Timing", SettlingWords.sentence(settling)));
        rows.row("Faces", faces(year));
        year.bolster().ifPresent(bolster -> rows.row("Bolster", bolster(bolster)));
        year.bow().ifPresent(bow -> rows.row("Bow", bow(bow)));
        for (int i = 0; i < year.pins().size(); i++) {
            rows.row("Pin " + (i + 1), pin(build.pins().get(i), year.pins().get(i)));
        }
        rows.row("Glue line", StrengthWords.glue(year));
        rows.row("Scale", StrengthWords.scale(year));
        rows.row("Ends", ends(year.whole()));
        rows.row("Heat", heat(year));
        rows.row("Doubt", DriverWords.row(fit.likelihood(), year.drivers()));
    }

    private String handle(FullTangBuild build) {
        StringBuilder text = new StringBuilder()
                .append(SizeRange.millimetres(build.scales().length()))
                .append(" long, tang ")
                .append(SizeRange.millimetres(build.tang().width()))
                .append(" wide, scales ")
                .append(SizeRange.millimetres(build.scales().thickness()))
                .append(" thick");
        fit.knife()
                .liners()
                .forEach(liner -> text.append(", ").append(liner.name()).append(" liner"));
        return text.append("; ")
                .append(SizeRange.millimetres(build.glue().thickness()))
                .append(" of ")
                .append(fit.knife().adhesive().name())
                .append("; ")
                .append(fit.knife().finish().name())
                .toString();
    }

    private String edges(FitYear year) {
        HandleYear whole = year.whole();
        EdgeStep worst = EdgeStep.worst(whole);
        boolean shy = worst.side() == EdgeStep.Side.SHY;
        Step tangLine = whole.edge().tangLine();
        Band free = shy ? whole.edge().free().shy() : whole.edge().free().proud();
        if (worst.isFlush() && new BenchLength(free).isZero()) {
            return "flush all year: fingers find nothing";
        }
        String text = sized(worst.size()) + " " + worst.side().word() + " in " + MonthWord.of(whole.worstMonth())
                + ", half way up the glued scale; " + length(free) + " if it were not glued. By the tang "
                + length(shy ? tangLine.shy() : tangLine.proud()) + ", at the outer face "
                + length(shy ? year.outerShy() : year.outerProud()) + ".";
        EdgeStep other = EdgeStep.other(whole);
        return other.isFlush()
                ? text
                : text + " At the other end of the year " + sized(other.size()) + " "
                        + other.side().word() + ".";
    }

    private String places(FitYear year) {
        return year.places().stream()
                .map(place -> SizeRange.millimetres(place.along()) + " from the bolster, "
                        + SizeRange.millimetres(place.width()) + " wide: "
                        + either(Band.exact(place.edgeShy()), "shy", Band.exact(place.edgeProud()), "proud", "flush"))
                .collect(Collectors.joining("; "));
    }

    private String side(SideYear side) {
        return AdviceWords.cutWord(side.cut()) + ": " + length(side.edgeShy()) + " shy, " + length(side.edgeProud())
                + " proud; unglued " + length(side.freeShy()) + " and " + length(side.freeProud());
    }

    private String faces(FitYear year) {
        HandleYear whole = year.whole();
        List<String> parts = new ArrayList<>();
        if (!year.pins().isEmpty()) {
            parts.add("pin heads "
                    + either(
                            whole.pins().headProud(),
                            "above the face",
                            whole.pins().headSunk(),
                            "below the face",
                            "flush"));
        }
        parts.add("the face " + either(year.domeHollow(), "hollow", year.domeRound(), "round", "flat"));
        if (shows(year.set())) {
            parts.add("held damp, it loses up to " + length(year.set()) + " a side for good");
        }
        return String.join("; ", parts);
    }

    private String bolster(BolsterYear bolster) {
        Step tang = bolster.againstTang();
        Step scale = bolster.scale();
        return "by heat its edge stands "
                + either(
                        tang.shy(),
                        "below that of the tang",
                        tang.proud(),
                        "above that of the tang",
                        "level with the tang")
                + "; beside it the scale stands "
                + either(scale.shy(), "shy of the bolster", scale.proud(), "proud of the bolster", "flush");
    }

    private String bow(BowYear bow) {
        Band left = bow.hollowLeft();
        Band right = bow.hollowRight();
        if (Math.max(left.value(), right.value()) < BOW_SHOWS) {
            return "none to speak of, although the two scales lie differently";
        }
        boolean rather = left.value() >= right.value();
        Band other = rather ? right : left;
        return "the whole handle bows by " + sized(rather ? left : right) + " over its "
                + SizeRange.millimetres(fit.knife().build().scales().length()) + ", hollow on the "
                + (rather ? "left" : "right") + ", in " + MonthWord.of(bow.month())
                + (other.value() < BOW_SHOWS
                        ? ""
                        : "; the other way by " + length(other) + " at the other end of the year");
    }

    private String pin(Pin pin, PinYear year) {
        List<String> parts = new ArrayList<>();
        parts.add(SizeRange.millimetres(pin.diameter()) + " in " + SizeRange.millimetres(pin.hole())
                + (pin.fill() == Pin.Fill.HARD_EPOXY
                        ? " (hard epoxy: no room)"
                        : pin.fill() == Pin.Fill.FLEXIBLE ? " (filled with something that gives)" : " (open)"));
        parts.add("across " + room(year.gapAcross(), year.squeezeAcross()));
        parts.add("along " + room(year.gapAlong(), year.squeezeAlong()));
        StrengthWords.besidePin(year).ifPresent(parts::add);
        if (year.edgeDistance().metres() < 1.5 * pin.diameter().metres()) {
            parts.add("only " + SizeRange.millimetres(year.edgeDistance()) + " from the edge");
        }
        return String.join("; ", parts);
    }

    private String room(Band gap, Band squeeze) {
        if (!shows(gap) && !shows(squeeze)) {
            return "snug";
        }
        List<String> parts = new ArrayList<>();
        if (shows(squeeze)) {
            parts.add("tight by " + length(squeeze));
        }
        if (shows(gap)) {
            parts.add("gap " + length(gap));
        }
        return String.join(", ", parts);
    }

    private String ends(HandleYear whole) {
        String free =
                "unglued the whole scale would change by " + length(whole.ends().lengthMismatch());
        return either(whole.ends().shortBy(), "short", whole.ends().longBy(), "long", "flush")
                + " at bolster and butt; " + free;
    }

    private static String heat(FitYear year) {
        double margin = year.softeningMarginKelvin().value();
        return String.format(
                Locale.ROOT,
                "hottest air there %.0f °C, %.0f K %s where %s softens or should be used no longer; coldest %.0f °C",
                year.hottestCelsius(),
                Math.abs(margin),
                margin < 0 ? "above" : "below",
                year.softensFirst(),
                year.coldestCelsius());
    }

    private String length(Band band) {
        return new BenchLength(band).hundredths(units);
    }

    /** Value with its range. */
    private String sized(Band band) {
        return length(band) + (band.isExact() ? "" : " (" + new BenchLength(band).hundredthsRange() + ")");
    }

    /** Those of two opposite movements that show, such as "0.14 mm above the face"; the word for none otherwise. */
    private String either(Band one, String oneWord, Band other, String otherWord, String none) {
        List<String> parts = new ArrayList<>();
        if (shows(one)) {
            parts.add(length(one) + " " + oneWord);
        }
        if (shows(other)) {
            parts.add(length(other) + " " + otherWord);
        }
        return parts.isEmpty() ? none : String.join(", ", parts);
    }

    private static boolean shows(Band band) {
        return band.value() > SHOWS;
    }
}
