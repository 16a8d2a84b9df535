import type { CostDifferenceAnswer } from '@scantling/contracts';
import { decimal } from '@scantling/decimals';
import type { FigureTable } from '@scantling/figures';
import { useLocale } from 'react-aria-components';
import { Waterfall } from '../../components/charts/waterfall.tsx';
import { formatMoney } from '../../lib/format.ts';
import { useFigures } from '../figures/figures-context.ts';
import { CAUSE_WORDS, HOW_SHARED, IN_WHICH_ORDER } from './cause-words.ts';
import { causesBySize } from './causes-by-size.ts';
import { ChangeTable } from './change-table.tsx';
import './cost-difference.css';

interface CostDifferenceProps {
  readonly difference: CostDifferenceAnswer;
  /** The id of one of its figures in the table around it. */
  readonly named?: (id: string) => string;
  /** Heads of the two sides. */
  readonly was: string;
  readonly now: string;
}

const itself = (id: string): string => id;

function hasMoved(table: FigureTable, ids: readonly string[]): boolean {
  return ids.some((id) => !decimal(table[id]?.value ?? '0').isZero());
}

/** Why one cost is another: by cause as a chart, then leaf by leaf with the money it moved. */
export function CostDifference({ difference, named = itself, was, now }: CostDifferenceProps) {
  const { table } = useFigures();
  const { locale } = useLocale();
  const { moved, rounding, currency } = difference;
  const textOf = (id: string): string => table[named(id)]?.value ?? '0';
  const causes = causesBySize(difference.causes, textOf);
  const write = (value: string): string => {
    const written = formatMoney(value, currency, { locale });
    return decimal(value).gt(0) ? `+${written}` : written;
  };
  const isRounded = hasMoved(table, [named(rounding.cost), named(rounding.price)]);
  const steps = [
    ...causes.map(({ cause, effect }) => ({ id: cause, label: CAUSE_WORDS[cause].label, ids: effect })),
    ...(isRounded ? [{ id: 'rounding', label: 'Rounding', ids: rounding }] : []),
    { id: 'all', label: 'Together', ids: moved, isTotal: true },
  ];
  if (causes.length === 0)
    return (
      <p>
        No price, quantity, rate or rule that the cost rests on differs: {was} and {now} are the same.
      </p>
    );
  return (
    <div className="cost-difference">
      <Waterfall
        label="What each cause moves the cost by"
        steps={steps.map(({ ids, ...step }) => ({ ...step, moves: textOf(ids.cost) }))}
        write={write}
        table={{
          heads: ['Cause', 'Cost', 'Net price'],
          rows: steps.map(({ label, ids }) => [label, write(textOf(ids.cost)), write(textOf(ids.price))]),
        }}
      />
      <p className="change-why">{IN_WHICH_ORDER}</p>
      <ChangeTable
        difference={difference}
        causes={causes}
        named={named}
        was={was}
        now={now}
        isRounded={isRounded}
      />
      <p className="change-why">{HOW_SHARED}</p>
    </div>
  );
}
