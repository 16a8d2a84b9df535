import { decimal } from '@scantling/decimals';
import { type FigureNode, type FigureTable, Recalculation } from '@scantling/figures';
import type { LengthSystem } from '@scantling/units';
import type { FieldMessage } from '../../../components/field.tsx';
import { fromPercent, plainDecimal } from '../../../lib/percent.ts';
import { leafWords } from '../../figures/leaf-text.ts';
import { estimatesIn } from './estimate-words.ts';
import { inputGroups } from './input-groups.ts';
import type { SolveSearch } from './question-search.ts';
import type { AskedSheet } from './use-asked-sheet.ts';

/** The margin that the price as it stands leaves while the cost moves; asked of the cost. */
export const HELD = 'heldMargin';

export interface InputChoice {
  readonly id: string;
  readonly label: string;
  readonly note: string;
}

/** The inputs that a result rests on, as they are found by typing, in the order in which sheets list them. */
export function inputChoices(
  table: FigureTable,
  result: string,
  { system, locale }: { readonly system: LengthSystem; readonly locale: string },
): InputChoice[] {
  const sheet = new Recalculation(table);
  const places = sheet.basis([sheet.table.place(result)]);
  const basis = new Set([...places].map((place) => sheet.table.figures[place]?.node.id));
  return inputGroups(table).flatMap(({ title, leaves }) =>
    leaves
      .filter(({ id }) => basis.has(id))
      .map((leaf) => ({
        id: leaf.id,
        label: leaf.label,
        note: `${leafWords(leaf, leaf.value, system, locale)} now; ${title}`,
      })),
  );
}

export type ReadTarget = { readonly value: string } | { readonly problem: FieldMessage };

/** The result wanted, as typed: a share in percent where it is one. */
export function readTarget(typed: string, isShare: boolean): ReadTarget {
  const text = typed.trim().replace(/\s*%$/, '');
  const value = isShare ? fromPercent(text) : plainDecimal(text);
  if (/^-?\d{1,12}(\.\d{1,12})?$/.test(value)) return { value };
  return {
    problem: { message: `cannot be “${typed.trim()}”`, mend: 'Write a number, such as 1250 or 12.5.' },
  };
}

/** The cost at which the price as it stands leaves a margin. */
export function costForMargin(price: string, margin: string): string {
  return decimal(price).times(decimal(1).minus(margin)).toFixed();
}

export interface ReadyQuestion {
  readonly words: string;
  readonly search: SolveSearch;
}

function greatest(leaves: readonly FigureNode[]): FigureNode | undefined {
  return leaves.toSorted((a, b) => decimal(b.value).cmp(a.value))[0];
}

/** Questions people ask of a price, ready to be asked of this sheet. */
export function readyQuestions({ worked, column }: AskedSheet): ReadyQuestion[] {
  const leaves = Object.values(worked.figures);
  const pieces = String(column.quantity);
  const held = { result: HELD, pieces, target: '0' } as const;
  const estimated = new Set(estimatesIn(worked.figures).map(({ likely }) => likely.id));
  const longest = greatest(
    leaves.filter(({ id }) => /^bill\/operation .+\/run$/.test(id) && !estimated.has(id)),
  );
  const freight = leaves.find(({ id }) => id === 'terms/freight');
  const pay = leaves.find(({ id }) => /^labour\/.+\/pay-per-hour$/.test(id));
  return [
    ...(longest === undefined
      ? []
      : [
          {
            words: `How long may “${longest.label}” take before the price as it stands leaves nothing?`,
            search: { ...held, input: longest.id },
          },
        ]),
    ...(pay === undefined
      ? []
      : [
          {
            words: `What may “${pay.label}” be for the price as it stands to leave 10 %?`,
            search: { ...held, input: pay.id, target: '10' },
          },
        ]),
    ...(freight === undefined
      ? []
      : [
          {
            words: 'What may freight cost before nothing is left?',
            search: { ...held, input: freight.id },
          },
        ]),
  ];
}
