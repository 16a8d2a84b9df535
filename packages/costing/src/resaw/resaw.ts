import type { DecimalLike } from '@scantling/decimals';
import {
  constant,
  derive,
  difference,
  entered,
  type Figure,
  NoAnswerError,
  roundDown,
  sum,
} from '@scantling/figures';
import { type CostingContext, LeafReader } from '../leaf-reader.ts';

/** Thick stock sawn into leaves. All in mm. */
export interface Resawing {
  /** Thickness of the stock as bought. */
  readonly roughThickness: DecimalLike;
  /** Taken off both outer faces together before the first cut. */
  readonly cleanUp: DecimalLike;
  /** Width of the cut, with the re-jointing pass after it. */
  readonly kerf: DecimalLike;
  /** Thickness of a leaf when finished. */
  readonly finishedThickness: DecimalLike;
  /** Planed off both faces of a leaf together. */
  readonly planing: DecimalLike;
}

export interface ResawnLeaves {
  /** Finished thickness + planing of both faces. */
  readonly sawnLeaf: Figure<'mm'>;
  readonly leaves: Figure<'each'>;
  /** The thickest leaf, as sawn, that so many cuts would still give. */
  readonly thickestSawnLeaf: Figure<'mm'>;
  /** Stock left over after the last leaf. */
  readonly rest: Figure<'mm'>;
}

const ONE_LEAF = constant('one leaf', 'each', 1);

/**
 * n = floor((rough - clean-up + kerf) / (sawn leaf + kerf)); n leaves need n - 1 cuts.
 * @throws CostingInputError naming the field; NoAnswerError where fewer than two leaves come out
 */
export function resaw(stock: Resawing, context: CostingContext): ResawnLeaves {
  const reader = new LeafReader({
    keyPrefix: context.keyPrefix ?? 'resaw',
    currency: context.currency,
    source: context.source ?? entered(),
    subject: '',
  });
  const mm = (field: keyof Resawing, label: string, bounds: { above: number } | { from: number }) =>
    reader.read(field, stock[field], { label, unit: 'mm', ...bounds });
  const rough = mm('roughThickness', 'rough thickness', { above: 0 });
  const cleanUp = mm('cleanUp', 'clean-up of both outer faces', { from: 0 });
  const kerf = mm('kerf', 'kerf with re-jointing', { from: 0 });
  const finished = mm('finishedThickness', 'finished leaf', { above: 0 });
  const planing = mm('planing', 'planing of both faces of a leaf', { from: 0 });
  const sawnLeaf = sum('sawn leaf', 'mm', [finished, planing]);
  const clean = difference('stock after clean-up', rough, cleanUp);
  const pitch = sum('sawn leaf and kerf', 'mm', [sawnLeaf, kerf]);
  const available = sum('stock after clean-up, and the kerf the last leaf does not need', 'mm', [
    clean,
    kerf,
  ]);
  const fitting = derive('leaves that fit', 'each', 'quotient', [available, pitch]);
  const leaves = roundDown('leaves', fitting, ONE_LEAF);
  if (leaves.value.lt(2)) {
    const least = sawnLeaf.value.times(2).plus(kerf.value).plus(cleanUp.value);
    throw new NoAnswerError(
      `roughThickness: ${rough.value} mm stock gives no two leaves of ${sawnLeaf.value} mm, which need ` +
        `${least} mm; use thicker stock or a thinner leaf, or do not resaw it`,
    );
  }
  const cuts = difference('cuts', leaves, ONE_LEAF);
  const sawdust = derive('kerfs', 'mm', 'product', [kerf, cuts]);
  const wood = difference('stock left for leaves', clean, sawdust);
  return {
    sawnLeaf,
    leaves,
    thickestSawnLeaf: derive('thickest sawn leaf', 'mm', 'quotient', [wood, leaves]),
    rest: difference(
      'rest after the last leaf',
      wood,
      derive('all leaves', 'mm', 'product', [sawnLeaf, leaves]),
    ),
  };
}
