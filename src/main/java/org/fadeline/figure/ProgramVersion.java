package org.fadeline.figure;

/** Which program drew a figure. */
public final class ProgramVersion {
  /** Name and version, such as "Fadeline 0.1.0"; the name alone when run from classes. */
  public static final String NAME = name();

  private ProgramVersion() {}

  private static String name() {
    String version = ProgramVersion.class.getPackage().getImplementationVersion();
    return version == null ? "Fadeline" : "Fadeline " + version;
  }
}
