import type { WorkedCostSheet } from '@scantling/contracts';
import { type Decimal, decimal, roundHalfAway } from '@scantling/decimals';
import { minorUnits } from '@scantling/money';
import { piecesWords } from './class-rows.ts';

type Classes = WorkedCostSheet['columns'][number]['classes'];

/** Classes of cost drawn together, from the bench outwards; profit comes last. */
const GROUPS = [
  {
    id: 'materials',
    label: 'Materials and bought-in',
    of: ['directMaterials', 'boughtIn', 'subcontract', 'consumables'],
  },
  { id: 'labour', label: 'Labour', of: ['directLabour'] },
  { id: 'machines', label: 'Machines', of: ['machines'] },
  { id: 'overhead', label: 'Overhead', of: ['workshopOverhead', 'administrationOverhead'] },
  { id: 'freight', label: 'Freight and contingency', of: ['freight', 'contingency'] },
] as const satisfies readonly { id: string; label: string; of: readonly (keyof Classes)[] }[];

export const COMPOSITION_SERIES = [
  ...GROUPS.map(({ id, label }) => ({ id: String(id), label: String(label) })),
  { id: 'profit', label: 'Profit' },
];

export interface CompositionBar {
  readonly label: string;
  readonly values: Readonly<Record<string, string>>;
}

/** What the net price of one piece is made of, at each quantity, at the currency's places. */
export function composition(worked: WorkedCostSheet): CompositionBar[] {
  const places = minorUnits(worked.currency);
  const amountOf = (id: string): Decimal => decimal(worked.figures[id]?.value ?? '0');
  return worked.columns.map(({ quantity, classes, price }) => {
    const each = (whole: Decimal): string => roundHalfAway(whole.div(quantity), places).toFixed();
    const groups = GROUPS.map(({ id, of }) => {
      const whole = of.reduce((sum, name) => sum.plus(amountOf(classes[name])), decimal('0'));
      return [id, each(whole)] as const;
    });
    return {
      label: piecesWords(quantity),
      values: { ...Object.fromEntries(groups), profit: each(amountOf(price.profit)) },
    };
  });
}
