package dryfit.export;

import java.io.Serial;

/** A file was not what it should be, when read back or when read at all. */
public final class UnsoundFile extends RuntimeException {
  @Serial private static final long serialVersionUID = 1L;

  public UnsoundFile(String message) {
    super(message);
  }
}
