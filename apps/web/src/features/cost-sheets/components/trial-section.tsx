import type { WorkedCostSheet } from '@scantling/contracts';
import type { FigureNode, TriedTable } from '@scantling/figures';
import type { LengthSystem } from '@scantling/units';
import { useLocale } from 'react-aria-components';
import { Button } from '../../../components/button.tsx';
import { Section } from '../../../components/sheet.tsx';
import { leafWords } from '../../figures/leaf-text.ts';
import { InputList } from './input-list.tsx';
import { withTried } from './tried-values.ts';
import type { SheetTrial } from './use-trial.ts';
import './trial.css';

interface TrialSectionProps {
  readonly worked: WorkedCostSheet;
  readonly trial: SheetTrial;
  readonly tried: TriedTable;
  readonly system: LengthSystem;
  /** The acts on what is tried: keep it, take it over. */
  readonly children: React.ReactNode;
}

/** What is tried, each value with the way back, what can be done with it, and every input there is. */
export function TrialSection({ worked, trial, tried, system, children }: TrialSectionProps) {
  return (
    <Section title="Values tried" note="they stand in this window only, until they are kept or taken over">
      <p className="trial-lead">
        Supplier, stock and revision chosen stay as they are; whole packs, price breaks and roundings follow.
        Figures that move are marked with a tick of chalk.
      </p>
      {trial.fault !== null && (
        <p role="alert" className="trial-gone">
          The values tried leave no answer on the sheet as it is now ({trial.fault}): put some of them back.
        </p>
      )}
      {Object.keys(trial.values).length > 0 && (
        <TriedTableRows tried={tried} trial={trial} table={worked.figures} system={system} />
      )}
      {children}
      <InputList table={worked.figures} />
    </Section>
  );
}

interface TriedRowsProps {
  readonly tried: TriedTable;
  readonly trial: SheetTrial;
  readonly table: WorkedCostSheet['figures'];
  readonly system: LengthSystem;
}

function TriedTableRows({ tried, trial, table, system }: TriedRowsProps) {
  const { locale } = useLocale();
  const back = (leaf: string): void => trial.take(withTried(trial.values, leaf, null));
  const words = (leaf: FigureNode, value: string): string => leafWords(leaf, value, system, locale);
  return (
    <div className="trial-table-frame">
      <table className="trial-table">
        <caption className="visually-hidden">Values tried</caption>
        <thead>
          <tr>
            <th scope="col">Input</th>
            <th scope="col" className="numeric">
              Stands at
            </th>
            <th scope="col" className="numeric">
              Tried
            </th>
            <th scope="col">
              <span className="visually-hidden">Acts</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {tried.changed.map((leaf) => (
            <tr key={leaf.id}>
              <th scope="row">
                {leaf.label}
                <span className="trial-note">{leaf.source?.text}</span>
              </th>
              <td className="numeric">{words(leaf, table[leaf.id]?.value ?? leaf.value)}</td>
              <td className="numeric">{words(leaf, tried.table[leaf.id]?.value ?? leaf.value)}</td>
              <td>
                <Button look="quiet" aria-label={`Put back ${leaf.label}`} onPress={() => back(leaf.id)}>
                  Put back
                </Button>
              </td>
            </tr>
          ))}
          {tried.gone.map((leaf) => (
            <tr key={leaf}>
              <th scope="row" colSpan={3} className="trial-gone">
                {leaf}: the sheet does not rest on it any more
              </th>
              <td>
                <Button look="quiet" aria-label={`Leave out ${leaf}`} onPress={() => back(leaf)}>
                  Leave out
                </Button>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
