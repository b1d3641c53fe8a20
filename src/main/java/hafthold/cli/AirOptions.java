package hafthold.cli;

import hafthold.air.AirConditionedHome;
import hafthold.air.HeatedHome;
import hafthold.air.IndoorMoistureExcess;
import hafthold.air.Setting;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.VapourPressure;
import hafthold.simulate.Destination;
import hafthold.source.Finding;
import hafthold.source.Message;
import hafthold.table.HourlyFile;
import hafthold.table.HourlyReading;
import hafthold.table.KnifeFile;
import hafthold.table.PlaceTable;
import hafthold.table.StaysFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import picocli.CommandLine.Option;

/** How recorded air is read, and what a home has to keep its air from being as dry or damp as the rule says. */
final class AirOptions {
    /** Humidity of a recorded file is taken to be off by no more than a cheap logger is (assumed). */
    static final double FILE_HUMIDITY_DOUBT = 0.03;

    @Option(
            names = "--allow-gaps",
            description = "draw a straight line over gaps of recorded air longer than 6 hours, up to 30 days")
    private boolean allowGaps;

    @Option(
            names = "--humidifier",
            paramLabel = "HUMIDITY",
            description = "humidity that a humidifier holds at least, such as \"40 %%\" (default: none)")
    private RelativeHumidity humidifier;

    @Option(
            names = "--air-conditioning",
            paramLabel = "HUMIDITY",
            description = "humidity that air conditioning holds at most; goes with --setting air-conditioned"
                    + " (default: 55 %%)")
    private RelativeHumidity cap;

    @Option(
            names = "--indoor-vapour",
            paramLabel = "PRESSURE",
            description = "vapour that living adds to a home in frost; humidity classes 2, 3, 4 are 540, 810, 1080 Pa"
                    + " (default: 270 Pa, half of class 2)")
    private VapourPressure frost;

    @Option(
            names = "--indoor-vapour-summer",
            paramLabel = "PRESSURE",
            description = "the same at 20 C outdoors (default: 50 Pa; with --indoor-vapour the same share of it)")
    private VapourPressure summer;

    @Option(
            names = "--stays",
            paramLabel = "FILE",
            description = "instead of a place, a table of stays with the day each begins, the first being that of final"
                    + " sanding; 'hafthold trace --stays-example' prints one")
    private Path stays;

    private final List<Finding> findings = new ArrayList<>();

    /** How much recorded air may lack. */
    HourlyReading reading() {
        return HourlyReading.wholeYear(allowGaps);
    }

    /** Says that recorded air was taken as outdoor air where nobody said what it is. */
    void takenAsOutdoors(Path file) {
        findings.add(new Finding(
                Finding.Kind.DEFAULT,
                "--climate",
                Message.of(
                        "note.taken-as-outdoors",
                        Map.of("file", Message.verbatim(String.valueOf(file.getFileName()))))));
    }

    /** Reads recorded air and keeps what is to be said of it. */
    HourlyFile recorded(Path file) {
        HourlyFile air = KnifeFile.hourly(file, reading());
        findings.addAll(air.findings());
        return air;
    }

    /** The table of stays, where one was named. */
    Optional<Path> stays() {
        return Optional.ofNullable(stays);
    }

    /** The last of several stays, where a table of them was named. */
    Optional<Destination> stays(PlaceTable places, boolean elsewhere) {
        if (stays == null) {
            return Optional.empty();
        }
        if (elsewhere || humidifier != null || cap != null || frost != null || summer != null) {
            throw new WrongUsageException("--stays says where the knife goes and lives: leave out --place, --climate,"
                    + " --setting and what belongs to a home");
        }
        StaysFile file = StaysFile.read(stays, places, FILE_HUMIDITY_DOUBT, allowGaps);
        findings.addAll(file.findings());
        file.chain().stays().stream()
                .map(stay -> stay.setting().finding())
                .distinct()
                .forEach(findings::add);
        findings.add(new Finding(Finding.Kind.DEFAULT, "stays", Message.of("note.stays")));
        return Optional.of(Destination.through(file.chain()));
    }

    /** What was done to recorded air besides reading it. */
    List<Finding> findings() {
        return List.copyOf(findings);
    }

    /** The setting with what the home has. */
    Setting fitted(Setting setting) {
        Setting fitted = setting;
        try {
            if (frost != null || summer != null) {
                IndoorMoistureExcess excess = excess();
                fitted = home("--indoor-vapour", fitted, home -> home.livedIn(excess));
            }
            if (cap != null) {
                if (!(fitted instanceof AirConditionedHome cooled)) {
                    throw new WrongUsageException(
                            "--air-conditioning goes with --setting air-conditioned, not with " + setting.id());
                }
                fitted = cooled.capped(cap.fraction());
            }
            if (humidifier != null) {
                fitted = home("--humidifier", fitted, home -> home.humidified(humidifier.fraction()));
            }
        } catch (IllegalArgumentException e) {
            throw new WrongUsageException(e.getMessage());
        }
        return fitted;
    }

    private IndoorMoistureExcess excess() {
        IndoorMoistureExcess usual = IndoorMoistureExcess.typicalHome();
        double inFrost = frost == null ? usual.frostPascals() : frost.pascals();
        double inSummer = summer == null ? inFrost * usual.summerPascals() / usual.frostPascals() : summer.pascals();
        return new IndoorMoistureExcess(inFrost, inSummer);
    }

    private static Setting home(String option, Setting setting, UnaryOperator<HeatedHome> change) {
        return setting.inHome(change)
                .orElseThrow(() -> new WrongUsageException(
                        option + " goes with a home, kitchen, sheath or display case, not with " + setting.id()));
    }
}
