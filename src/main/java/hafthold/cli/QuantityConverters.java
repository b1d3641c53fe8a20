package hafthold.cli;

import hafthold.material.Cut;
import hafthold.quantity.Length;
import hafthold.quantity.MoistureContent;
import hafthold.quantity.QuantityFormatException;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import hafthold.quantity.VapourPressure;
import hafthold.report.LengthUnits;
import java.util.Arrays;
import java.util.function.Function;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Teaches the command line to read quantities with their units. */
final class QuantityConverters {
    private QuantityConverters() {}

    /** Registers all converters. */
    static void register(CommandLine commandLine) {
        commandLine.registerConverter(Length.class, reading(Length::parse));
        commandLine.registerConverter(Temperature.class, reading(Temperature::parse));
        commandLine.registerConverter(RelativeHumidity.class, reading(RelativeHumidity::parse));
        commandLine.registerConverter(MoistureContent.class, reading(MoistureContent::parse));
        commandLine.registerConverter(VapourPressure.class, reading(VapourPressure::parse));
        commandLine.registerConverter(LengthUnits.class, QuantityConverters::units);
        commandLine.registerConverter(Cut.class, QuantityConverters::cut);
    }

    private static <T> ITypeConverter<T> reading(Function<String, T> parse) {
        return typed -> {
            try {
                return parse.apply(typed);
            } catch (QuantityFormatException e) {
                throw new TypeConversionException(e.getMessage());
            }
        };
    }

    /** Reads units; inch, as both were called before, is still understood. */
    private static LengthUnits units(String typed) {
        if (typed.equalsIgnoreCase("inch")) {
            return LengthUnits.BOTH;
        }
        return Arrays.stream(LengthUnits.values())
                .filter(units -> units.name().equalsIgnoreCase(typed))
                .findFirst()
                .orElseThrow(() -> new TypeConversionException(
                        "'" + typed + "' are no units of movements; expected mm, thou or both"));
    }

    private static Cut cut(String typed) {
        return Cut.ofWord(typed)
                .orElseThrow(() -> new TypeConversionException("'" + typed + "' is no cut; expected one of "
                        + Arrays.stream(Cut.values()).map(Cut::word).collect(Collectors.joining(", "))));
    }
}
