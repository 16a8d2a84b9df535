/** Thrown when a paper holds a character that no font of the papers has: names the place and the character. */
export class PaperCharacterError extends Error {
  readonly code = 'paper-character';
  readonly reason: string;
  readonly mend = 'Write it with letters, digits and signs of European scripts.';
  constructor(
    /** Path in the paper: "lines.groups.0.lines.2.description". */
    readonly field: string,
    readonly character: string,
  ) {
    const point = character.codePointAt(0)?.toString(16).toUpperCase().padStart(4, '0');
    const reason = `holds "${character}" (U+${point}), which no font of the papers has`;
    super(`${field} ${reason}`);
    this.reason = reason;
    this.name = 'PaperCharacterError';
  }
}

/** Thrown when a picture of a paper is missing or is none: names the place. */
export class PaperPictureError extends Error {
  readonly code = 'paper-picture';
  constructor(
    readonly field: string,
    readonly reason: string,
    readonly mend: string,
  ) {
    super(`${field} ${reason}`);
    this.name = 'PaperPictureError';
  }
}

/** Thrown when a paper cannot be set though its texts and pictures can be used: an error of ours, not of who asked. */
export class PaperNotMadeError extends Error {
  readonly code = 'paper-not-made';
  constructor(
    /** What the typesetter said, without paths of the machine; for the log. */
    readonly diagnostics: readonly string[],
    options?: ErrorOptions,
  ) {
    super(`The paper could not be made: ${diagnostics.join('; ')}`, options);
    this.name = 'PaperNotMadeError';
  }
}

/** Thrown when a paper takes longer than it may; the next one starts afresh. */
export class PaperTooSlowError extends Error {
  readonly code = 'paper-too-slow';
  constructor(readonly milliseconds: number) {
    super(`The paper was not made within ${milliseconds / 1000} s`);
    this.name = 'PaperTooSlowError';
  }
}

/** Thrown when too many papers wait already. */
export class PapersBusyError extends Error {
  readonly code = 'papers-busy';
  constructor(readonly waiting: number) {
    super(`${waiting} papers are waiting to be made`);
    this.name = 'PapersBusyError';
  }
}
