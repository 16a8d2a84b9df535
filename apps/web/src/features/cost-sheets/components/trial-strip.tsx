import { type SheetResult, triedResults, type WorkedCostSheet } from '@scantling/contracts';
import type { TriedTable } from '@scantling/figures';
import { useLocale } from 'react-aria-components';
import { Button } from '../../../components/button.tsx';
import { Select } from '../../../components/select.tsx';
import { FigureValue } from '../../figures/figure-value.tsx';
import { piecesWords } from './class-rows.ts';
import { movedWords, RESULT_LABELS, resultPlaces, resultWords } from './result-words.ts';
import type { SheetTrial } from './use-trial.ts';
import './trial-strip.css';
import './trial.css';

interface TrialStripProps {
  readonly worked: WorkedCostSheet;
  readonly trial: SheetTrial;
  readonly tried: TriedTable;
  readonly quantity: number;
  readonly onQuantity: (quantity: number) => void;
}

/** What the sheet comes to with the values tried, in view wherever on it one is. */
export function TrialStrip({ worked, trial, tried, quantity, onQuantity }: TrialStripProps) {
  const column = worked.columns.find((one) => one.quantity === quantity) ?? worked.columns[0];
  if (column === undefined) return null;
  const isOne = column.quantity === 1;
  const results = triedResults(column, tried).filter(
    ({ name }) => name !== 'floorPrice' && !(isOne && name.startsWith('piece')),
  );
  const count = Object.keys(trial.values).length;
  return (
    <section className="trial-strip" aria-label="What it comes to">
      <div className="trial-strip-head">
        <p>
          <strong>Trying values</strong>{' '}
          <span className="trial-still">
            {count === 0 ? 'nothing tried yet' : count === 1 ? '1 value tried' : `${count} values tried`},
            nothing saved
          </span>
        </p>
        {worked.columns.length > 1 && (
          <Select
            label="Shown for"
            isLabelHidden
            choices={worked.columns.map((one) => ({
              id: String(one.quantity),
              label: piecesWords(one.quantity),
            }))}
            value={String(column.quantity)}
            onChange={(id) => onQuantity(Number(id))}
          />
        )}
        <div className="trial-acts">
          <Button look="quiet" isDisabled={trial.undo === null} onPress={() => trial.undo?.()}>
            Undo
          </Button>
          <Button look="quiet" isDisabled={trial.redo === null} onPress={() => trial.redo?.()}>
            Redo
          </Button>
          <Button look="quiet" isDisabled={count === 0} onPress={() => trial.take({})}>
            Put all back
          </Button>
          <Button look="quiet" onPress={() => trial.setIsOn(false)}>
            Stop trying
          </Button>
        </div>
      </div>
      <dl>
        {results.map((result) => (
          <Cell key={result.name} result={result} table={tried.table} />
        ))}
      </dl>
      <p className="visually-hidden" role="status">
        {count === 0 ? '' : results.map((result) => spoken(result, tried)).join('; ')}
      </p>
    </section>
  );
}

function spoken(result: SheetResult, { table }: TriedTable): string {
  const node = table[result.figure];
  if (node === undefined) return '';
  return `${RESULT_LABELS[result.name]} ${resultWords(result.name, result.now, node, 'en')}, ${movedWords(result, node, 'en')}`;
}

interface CellProps {
  readonly result: SheetResult;
  readonly table: TriedTable['table'];
}

function Cell({ result, table }: CellProps) {
  const { locale } = useLocale();
  const { name, figure, was, difference } = result;
  const node = table[figure];
  if (node === undefined) return null;
  const places = resultPlaces(name);
  const hasMoved = difference !== '0';
  return (
    <div data-result={name}>
      <dt>{RESULT_LABELS[name]}</dt>
      <dd>
        <FigureValue
          id={figure}
          look="total"
          isPercent={name === 'margin'}
          {...(places === undefined ? {} : { places })}
        />
        <span className="trial-was">{hasMoved ? `was ${resultWords(name, was, node, locale)}` : ' '}</span>
        <span className="trial-moved">{hasMoved ? movedWords(result, node, locale) : ' '}</span>
      </dd>
    </div>
  );
}
