package org.fadeline.ui;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.fadeline.ui.control.file.PathChooser;
import org.jspecify.annotations.Nullable;

/** Answers in the user's stead which file or folder is meant, and keeps what was asked. */
public final class FakePaths implements PathChooser {
  private final List<Question> asked = new ArrayList<>();
  private @Nullable Path answer;

  /** Answers every later question with a path, or with none: the user gives up. */
  public void answer(@Nullable Path path) {
    answer = path;
  }

  /** Returns what was asked so far. */
  public List<Question> asked() {
    return List.copyOf(asked);
  }

  /** Returns what was asked last. */
  public Question last() {
    return asked.get(asked.size() - 1);
  }

  @Override
  public @Nullable Path open(Question question) {
    asked.add(question);
    return answer;
  }

  @Override
  public @Nullable Path save(Question question) {
    return open(question);
  }

  @Override
  public @Nullable Path folder(Question question) {
    return open(question);
  }
}
