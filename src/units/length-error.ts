/** A text that is no length. `reason` is a sentence for the person who typed it. */
export class LengthError extends Error {
  override readonly name = "LengthError";
  readonly text: string;
  readonly reason: string;

  constructor(text: string, reason: string) {
    super(reason);
    this.text = text;
    this.reason = reason;
  }
}
