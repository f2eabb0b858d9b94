package org.fadeline.io;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A JSON value (RFC 8259) that remembers where it stood, so that every message can name the place.
 * Values made here stand nowhere: line 0.
 */
public sealed interface Json {
  /** Returns the line, from 1, or 0 for a value that was made and not read. */
  int line();

  /** Returns the character in the line, from 1. */
  int column();

  /** Returns what it is, in words for a message. */
  String kindWord();

  /** An object; members in file order. */
  record Obj(int line, int column, Map<String, Json> members) implements Json {
    /** Returns an object without members, to be filled by {@code put}. */
    public static Obj make() {
      return new Obj(0, 0, new LinkedHashMap<>());
    }

    /** Puts a member at the end, or in the place of one of that name. */
    public Obj put(String name, Json value) {
      members.put(name, value);
      return this;
    }

    /** Puts a member, none for null. */
    public Obj put(String name, @Nullable String value) {
      return value == null ? this : put(name, new Text(0, 0, value));
    }

    /** Puts a member, none for null. */
    public Obj put(String name, @Nullable Double value) {
      return value == null ? this : put(name, Num.of(value));
    }

    /** Puts a member, none for null. */
    public Obj put(String name, @Nullable Integer value) {
      return value == null ? this : put(name, Num.of(value.longValue()));
    }

    /** Puts a member. */
    public Obj put(String name, long value) {
      return put(name, Num.of(value));
    }

    /** Puts a member. */
    public Obj put(String name, boolean value) {
      return put(name, new Bool(0, 0, value));
    }

    @Override
    public String kindWord() {
      return "an object";
    }
  }

  /** An array. */
  record Arr(int line, int column, List<Json> items) implements Json {
    /** Returns an array of values. */
    public static Arr of(List<? extends Json> items) {
      return new Arr(0, 0, List.copyOf(items));
    }

    @Override
    public String kindWord() {
      return "a list";
    }
  }

  /** A string. */
  record Text(int line, int column, String value) implements Json {
    @Override
    public String kindWord() {
      return "the text " + Shown.value(value);
    }
  }

  /** A number, as it was written. */
  record Num(int line, int column, String digits) implements Json {
    /** Returns a whole number. */
    public static Num of(long value) {
      return new Num(0, 0, Long.toString(value));
    }

    /** Returns a finite number, without decimals where it is whole. */
    public static Num of(double value) {
      boolean whole = value == Math.rint(value) && Math.abs(value) < 1e15;
      return new Num(0, 0, whole ? Long.toString((long) value) : Double.toString(value));
    }

    @Override
    public String kindWord() {
      return "the number " + digits;
    }
  }

  /** True or false. */
  record Bool(int line, int column, boolean value) implements Json {
    @Override
    public String kindWord() {
      return Boolean.toString(value);
    }
  }

  /** Null. */
  record Null(int line, int column) implements Json {
    @Override
    public String kindWord() {
      return "null";
    }
  }
}
