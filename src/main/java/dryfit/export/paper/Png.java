package dryfit.export.paper;

import java.util.Base64;

/** The bytes of a PNG file (ISO/IEC 15948). */
public final class Png {
  private final byte[] bytes;

  public Png(byte[] bytes) {
    this.bytes = bytes.clone();
  }

  /** The file; a copy. */
  public byte[] bytes() {
    return bytes.clone();
  }

  /** As an address that holds the picture itself (RFC 2397). */
  public String address() {
    return "data:image/png;base64," + Base64.getEncoder().encodeToString(bytes);
  }
}
