/** What is wrong with a zip as a whole, so that nothing of it is taken in. */
export class ZipFault extends Error {
  override readonly name = "ZipFault";

  /** @param path the file in the zip that is at fault; empty for the zip as a whole */
  constructor(
    readonly path: string,
    readonly received: string,
    readonly expected: string,
  ) {
    super(`${path || "the zip"}: found ${received}; give ${expected}`);
  }
}
