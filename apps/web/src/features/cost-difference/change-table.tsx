import type { CostDifferenceAnswer } from '@scantling/contracts';
import { decimal } from '@scantling/decimals';
import { FigureValue } from '../figures/figure-value.tsx';
import { useFigures } from '../figures/figures-context.ts';
import { mergedId } from '../figures/merge-tables.ts';
import { CAUSE_WORDS } from './cause-words.ts';
import { type CostChange, LEAVES_NOW, LEAVES_WAS } from './difference-tables.ts';
import './cost-difference.css';

interface ChangeTableProps {
  readonly difference: CostDifferenceAnswer;
  /** The causes in the order they are listed in. */
  readonly causes: CostDifferenceAnswer['causes'];
  readonly named: (id: string) => string;
  readonly was: string;
  readonly now: string;
  readonly isRounded: boolean;
}

interface EffectCellsProps {
  readonly effect: CostDifferenceAnswer['moved'];
  readonly named: (id: string) => string;
  readonly isTotal?: boolean;
}

function EffectCells({ effect, named, isTotal = false }: EffectCellsProps) {
  return (['cost', 'price'] as const).map((total) => (
    <td key={total} className="numeric">
      <FigureValue id={named(effect[total])} look={isTotal ? 'total' : 'plain'} />
    </td>
  ));
}

function LeafCells({ change }: { readonly change: CostChange }) {
  return (
    <>
      <td className="numeric">
        {change.was !== null && <FigureValue id={mergedId(LEAVES_WAS, change.key)} />}
      </td>
      <td className="numeric">
        {change.now !== null && <FigureValue id={mergedId(LEAVES_NOW, change.key)} />}
      </td>
    </>
  );
}

function ChangeName({ change }: { readonly change: CostChange }) {
  const why = change.why === '' ? (change.now?.source?.text ?? '') : change.why;
  return (
    <th scope="row">
      {change.label}
      {why !== '' && <span className="change-why">{why}</span>}
    </th>
  );
}

/** Leaves that differ and move nothing here: a break that is not reached, a machine that does not run. */
function StillTable({ changes, was, now }: StillTableProps) {
  if (changes.length === 0) return null;
  return (
    <details className="change-still">
      <summary>
        {changes.length === 1 ? '1 value differs' : `${changes.length} values differ`} and{' '}
        {changes.length === 1 ? 'moves' : 'move'} nothing here, as a price break that is not reached
      </summary>
      <table className="change-table">
        <thead>
          <tr>
            <th scope="col">What differs</th>
            <th scope="col" className="numeric">
              {was}
            </th>
            <th scope="col" className="numeric">
              {now}
            </th>
          </tr>
        </thead>
        <tbody>
          {changes.map((change) => (
            <tr key={change.key}>
              <ChangeName change={change} />
              <LeafCells change={change} />
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}

interface StillTableProps {
  readonly changes: readonly CostChange[];
  readonly was: string;
  readonly now: string;
}

/** Every change under its cause with what it moves, the largest first; subtotals, and the whole below. */
export function ChangeTable({ difference, causes, named, was, now, isRounded }: ChangeTableProps) {
  const { table } = useFigures();
  const { moved, rounding } = difference;
  const isStill = ({ effect }: CostChange): boolean =>
    [effect.cost, effect.price].every((id) => decimal(table[named(id)]?.value ?? '0').isZero());
  return (
    <>
      <section className="change-frame" aria-label="What moved, cause by cause">
        <table className="change-table">
          <thead>
            <tr>
              <th scope="col">What moved</th>
              <th scope="col" className="numeric">
                Moves the cost by
              </th>
              <th scope="col" className="numeric">
                Moves the net price by
              </th>
              <th scope="col" className="numeric">
                {was}
              </th>
              <th scope="col" className="numeric">
                {now}
              </th>
            </tr>
          </thead>
          {causes.map(({ cause, effect, changes }) => (
            <tbody key={cause}>
              <tr className="change-cause">
                <th scope="rowgroup">
                  {CAUSE_WORDS[cause].label} <span className="change-why">{CAUSE_WORDS[cause].note}</span>
                </th>
                <EffectCells effect={effect} named={named} isTotal />
                <td colSpan={2} />
              </tr>
              {changes
                .filter((change) => !isStill(change))
                .map((change) => (
                  <tr key={`${change.kind} ${change.key}`}>
                    <ChangeName change={change} />
                    <EffectCells effect={change.effect} named={named} />
                    <LeafCells change={change} />
                  </tr>
                ))}
            </tbody>
          ))}
          <tfoot>
            {isRounded && (
              <tr>
                <th scope="row">Left by rounding each effect</th>
                <EffectCells effect={rounding} named={named} />
                <td colSpan={2} />
              </tr>
            )}
            <tr>
              <th scope="row">Together</th>
              <EffectCells effect={moved} named={named} isTotal />
              <td colSpan={2} />
            </tr>
          </tfoot>
        </table>
      </section>
      <StillTable changes={causes.flatMap(({ changes }) => changes.filter(isStill))} was={was} now={now} />
    </>
  );
}
