/** What is wrong with the content as a whole, so that nothing can be opened; the message is one line and says what to do. */
export class ContentFault extends Error {
  override readonly name = "ContentFault";
}
