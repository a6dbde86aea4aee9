package dryfit.app;

import dryfit.build.Chair;
import dryfit.document.JigKind;
import dryfit.export.NamedMesh;
import dryfit.export.UnsoundFile;
import dryfit.shop.jig.Jig;
import dryfit.shop.jig.JigMaker;
import dryfit.shop.jig.JigPiece;
import dryfit.shop.jig.JigProof;
import dryfit.solid.Kernel;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Makes jigs, proves each on the finished part, and writes those that hold: every piece as STL, and
 * the jig with all its pieces as 3MF. A jig that is not proved is told and not written.
 */
public final class MakeJigs {
  private final Path folder;
  private final Kernel kernel;

  /**
   * @param folder where the files go; made if it is missing
   */
  public MakeJigs(Path folder, Kernel kernel) {
    this.folder = folder;
    this.kernel = kernel;
  }

  /** What there is to tell, in its order. */
  public sealed interface Told {
    /** A jig is proved; its files come next. */
    record Proved(Jig jig, JigProof proof) implements Told {}

    /** A jig does not hold, and is not written. */
    record NotProved(Jig jig, JigProof proof) implements Told {}

    /** There is no such jig for a joint, and why. */
    record NotMade(String name, String because) implements Told {}

    /** So many of all jigs are done with. */
    record Done(int jigs, int of) implements Told {}

    /** What came of writing a file. */
    record File(WrittenFiles result) implements Told {}
  }

  /**
   * Makes the jigs for a joint and of a kind.
   *
   * @param joint name of a joint, empty for all
   * @param kind empty for all
   * @return how it ended: a jig that does not hold or is not written is a fault
   */
  public Exit make(Chair chair, String joint, Optional<JigKind> kind, Consumer<Told> each) {
    JigMaker maker = new JigMaker(chair, kernel);
    FileNames names = new FileNames();
    Exit[] exit = {Exit.FITS};
    List<JigMaker.Wanted> wanted = maker.wanted(joint, kind);
    int all = maker.count(wanted);
    int[] done = {0};
    each.accept(new Told.Done(0, all));
    maker.make(
        wanted,
        made -> {
          Exit of = tell(chair, made, names, each);
          exit[0] = of == Exit.FITS ? exit[0] : of;
          each.accept(new Told.Done(++done[0], all));
        });
    return exit[0];
  }

  private Exit tell(Chair chair, JigMaker.Made made, FileNames names, Consumer<Told> each) {
    if (made instanceof JigMaker.Made.Without without) {
      each.accept(new Told.NotMade(without.name(), without.because()));
      return Exit.FITS;
    }
    Jig jig = ((JigMaker.Made.Ready) made).jig();
    JigProof proof = JigProof.of(chair, jig);
    if (!proof.holds()) {
      each.accept(new Told.NotProved(jig, proof));
      return Exit.OUR_FAULT;
    }
    each.accept(new Told.Proved(jig, proof));
    Exit exit = Exit.FITS;
    for (JigPiece piece : jig.pieces()) {
      exit =
          write(
              names.next(piece.name()), SolidFormat.STL, List.of(named(piece)), piece.name(), each);
      if (exit != Exit.FITS) {
        return exit;
      }
    }
    List<NamedMesh> pieces = jig.pieces().stream().map(MakeJigs::named).toList();
    return write(FileNames.plain(jig.name()), SolidFormat.THREE_MF, pieces, jig.name(), each);
  }

  private static NamedMesh named(JigPiece piece) {
    return new NamedMesh(piece.name(), piece.mesh());
  }

  private Exit write(
      String name, SolidFormat format, List<NamedMesh> solids, String title, Consumer<Told> each) {
    Path path = folder.resolve(name + "." + format.ending());
    WrittenFiles result;
    try {
      result = new WrittenFiles.Finished<>(format.write(path, solids, title));
    } catch (IOException e) {
      result = WrittenFiles.Failed.of(path, e);
    } catch (UnsoundFile e) {
      result = WrittenFiles.Failed.of(path, e);
    }
    each.accept(new Told.File(result));
    return result.exit();
  }
}
