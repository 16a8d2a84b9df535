import { published, type Source } from '@scantling/figures';

/** A caution with where it comes from. */
export interface Caution {
  readonly text: string;
  readonly source: Source;
}

/** Belongs wherever a finish with a drying oil is wiped on. */
export const OIL_SOAKED_RAGS: Caution = {
  text:
    'Drying oils (linseed, tung and finishes that hold them) heat as they cure: rags left wadded up can catch ' +
    'fire within hours. Spread them out to dry in the open air, or keep them in a covered metal can until they ' +
    'are disposed of safely. Local rules come first.',
  source: published('Harvard Fabrication Lab, safety page on oil-soaked rags, citing NFPA'),
};
