import { decimal } from '@scantling/decimals';
import {
  type Figure,
  type Input,
  type LeafReplacement,
  LeafReplacer,
  NoAnswerError,
  undatedKey,
} from '@scantling/figures';
import { unitWords } from '@scantling/units';
import { CostingInputError } from '../input-error.ts';
import type { OwnValue } from './cost-sheet-input.ts';
import { leafEntry } from './leaf-entry.ts';
import type { SheetNotice } from './notices/index.ts';

function written({ value, unit, currency, how }: Figure & { readonly how: Input }): string {
  if (leafEntry({ id: how.key, unit, source: how.source })?.as === 'share')
    return `${value.times(100).toFixed()} %`;
  return [value.toFixed(), currency, unit === 'money' ? '' : unitWords(unit)].filter(Boolean).join(' ');
}

function replacementOf({ value, by, on }: OwnValue): LeafReplacement {
  return {
    value,
    source: (leaf: Figure & { readonly how: Input }) => {
      const { text, record } = leaf.how.source;
      return {
        kind: 'own-value',
        text: `entered by ${by} on ${on} for this cost sheet, instead of ${written(leaf)} from ${text}`,
        ...(record === undefined ? {} : { record }),
      };
    },
  };
}

/** Puts a sheet's own values into its figures, and knows which of them found no leaf any more. */
export class OwnValues {
  readonly #values: readonly OwnValue[];
  readonly #replacer: LeafReplacer;

  constructor(values: readonly OwnValue[]) {
    this.#values = values;
    this.#replacer = new LeafReplacer(
      Object.fromEntries(values.map((own) => [own.leaf, replacementOf(own)])),
    );
  }

  /** Every figure of a structure. @throws CostingInputError where the own values leave no answer */
  within<T>(structure: T): T {
    try {
      return this.#replacer.within(structure);
    } catch (error) {
      if (!(error instanceof NoAnswerError)) throw error;
      throw new CostingInputError(
        'ownValues',
        `leave no answer (${error.reason}): ${this.#values.map(({ label }) => label).join(', ')}`,
        'take back one of the own values of this sheet',
      );
    }
  }

  /** Those whose leaf the sheet does not have any more, once all of it was gone through. */
  gone(quantities: readonly number[]): SheetNotice[] {
    return this.#values
      .filter(({ leaf }) => !this.#replacer.met.has(undatedKey(leaf)))
      .map(({ leaf, label, value }) => ({
        kind: 'own-value-gone',
        weight: 'warning',
        about: label,
        message: `the own value ${decimal(value).toFixed()} for "${label}" changes nothing: the sheet does not rest on it any more`,
        mend: 'take it back under "Own values", or enter it where it belongs now',
        record: `own-value:${leaf}`,
        quantities,
      }));
  }
}
