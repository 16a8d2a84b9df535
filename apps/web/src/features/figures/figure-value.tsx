import { useLocale } from 'react-aria-components';
import { formatAmount, formatPercent, type WrittenAmount } from '../../lib/format.ts';
import { useFigures } from './figures-context.ts';
import { inImperial } from './in-imperial.ts';
import { useTrying } from './trying-context.ts';
import { nodeOf } from './working-words.ts';
import './figure-value.css';
import './try-field.css';

export interface FigureValueProps {
  readonly id: string;
  /** Where the column head or the words around it name the unit; it is still read out. */
  readonly isUnitHidden?: boolean;
  /** Decimal places, the same for all figures of a column (hours, board feet); money has its own. */
  readonly places?: number;
  /** A share read as a percentage (a margin of 0.3 is 30 %). */
  readonly isPercent?: boolean;
  /** Shows a length in inches, to the nearest 1/16 with a mark where that is not exact, and an area in square feet. */
  readonly isInInches?: boolean;
  /** `answer`: the one large figure of a sheet; `total`: sums. */
  readonly look?: 'plain' | 'total' | 'answer';
}

function percentOf(share: string, locale: string): WrittenAmount {
  const text = formatPercent(share, 1, { locale, places: 1 });
  return { number: text, unit: '', text };
}

/** A figure of the table around it: value and unit, and a button that opens its working. */
export function FigureValue(props: FigureValueProps) {
  const { id, isUnitHidden = false, places, isPercent = false, isInInches = false, look = 'plain' } = props;
  const { table, openId, open } = useFigures();
  const { locale } = useLocale();
  const node = nodeOf(table, id);
  const options = { locale, ...(places === undefined ? {} : { places }) };
  const write = (value: string): WrittenAmount =>
    isPercent
      ? percentOf(value, locale)
      : ((isInInches ? inImperial({ ...node, value }, locale) : null) ??
        formatAmount({ ...node, value }, options));
  const written = write(node.value);
  const was = useTrying()?.wasOf(id);
  return (
    <button
      type="button"
      className={`figure-value figure-${look}${was === undefined ? '' : ' figure-moved'}`}
      data-figure={id}
      aria-expanded={openId === id}
      aria-label={`${node.label}: ${written.text}, ${was === undefined ? '' : `was ${write(was).text}, `}working`}
      title={was === undefined ? undefined : `was ${write(was).text}`}
      onClick={() => open(id)}
    >
      {written.number}
      {!isUnitHidden && written.unit !== '' && <span className="figure-unit"> {written.unit}</span>}
    </button>
  );
}
