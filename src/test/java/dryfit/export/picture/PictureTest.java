package dryfit.export.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dryfit.export.TestChair;
import dryfit.geometry.Frame;
import dryfit.geometry.Vec3;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PictureTest {
  private static final int WIDTH = 320;
  private static final int HEIGHT = 240;

  private static Picture plain() {
    return new Picture(Figure.of(TestChair.chair(), List.of()), List.of());
  }

  private static Figure block(String label, double y, String timber) {
    return new Figure(
        TestChair.box(-100, 100, y, y + 50, 0, 200), timber, label, Frame.CHAIR, false);
  }

  private static BufferedImage front(Figure... figures) {
    Picture picture = new Picture(List.of(figures), List.of());
    return picture.draw(picture.camera(View.FRONT, 4.0 / 3), WIDTH, HEIGHT);
  }

  private static int red(int rgb) {
    return rgb >> 16 & 255;
  }

  private static int green(int rgb) {
    return rgb >> 8 & 255;
  }

  private static double darkness(int rgb) {
    return 765 - red(rgb) - green(rgb) - (rgb & 255);
  }

  @ParameterizedTest
  @EnumSource
  void theSameChairGivesTheSameBytes(View view) {
    assertThat(plain().png(view, WIDTH, HEIGHT)).isEqualTo(plain().png(view, WIDTH, HEIGHT));
  }

  @Test
  void itIsAPngOfTheSizeAskedFor() throws IOException {
    byte[] png = plain().png(View.THREE_QUARTER, 300, 200);
    // The PNG signature: W3C Portable Network Graphics Specification, 3rd edition, section 5.2.
    assertThat(png).startsWith(0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A);
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
    assertThat(image.getWidth()).isEqualTo(300);
    assertThat(image.getHeight()).isEqualTo(200);
  }

  @ParameterizedTest
  @EnumSource
  void theWholeChairIsInThePictureAndFillsMostOfIt(View view) {
    Picture picture = plain();
    Camera.Sheet sheet = picture.camera(view, 4.0 / 3).sheet(400, 300);
    double[] x = {400, 0};
    double[] y = {300, 0};
    for (Figure f : Figure.of(TestChair.chair(), List.of())) {
      for (int i = 0; i < f.mesh().pointCount(); i++) {
        Vec3 p = f.mesh().point(i);
        x[0] = Math.min(x[0], sheet.x(p));
        x[1] = Math.max(x[1], sheet.x(p));
        y[0] = Math.min(y[0], sheet.y(p));
        y[1] = Math.max(y[1], sheet.y(p));
      }
    }
    assertThat(x[0]).isGreaterThan(20);
    assertThat(x[1]).isLessThan(380);
    assertThat(y[0]).isGreaterThan(20);
    assertThat(y[1]).isLessThan(280);
    assertThat(Math.max((x[1] - x[0]) / 400, (y[1] - y[0]) / 300)).isGreaterThan(0.8);
  }

  @Test
  void woodInFrontHidesWoodBehind() {
    int alone = front(block("a", 0, "walnut-black")).getRGB(WIDTH / 2, HEIGHT / 2);
    int both =
        front(block("b", 400, "maple-sugar"), block("a", 0, "walnut-black"))
            .getRGB(WIDTH / 2, HEIGHT / 2);
    assertThat(red(both)).isCloseTo(red(alone), org.assertj.core.data.Offset.offset(12));
  }

  @Test
  void linesBehindWoodAreNotDrawn() {
    Figure wall = block("wall", 0, "maple-sugar");
    Figure hidden =
        new Figure(
            TestChair.box(-40, 40, 100, 140, 60, 140), "maple-sugar", "hidden", Frame.CHAIR, false);
    BufferedImage without = front(wall);
    BufferedImage with = front(wall, hidden);
    int changed = 0;
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        changed += with.getRGB(x, y) != without.getRGB(x, y) ? 1 : 0;
      }
    }
    // Only its share of the soft shadow on the floor may differ, and the wall stands before that.
    assertThat(changed).isLessThan(WIDTH * HEIGHT / 20);
    for (int y = HEIGHT / 4; y < HEIGHT / 2; y++) {
      assertThat(with.getRGB(WIDTH / 2, y)).isEqualTo(without.getRGB(WIDTH / 2, y));
    }
  }

  @Test
  void edgesAreInkedDarkerThanTheWood() {
    BufferedImage image = front(block("a", 0, "maple-sugar"));
    double wood = darkness(image.getRGB(WIDTH / 2, HEIGHT / 2));
    double darkest = 0;
    for (int x = 0; x < WIDTH; x++) {
      darkest = Math.max(darkest, darkness(image.getRGB(x, HEIGHT / 2)));
    }
    assertThat(darkest).isGreaterThan(wood + 150);
  }

  @Test
  void theFloorIsDarkerBesideTheFeetThanInTheCorner() {
    Picture picture = plain();
    Camera camera = picture.camera(View.THREE_QUARTER, 4.0 / 3);
    BufferedImage image = picture.draw(camera, WIDTH, HEIGHT);
    Camera.Sheet sheet = camera.sheet(WIDTH, HEIGHT);
    Vec3 under = new Vec3(0, 200, 0);
    double shade = darkness(image.getRGB((int) sheet.x(under), (int) sheet.y(under)));
    double corner = darkness(image.getRGB(2, HEIGHT / 2));
    assertThat(shade).isGreaterThan(corner + 20);
  }

  @Test
  void aMarkIsRingedInRedWhereItIs() {
    Vec3 at = new Vec3(259, 21, 406);
    Picture picture =
        new Picture(Figure.of(TestChair.chair(), List.of()), List.of(new Mark(at, "1")));
    Camera camera = picture.camera(View.THREE_QUARTER, 4.0 / 3);
    BufferedImage image = picture.draw(camera, WIDTH, HEIGHT);
    Camera.Sheet sheet = camera.sheet(WIDTH, HEIGHT);
    int rgb = image.getRGB((int) sheet.x(at), (int) sheet.y(at));
    assertThat(red(rgb)).isGreaterThan(140);
    assertThat(green(rgb)).isLessThan(90);
  }

  @Test
  void aMarkedPartIsRedder() {
    Vec3 middle = new Vec3(0, 7, 406);
    int[] redness = new int[2];
    for (int i = 0; i < 2; i++) {
      List<String> marked = i == 0 ? List.of() : List.of("front-rail");
      Picture picture = new Picture(Figure.of(TestChair.chair(), marked), List.of());
      Camera camera = picture.camera(View.FRONT, 4.0 / 3);
      Camera.Sheet sheet = camera.sheet(WIDTH, HEIGHT);
      int rgb =
          picture.draw(camera, WIDTH, HEIGHT).getRGB((int) sheet.x(middle), (int) sheet.y(middle));
      redness[i] = red(rgb) - green(rgb);
    }
    assertThat(redness[1]).isGreaterThan(redness[0] + 40);
  }

  @Test
  void sizesBeyondReasonAreRefused() {
    Camera camera = plain().camera(View.FRONT, 1);
    assertThatThrownBy(() -> plain().draw(camera, 5000, 100))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> plain().draw(camera, 100, 10))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
