package org.fadeline.io.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * A disk that forgets. Writes live in a cache until the file is forced, names until the folder is
 * forced; a crash keeps of them what its mode says. It can also be made to stop dead at a chosen
 * operation. Stricter than most file systems: forcing a file does not force its name.
 */
final class SimulatedDisk implements Storage {
  /** What a crash leaves of what was not forced. */
  enum Leaves {
    /** Nothing. */
    NONE,
    /** Everything. */
    ALL,
    /** The first so many operations of each file and folder. */
    PREFIX,
    /** As prefix, the last write cut in the middle. */
    TORN,
    /** Any of the operations, the others not. */
    REORDERED
  }

  /** The machine has stopped. */
  static final class Crash extends RuntimeException {
    Crash() {
      super("the machine has stopped", null, false, false);
    }
  }

  /** One write or cut of a file. */
  private static final class Write {
    final long at;
    final byte @Nullable [] bytes;

    Write(long at, byte @Nullable [] bytes) {
      this.at = at;
      this.bytes = bytes;
    }
  }

  private static final class Node {
    byte[] forced = new byte[0];
    final List<Write> cached = new ArrayList<>();

    byte[] now() {
      byte[] content = forced;
      for (Write write : cached) {
        content = applied(content, write);
      }
      return content;
    }
  }

  /** A name put (node) or taken away (null). */
  private record Naming(Path name, @Nullable Node node) {}

  private final Map<Path, Node> forcedNames = new TreeMap<>();
  private final List<List<Naming>> cachedNames = new ArrayList<>();
  private final Map<Path, Node> names = new TreeMap<>();
  private int operations;
  private int stopAt = Integer.MAX_VALUE;
  private boolean lastReached;
  private boolean stopped;

  /**
   * Stops at the operation with this number, from 0.
   *
   * @param reached whether that operation still got to the cache
   */
  void stopAt(int operation, boolean reached) {
    stopAt = operation;
    lastReached = reached;
  }

  int operations() {
    return operations;
  }

  boolean isStopped() {
    return stopped;
  }

  private void operation(Runnable effect) {
    alive();
    boolean last = operations++ == stopAt;
    if (!last) {
      effect.run();
      return;
    }
    if (lastReached) {
      effect.run();
    }
    stopped = true;
    throw new Crash();
  }

  private void alive() {
    if (stopped) {
      throw new Crash();
    }
  }

  /** Returns the disk as the next start finds it. */
  SimulatedDisk afterCrash(Leaves leaves, long seed) {
    Random random = new Random(seed);
    SimulatedDisk next = new SimulatedDisk();
    Map<Path, Node> kept = new TreeMap<>(forcedNames);
    for (List<Naming> together : chosen(cachedNames, leaves, random)) {
      for (Naming naming : together) {
        rename(kept, naming);
      }
    }
    kept.forEach(
        (name, node) -> {
          Node copy = new Node();
          copy.forced = contentAfter(node, leaves, random);
          next.names.put(name, copy);
          next.forcedNames.put(name, copy);
        });
    return next;
  }

  private static <T> List<T> chosen(List<T> all, Leaves leaves, Random random) {
    return switch (leaves) {
      case NONE -> List.of();
      case ALL -> all;
      case PREFIX, TORN -> all.subList(0, random.nextInt(all.size() + 1));
      case REORDERED -> all.stream().filter(w -> random.nextBoolean()).toList();
    };
  }

  private static byte[] contentAfter(Node node, Leaves leaves, Random random) {
    List<Write> chosen = chosen(node.cached, leaves, random);
    byte[] content = node.forced;
    for (int i = 0; i < chosen.size(); i++) {
      Write write = chosen.get(i);
      byte[] bytes = write.bytes;
      if (leaves == Leaves.TORN && i == chosen.size() - 1 && bytes != null && bytes.length > 0) {
        write = new Write(write.at, Arrays.copyOf(bytes, random.nextInt(bytes.length)));
      }
      content = applied(content, write);
    }
    return content;
  }

