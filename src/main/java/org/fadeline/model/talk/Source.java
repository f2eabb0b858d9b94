package org.fadeline.model.talk;

import java.nio.file.Path;

/**
 * A session that a talk shows.
 *
 * @param id short name of it within the talk
 * @param file its file
 */
public record Source(String id, Path file) {}
