/** Thrown when a text is no length. The message names the text and what could be written instead. */
export class UnreadableLengthError extends Error {
  readonly code = 'unreadable-length';
  constructor(
    readonly text: string,
    readonly reason: string,
  ) {
    super(
      `"${text}" is no length (${reason}): write for example 600, 600 mm, 60 cm, 0.75 in, 23 5/8" or 1' 11 5/8"`,
    );
    this.name = 'UnreadableLengthError';
  }
}
