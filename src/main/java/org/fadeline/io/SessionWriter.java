package org.fadeline.io;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.fadeline.model.Session;
import org.jspecify.annotations.Nullable;

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

  private final Session session;
  private final SessionParts parts;

  private SessionWriter(Session session) {
    this.session = session;
    this.parts = new SessionParts(session.occasion().zone(), session.document().unknown());
  }

  /** Returns the session as JSON text with its hash. */
  public static String toJson(Session session) {
    Json.Obj root = new SessionWriter(session).root();
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

  public static String hashOf(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  private Json.Obj root() {
    Json.Obj root =
        Json.Obj.make()
            .put("format", FORMAT)
            .put("version", (long) VERSION)
            .put("id", session.document().id())
            .put("sequence", session.document().sequence())
            .put(HASH, "");
    parts.putOccasion(session.occasion(), root);
    root.put("match", parts.match(session.match()))
        .put("lines", parts.lines(session.lines()))
        .put("events", parts.events(session.events()));
    parts.putOutcome(session.outcome(), root);
    return parts.withUnknown(root, "");
  }

  /** Returns the JSON text of the unknown fields of one event, or null where it has none. */
  static @Nullable String unknownOf(Session session, String eventId) {
    Json.Obj object =
        new SessionWriter(session)
            .parts.withUnknown(Json.Obj.make(), "/events/" + JsonFields.escape(eventId));
    return object.members().isEmpty() ? null : JsonText.compact(object);
  }
}
