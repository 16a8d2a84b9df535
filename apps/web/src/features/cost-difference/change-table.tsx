import type { CostDifferenceAnswer } from '@scantling/contracts';
import { FigureValue } from '../figures/figure-value.tsx';
import { mergedId } from '../figures/merge-tables.ts';
import { CAUSE_WORDS } from './cause-words.ts';
import { type CostChange, LEAVES_NOW, LEAVES_WAS } from './difference-tables.ts';

interface ChangeTableProps {
  readonly difference: CostDifferenceAnswer;
  readonly named: (id: string) => string;
  readonly was: string;
  readonly now: string;
  readonly isRounded: boolean;
}

type Effect = CostDifferenceAnswer['moved'];

function EffectCells({ effect, named, isTotal = false }: EffectCellsProps) {
  return (['cost', 'price'] as const).map((total) => (
    <td key={total} className="numeric">
      <FigureValue id={named(effect[total])} look={isTotal ? 'total' : 'plain'} />
    </td>
  ));
}

interface EffectCellsProps {
  readonly effect: Effect;
  readonly named: (id: string) => string;
  readonly isTotal?: boolean;
}

function ChangeRow({
  change,
  named,
}: {
  readonly change: CostChange;
  readonly named: EffectCellsProps['named'];
}) {
  return (
    <tr>
      <th scope="row">
        {change.label}
        {change.why !== '' && <span className="change-why">{change.why}</span>}
      </th>
      <td className="numeric">
        {change.was !== null && <FigureValue id={mergedId(LEAVES_WAS, change.key)} />}
      </td>
      <td className="numeric">
        {change.now !== null && <FigureValue id={mergedId(LEAVES_NOW, change.key)} />}
      </td>
      <EffectCells effect={change.effect} named={named} />
    </tr>
  );
}

/** Every change under its cause with what it moves, the largest first; subtotals, and the whole below. */
export function ChangeTable({ difference, named, was, now, isRounded }: ChangeTableProps) {
  const { causes, moved, rounding } = difference;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a frame that scrolls must be reached by the keyboard
    <section className="change-frame" aria-label="What moved, cause by cause" tabIndex={0}>
      <table className="change-table">
        <thead>
          <tr>
            <th scope="col">What moved</th>
            <th scope="col" className="numeric">
              {was}
            </th>
            <th scope="col" className="numeric">
              {now}
            </th>
            <th scope="col" className="numeric">
              Moves the cost by
            </th>
            <th scope="col" className="numeric">
              Moves the net price by
            </th>
          </tr>
        </thead>
        {causes.map(({ cause, effect, changes }) => (
          <tbody key={cause}>
            <tr className="change-cause">
              <th scope="rowgroup" colSpan={3}>
                {CAUSE_WORDS[cause].label} <span className="change-why">{CAUSE_WORDS[cause].note}</span>
              </th>
              <EffectCells effect={effect} named={named} isTotal />
            </tr>
            {changes.map((change) => (
              <ChangeRow key={`${change.kind} ${change.key}`} change={change} named={named} />
            ))}
          </tbody>
        ))}
        <tfoot>
          {isRounded && (
            <tr>
              <th scope="row" colSpan={3}>
                Left by rounding each effect
              </th>
              <EffectCells effect={rounding} named={named} />
            </tr>
          )}
          <tr>
            <th scope="row" colSpan={3}>
              Together
            </th>
            <EffectCells effect={moved} named={named} isTotal />
          </tr>
        </tfoot>
      </table>
    </section>
  );
}