  /** A write beyond the end leaves zeros between, as a real disk does. */
  private static byte[] applied(byte[] content, Write write) {
    byte[] bytes = write.bytes;
    if (bytes == null) {
      return Arrays.copyOf(content, (int) write.at);
    }
    int end = (int) write.at + bytes.length;
    byte[] after = Arrays.copyOf(content, Math.max(content.length, end));
    System.arraycopy(bytes, 0, after, (int) write.at, bytes.length);
    return after;
  }

  private static void rename(Map<Path, Node> names, Naming naming) {
    if (naming.node == null) {
      names.remove(naming.name);
    } else {
      names.put(naming.name, naming.node);
    }
  }

  private void name(Naming... together) {
    for (Naming naming : together) {
      rename(names, naming);
    }
    cachedNames.add(List.of(together));
  }

  Map<Path, byte[]> files() {
    Map<Path, byte[]> files = new HashMap<>();
    names.forEach((name, node) -> files.put(name, node.now()));
    return files;
  }

  void put(Path file, byte[] content) {
    Node node = new Node();
    node.forced = content;
    names.put(file, node);
    forcedNames.put(file, node);
  }

  @Override
  public Path resolve(Path file) {
    return file;
  }

  @Override
  public boolean isWritable(Path folder) {
    return true;
  }

  @Override
  public byte @Nullable [] read(Path file) {
    alive();
    Node node = names.get(file);
    return node == null ? null : node.now();
  }

  @Override
  public byte[] read(Path file, long offset, int length) throws IOException {
    byte[] all = read(file);
    if (all == null || offset + length > all.length) {
      throw new IOException("the file is shorter than it was");
    }
    return Arrays.copyOfRange(all, (int) offset, (int) offset + length);
  }

  @Override
  public Out create(Path file) {
    operation(
        () -> {
          Node there = names.get(file);
          if (there == null) {
            name(new Naming(file, new Node()));
          } else {
            there.cached.add(new Write(0, null));
          }
        });
    return new NodeOut(node(file));
  }

  private Node node(Path file) {
    Node node = names.get(file);
    if (node == null) {
      throw new IllegalStateException("no file " + file);
    }
    return node;
  }

  @Override
  public Out append(Path file) throws IOException {
    alive();
    if (!names.containsKey(file)) {
      throw new IOException("no file " + file);
    }
    return new NodeOut(node(file));
  }

  @Override
  public void moveAtomically(Path from, Path to) {
    operation(() -> name(new Naming(to, node(from)), new Naming(from, null)));
  }

  @Override
  public void delete(Path file) {
    if (names.containsKey(file)) {
      operation(() -> name(new Naming(file, null)));
    }
  }

  @Override
  public List<Path> list(Path folder) {
    alive();
    return names.keySet().stream().filter(f -> folder.equals(f.getParent())).toList();
  }

  @Override
  public void createFolder(Path folder) {
    alive();
  }

  @Override
  public void forceFolder(Path folder) {
    operation(
        () -> {
          List<List<Naming>> waiting = new ArrayList<>();
          for (List<Naming> together : cachedNames) {
            if (folder.equals(together.get(0).name.getParent())) {
              together.forEach(naming -> rename(forcedNames, naming));
            } else {
              waiting.add(together);
            }
          }
          cachedNames.clear();
          cachedNames.addAll(waiting);
        });
  }

  @Override
  public Lock lock(Path file) {
    return () -> {};
  }

  private final class NodeOut implements Out {
    private final Node node;

    NodeOut(Node node) {
      this.node = node;
    }

    @Override
    public void write(byte[] bytes) {
      operation(() -> node.cached.add(new Write(node.now().length, bytes.clone())));
    }

    @Override
    public void truncate(long length) {
      operation(() -> node.cached.add(new Write(length, null)));
    }

    @Override
    public void force(boolean metadata) {
      operation(
          () -> {
            node.forced = node.now();
            node.cached.clear();
          });
    }

    @Override
    public void close() {}
  }
}
