package org.fadeline.ui.help;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TableHead;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.BulletList;
import org.commonmark.node.Code;
import org.commonmark.node.CustomBlock;
import org.commonmark.node.Emphasis;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Heading;
import org.commonmark.node.Link;
import org.commonmark.node.ListItem;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.parser.Parser;
import org.fadeline.ui.control.Labels;

/** Markdown as nodes of the window: headings, paragraphs, lists, tables, code, pictures, links. */
final class MarkdownView {
  private static final Parser PARSER =
      Parser.builder().extensions(List.of(TablesExtension.create())).build();

  private final Function<String, Optional<String>> pictures;
  private final Consumer<String> follow;

  /**
   * Makes a view.
   *
   * @param pictures the address of a picture, by the path in the text
   * @param follow is told the target of a link that is chosen
   */
  MarkdownView(Function<String, Optional<String>> pictures, Consumer<String> follow) {
    this.pictures = pictures;
    this.follow = follow;
  }

  /** Returns a text as one column of nodes. */
  VBox of(String markdown) {
    VBox column = column();
    PARSER.parse(markdown).accept(new Blocks(column));
    return column;
  }

  private static VBox column() {
    VBox column = new VBox();
    column.getStyleClass().add("manual-column");
    return column;
  }

  /** Puts blocks one below the other. */
  private final class Blocks extends AbstractVisitor {
    private final Pane into;

    Blocks(Pane into) {
      this.into = into;
    }

    @Override
    public void visit(Heading heading) {
      TextFlow flow = words(heading);
      flow.getStyleClass().add("manual-heading-" + Math.min(3, heading.getLevel()));
      into.getChildren().add(flow);
    }

    @Override
    public void visit(Paragraph paragraph) {
      if (paragraph.getFirstChild() instanceof org.commonmark.node.Image picture
          && picture.getNext() == null) {
        picture(picture);
      } else {
        into.getChildren().add(words(paragraph));
      }
    }

    private void picture(org.commonmark.node.Image picture) {
      String words =
          picture.getFirstChild() instanceof org.commonmark.node.Text t ? t.getLiteral() : "";
      Optional<String> address = pictures.apply(picture.getDestination());
      if (address.isEmpty()) {
        into.getChildren().add(new Label(words));
        return;
      }
      Image image = new Image(address.get(), true);
      ImageView view = new ImageView(image);
      view.setPreserveRatio(true);
      view.setSmooth(true);
      view.setAccessibleText(words);
      view.setFitWidth(640);
      into.getChildren().add(view);
    }

    @Override
    public void visit(BulletList list) {
      items(list, n -> "•");
    }

    @Override
    public void visit(OrderedList list) {
      int start = list.getMarkerStartNumber() == null ? 1 : list.getMarkerStartNumber();
      items(list, n -> (start + n) + ".");
    }

    private void items(Node list, Function<Integer, String> mark) {
      int n = 0;
      for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
        if (item instanceof ListItem) {
          VBox body = column();
          new Blocks(body).visitChildren(item);
          HBox.setHgrow(body, Priority.ALWAYS);
          Label sign = new Label(mark.apply(n++));
          sign.setMinWidth(22);
          into.getChildren().add(new HBox(sign, body));
        }
      }
    }

    @Override
    public void visit(FencedCodeBlock block) {
      Label code = Labels.line(block.getLiteral().stripTrailing(), "manual-code-block");
      code.setMaxWidth(Double.MAX_VALUE);
      into.getChildren().add(code);
    }

    @Override
    public void visit(CustomBlock block) {
      if (block instanceof TableBlock) {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("manual-table");
        rows(block, grid);
        for (int i = 0; i < grid.getColumnCount(); i++) {
          ColumnConstraints width = new ColumnConstraints();
          width.setHgrow(i == grid.getColumnCount() - 1 ? Priority.ALWAYS : Priority.SOMETIMES);
          grid.getColumnConstraints().add(width);
        }
        into.getChildren().add(grid);
      } else {
        visitChildren(block);
      }
    }

    private void rows(Node part, GridPane grid) {
      for (Node node = part.getFirstChild(); node != null; node = node.getNext()) {
        if (node instanceof TableRow row) {
          row(row, grid, part instanceof TableHead);
        } else {
          rows(node, grid);
        }
      }
    }

    private void row(TableRow row, GridPane grid, boolean head) {
      int at = grid.getRowCount();
      int column = 0;
      for (Node cell = row.getFirstChild(); cell != null; cell = cell.getNext()) {
        if (cell instanceof TableCell) {
          TextFlow flow = words(cell);
          flow.setMinWidth(60);
          flow.getStyleClass().add("manual-cell");
          if (head) {
            flow.getStyleClass().add("manual-cell-head");
          }
          grid.add(flow, column++, at);
        }
      }
    }

    private TextFlow words(Node of) {
      TextFlow flow = new TextFlow();
      new InlineText(flow).visitChildren(of);
      return flow;
    }

    // Opens the protected walk to the helpers above.
    @Override
    protected void visitChildren(Node parent) {
      super.visitChildren(parent);
    }
  }

  /** Puts words one after the other. */
  private final class InlineText extends AbstractVisitor {
    private final TextFlow flow;
    private String style = "manual-text";

    InlineText(TextFlow flow) {
      this.flow = flow;
    }

    private void say(String words, String styleClass) {
      Text text = new Text(words);
      text.getStyleClass().addAll("text", styleClass);
      flow.getChildren().add(text);
    }

    @Override
    public void visit(org.commonmark.node.Text text) {
      say(text.getLiteral(), style);
    }

    @Override
    public void visit(Code code) {
      say(code.getLiteral(), "manual-code");
    }

    @Override
    public void visit(SoftLineBreak line) {
      say(" ", style);
    }

    @Override
    public void visit(HardLineBreak line) {
      say("\n", style);
    }

    @Override
    public void visit(Emphasis part) {
      within("manual-emphasis", part);
    }

    @Override
    public void visit(StrongEmphasis part) {
      within("manual-strong", part);
    }

    private void within(String newStyle, Node part) {
      String before = style;
      style = newStyle;
      visitChildren(part);
      style = before;
    }

    @Override
    public void visit(Link link) {
      StringBuilder words = new StringBuilder();
      link.accept(
          new AbstractVisitor() {
            @Override
            public void visit(org.commonmark.node.Text text) {
              words.append(text.getLiteral());
            }

            @Override
            public void visit(Code code) {
              words.append(code.getLiteral());
            }
          });
      Hyperlink jump = new Hyperlink(words.toString());
      jump.getStyleClass().add("manual-link");
      jump.setOnAction(e -> follow.accept(link.getDestination()));
      flow.getChildren().add(jump);
    }

    @Override
    protected void visitChildren(Node parent) {
      super.visitChildren(parent);
    }
  }
}
