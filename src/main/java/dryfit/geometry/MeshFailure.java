package dryfit.geometry;

import java.io.Serial;

/** No closed mesh could be made of what was given. */
public final class MeshFailure extends RuntimeException {
  @Serial private static final long serialVersionUID = 1L;

  public MeshFailure(String message) {
    super(message);
  }
}
