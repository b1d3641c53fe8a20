package hafthold.cli;

import picocli.CommandLine.IVersionProvider;

/** The version of the build, from the jar's manifest. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
        String version = Version.class.getPackage().getImplementationVersion();
        return new String[] {"hafthold " + (version == null ? "(not packaged)" : version)};
    }
}
