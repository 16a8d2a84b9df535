import { useLocale } from 'react-aria-components';
import { ChartFrame } from '../../../components/charts/chart-frame.tsx';
import { RuledFrame } from '../../../components/ruled-frame.tsx';
import { FigureValue } from '../../figures/figure-value.tsx';
import { useFigures } from '../../figures/figures-context.ts';
import { isShare } from '../../figures/leaf-text.ts';
import type { MovesBar, MovesRow, MovesShape, Stretch } from './moves-shape.ts';
import { barWords, boundWords, differenceWords, type MovesVoice, triedWords } from './moves-words.ts';
import { RESULT_LABELS, resultPlaces, resultWords } from './result-words.ts';
import './moves-chart.css';

interface MovesProps {
  readonly voice: MovesVoice;
  readonly shape: MovesShape;
  readonly resultId: string;
}

/** The values that move a result most, as bars to one scale and as a table. */
export function MovesChart({ voice, shape, resultId }: MovesProps) {
  const label = `${RESULT_LABELS[voice.name]} with one value at a time moved, the widest swing first`;
  return (
    <ChartFrame
      label={label}
      table={<MovesTable label={label} voice={voice} rows={shape.bars.map(({ row }) => row)} />}
    >
      <ul className="chart-key">
        <li>
          <span aria-hidden="true" className="moves-swatch moves-low" /> the value lower
        </li>
        <li>
          <span aria-hidden="true" className="moves-swatch moves-high" /> the value higher
        </li>
      </ul>
      <div className="moves">
        <p className="moves-now">
          <span style={{ left: `${shape.now}%` }}>
            now <FigureValue id={resultId} {...placesFor(voice)} />
          </span>
        </p>
        <ol className="moves-bars" onKeyDown={walkBars}>
          {shape.bars.map((bar) => (
            <Bar key={bar.row.figure} bar={bar} now={shape.now} voice={voice} />
          ))}
        </ol>
      </div>
    </ChartFrame>
  );
}

function placesFor({ name }: MovesVoice) {
  const places = resultPlaces(name);
  return { isPercent: name === 'margin', ...(places === undefined ? {} : { places }) };
}

/** Up and down walk the bars, Home and End go to the first and last; each is reached by Tab too. */
function walkBars(event: React.KeyboardEvent<HTMLElement>): void {
  const bars = [...event.currentTarget.querySelectorAll<HTMLElement>('.moves-bar')];
  const at = event.target instanceof HTMLElement ? bars.indexOf(event.target) : -1;
  if (at < 0) return;
  const places: Readonly<Record<string, number>> = {
    ArrowDown: Math.min(at + 1, bars.length - 1),
    ArrowUp: Math.max(at - 1, 0),
    Home: 0,
    End: bars.length - 1,
  };
  const to = places[event.key];
  if (to === undefined) return;
  event.preventDefault();
  bars[to]?.focus();
}

interface BarProps {
  readonly bar: MovesBar;
  readonly now: number;
  readonly voice: MovesVoice;
}

function Bar({ bar, now, voice }: BarProps) {
  const { openId, open } = useFigures();
  const { row, low, high, isOneSided } = bar;
  const bound = boundWords(voice, row);
  return (
    <li className="moves-row">
      <div className="moves-name">
        <LeafLabel voice={voice} row={row} />
        <span className="moves-note">
          {triedWords(voice, row)}
          {row.by === 'range' && ', its own low and high'}
          {bound !== '' && <em> {bound}</em>}
        </span>
      </div>
      <button
        type="button"
        className="moves-bar"
        data-is-one-sided={isOneSided ? '' : undefined}
        aria-expanded={openId === row.figure}
        aria-label={barWords(voice, row)}
        onClick={() => open(row.figure)}
      >
        <span className="moves-line" style={{ left: `${now}%` }} />
        <End stretch={low} voice={voice} side="moves-low" />
        <End stretch={high} voice={voice} side="moves-high" />
      </button>
    </li>
  );
}

interface EndProps {
  readonly stretch: Stretch;
  readonly voice: MovesVoice;
  readonly side: 'moves-low' | 'moves-high';
}

function End({ stretch, voice, side }: EndProps) {
  const { left, width, difference, isRight } = stretch;
  if (width === 0) return null;
  const beside = isRight ? { left: `${left + width}%` } : { right: `${100 - left}%` };
  return (
    <>
      <span className={`moves-stretch ${side}`} style={{ left: `${left}%`, width: `${width}%` }} />
      <span className={`moves-end ${side}-end`} style={beside}>
        {differenceWords(voice, difference)}
      </span>
    </>
  );
}

function LeafLabel({ voice, row }: { readonly voice: MovesVoice; readonly row: MovesRow }) {
  const leaf = voice.table[row.figure];
  if (leaf === undefined) return null;
  return (
    <span className="moves-label">
      {leaf.label}{' '}
      <FigureValue id={row.figure} isPercent={isShare(leaf)} isInInches={voice.system === 'imperial'} />
    </span>
  );
}

interface MovesTableProps {
  readonly label: string;
  readonly voice: MovesVoice;
  readonly rows: readonly MovesRow[];
}

function MovesTable({ label, voice, rows }: MovesTableProps) {
  const { locale } = useLocale();
  const places = placesFor(voice);
  const result = RESULT_LABELS[voice.name];
  const cell = (id: string | null) => (id === null ? 'no answer' : <FigureValue id={id} {...places} />);
  return (
    <RuledFrame label={label}>
      <table className="ruled-rows">
        <caption className="visually-hidden">
          {label}; {result} now {resultWords(voice.name, voice.now.value, voice.now, locale)}
        </caption>
        <thead>
          <tr>
            <th scope="col">Value</th>
            <th scope="col">Tried from, to</th>
            <th scope="col" className="numeric">
              {result}, value lower
            </th>
            <th scope="col" className="numeric">
              {result}, value higher
            </th>
            <th scope="col" className="numeric">
              Between the two
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.figure}>
              <th scope="row" className="ruled-name">
                <LeafLabel voice={voice} row={row} />
              </th>
              <td>
                {triedWords(voice, row)} {boundWords(voice, row)}
              </td>
              <td className="numeric">{cell(row.resultLow)}</td>
              <td className="numeric">{cell(row.resultHigh)}</td>
              <td className="numeric">{cell(row.swing)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </RuledFrame>
  );
}
