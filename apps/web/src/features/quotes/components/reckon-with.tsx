import type { WorkedQuote } from '@scantling/contracts';
import { Checkbox } from '../../../components/checkbox.tsx';
import { cell, type LineForm } from './line-cells.ts';
import './quote.css';

interface ReckonWithProps {
  readonly lines: readonly LineForm[];
  readonly worked: WorkedQuote | undefined;
  /** Options and alternates taken while looking at what the quote comes to. */
  readonly chosen: readonly string[];
  readonly onChosen: (chosen: readonly string[]) => void;
}

/** The chosen lines after one is taken or left; of a group the one taken last stays. */
function nextChosen(lines: readonly LineForm[], chosen: readonly string[], key: string, isChosen: boolean) {
  const line = lines.find((one) => one.key === key);
  const group = line && cell(line, 'taken') === 'alternate' ? cell(line, 'group') : null;
  const rivals = lines.filter(
    (one) => one.key === key || (cell(one, 'taken') === 'alternate' && cell(one, 'group') === group),
  );
  const others = chosen.filter((other) => !rivals.some((one) => one.key === other));
  return isChosen ? [...others, key] : others;
}

/** Tries what the quote comes to with options and alternates; nothing of it is saved or sent. */
export function ReckonWith({ lines, worked, chosen, onChosen }: ReckonWithProps) {
  const optional = lines.filter((line) => ['option', 'alternate'].includes(cell(line, 'taken')));
  if (optional.length === 0) return null;
  const isCounted = (key: string): boolean =>
    worked?.totals.lines.find(({ id }) => id === key)?.isCounted ?? false;
  return (
    <fieldset className="reckon-with">
      <legend>Reckon with, only to see what it comes to</legend>
      {optional.map((line) => (
        <Checkbox
          key={line.key}
          label={cell(line, 'description') || 'Unnamed line'}
          isSelected={isCounted(line.key)}
          isDisabled={cell(line, 'standard') === 'yes' && isCounted(line.key)}
          onChange={(isChosen) => onChosen(nextChosen(lines, chosen, line.key, isChosen))}
        />
      ))}
    </fieldset>
  );
}
