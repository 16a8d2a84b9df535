import type { PreparedPicture } from './prepare-paper.ts';

/** What the worker is started with. */
export interface TypesettingSetup {
  /** Folder of the template, and the only one the typesetter reads from. */
  readonly template: string;
  readonly fontFolders: readonly string[];
}

/** One paper for the worker. */
export interface TypesettingJob {
  readonly json: string;
  readonly timestamp: number;
  readonly pictures: readonly PreparedPicture[];
}

export type TypesettingAnswer =
  | { readonly outcome: 'made'; readonly bytes: Uint8Array }
  | { readonly outcome: 'bad-picture'; readonly field: string }
  | { readonly outcome: 'failed'; readonly diagnostics: readonly string[] };
