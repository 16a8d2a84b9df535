/**
 * A bill of materials: what one finished piece of a design is made of and how it is made. Lengths are
 * decimal text in millimetres, times decimal text in hours, shares decimal text from 0 to 1. Ids are the maker's own ("leg", "A3") and
 * unique within their kind.
 */
export interface Bill {
  readonly assemblies: readonly Assembly[];
  readonly parts: readonly Part[];
  readonly components: readonly Component[];
  readonly finishes: readonly FinishStep[];
  readonly consumables: readonly Consumable[];
  readonly operations: readonly Operation[];
}

export interface Assembly {
  readonly id: string;
  readonly name: string;
  /** How many of it are in one finished piece. */
  readonly quantity: number;
}

export const GRAINS = ['length', 'width', 'any'] as const;
/** Which side of the part runs with the grain; "any" may turn. */
export type Grain = (typeof GRAINS)[number];

export const FINISHED_FACES = ['none', 'one-face', 'both-faces', 'all'] as const;
/** "all" is both faces and all four edges. */
export type FinishedFaces = (typeof FINISHED_FACES)[number];

/** One thing cut from a material. */
export interface Part {
  readonly id: string;
  readonly name: string;
  /** Assembly it belongs to; none means the piece itself. */
  readonly assembly?: string;
  /** In one assembly. */
  readonly quantity: number;
  /** Code of a material, or of a family of which the thinnest fitting one is taken. */
  readonly material: string;
  readonly length: string;
  readonly width: string;
  readonly thickness: string;
  readonly grain: Grain;
  /** Added to the finished size for trimming, tenons and mitres; the shop's defaults when absent. */
  readonly lengthAllowance?: string;
  readonly widthAllowance?: string;
  /** Boards glued edge to edge to reach the width; each adds the width allowance once. */
  readonly staves?: number;
  /** Cut as several leaves from thicker stock, where the thickness allows at least two. */
  readonly isResawn?: boolean;
  readonly edgeBand?: EdgeBand;
  readonly veneer?: Veneer;
  readonly facesFinished: FinishedFaces;
  /** Cut beyond the need, once per batch. */
  readonly spares?: number;
  /** Share of the parts cut that turns out unusable. */
  readonly rejectShare?: string;
}

/** A band or lipping: its thickness is taken off the part, its length is bought. */
export interface EdgeBand {
  readonly material: string;
  readonly thickness: string;
  readonly longEdges: 0 | 1 | 2;
  readonly endEdges: 0 | 1 | 2;
}

/** Veneer: its thickness is taken off the core, its area is bought. */
export interface Veneer {
  readonly material: string;
  readonly thickness: string;
  readonly faces: 1 | 2;
}

/** Hardware, a bought-in component or a bought service. */
export interface Component {
  readonly id: string;
  readonly name: string;
  readonly assembly?: string;
  /** In one assembly, in the unit the material is used in (each, m, kg, h). */
  readonly quantity: string;
  readonly material: string;
}

/** One material of the finish schedule. */
export interface FinishStep {
  readonly id: string;
  readonly name: string;
  readonly material: string;
  readonly coats: number;
  /** Share of what is applied that stays on the work (1 for brush and wipe). */
  readonly transferEfficiency: string;
  /** Dry film of one coat in micrometres; without it the material's coverage is used. */
  readonly dryFilmUm?: string;
  /** Litres that stay in pot and gun, once per batch. */
  readonly batchRest?: string;
  /** Ids of the parts it goes on; empty means every part with finished faces. */
  readonly parts: readonly string[];
}

export interface Consumable {
  readonly id: string;
  readonly name: string;
  readonly material: string;
  readonly quantity: string;
  readonly per: 'piece' | 'batch';
}

/** A step of work. */
export interface Operation {
  readonly id: string;
  readonly name: string;
  readonly assembly?: string;
  /** Once per batch. */
  readonly setupHours: string;
  /** For one finished piece, all hands together. */
  readonly runHours: string;
  /**
   * Least and greatest time that is likely, where the run time is a three-point estimate: `runHours` is then the
   * likely one. Both or neither.
   */
  readonly runHoursLow?: string;
  readonly runHoursHigh?: string;
  /** Glue and drying: time that passes without work, once per batch. */
  readonly elapsedHours: string;
  /** Code of the labour grade that does it. */
  readonly grade: string;
  /** Code of the machine that runs, if any. */
  readonly machine?: string;
  /** Machine hours for an hour of work; 1 when absent. */
  readonly machineShare?: string;
  /** Learning rate of the unit model (0.9: the doubled count takes 90 % of the time); none when absent. */
  readonly learningRate?: string;
}

export const EMPTY_BILL: Bill = {
  assemblies: [],
  parts: [],
  components: [],
  finishes: [],
  consumables: [],
  operations: [],
};
