package dryfit.fit.order;

/** Someone who waits for an order of assembly. */
public interface Onlooker {
  /** Nobody waits. */
  Onlooker NONE =
      new Onlooker() {
        @Override
        public void settled(int parts) {}

        @Override
        public void now(String doing) {}
      };

  /** Of so many parts it is known how they come in; told whenever it is more. */
  void settled(int parts);

  /**
   * What takes time now.
   *
   * @param doing a few words without a full stop, such as {@code finding what locks}
   */
  void now(String doing);
}
