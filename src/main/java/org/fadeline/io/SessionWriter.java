package org.fadeline.io;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.ZoneId;
import java.util.HexFormat;
import org.fadeline.model.Session;

/**
 * Writes session JSON, version 1: keys in a fixed order, one line an event, so that saving without
 * an edit gives the same bytes and a comparison of two versions shows what changed.
 */
public final class SessionWriter {
  /** Value of the field {@code format}. */
  public static final String FORMAT = "fadeline-session";

  /** The version written, and the newest that can be read for editing. */
  public static final int VERSION = 1;

  /** Name of the field that holds the hash. */
  public static final String HASH = "sha256";

  private SessionWriter() {}

  /** Returns the session as JSON text with its hash. */
  public static String toJson(Session session) {
    Json.Obj root = root(session);
    // The hash is taken over the text whose hash is empty; the file then holds it in that place.
    String empty = JsonText.pretty(root.put(HASH, ""));
    return JsonText.pretty(root.put(HASH, hashOf(empty)));
  }

  /** Returns the session as UTF-8 JSON with its hash. */
  public static byte[] toBytes(Session session) {
    return toJson(session).getBytes(StandardCharsets.UTF_8);
  }

  /** Returns the SHA-256 (FIPS 180-4) of the text's UTF-8 bytes, 64 lower-case hex digits. */
  public static String hashOf(String text) {
    return hashOf(text.getBytes(StandardCharsets.UTF_8));
  }

  /** Returns the SHA-256 (FIPS 180-4) of bytes, 64 lower-case hex digits. */
  public static String hashOf(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  private static Json.Obj root(Session session) {
    ZoneId zone = session.occasion().zone();
    UnknownFields unknown = new UnknownFields(session.document().unknown());
    Json.Obj root =
        Json.Obj.make()
            .put("format", FORMAT)
            .put("version", (long) VERSION)
            .put("id", session.document().id())
            .put("sequence", session.document().sequence())
            .put(HASH, "");
    OccasionJson.put(session.occasion(), zone, unknown, root);
    root.put("match", MatchJson.write(session.match(), zone, unknown))
        .put("lines", LineJson.write(session.lines(), unknown))
        .put("events", EventJson.write(session.events(), zone, unknown));
    OutcomeJson.put(session.outcome(), unknown, root);
    return unknown.addTo(root, "");
  }
}
