import type { WorkedQuote } from '@scantling/contracts';
import type { EditColumn, GridRow } from '../../../components/edit-grid/edit-column.ts';
import { FigureValue } from '../../figures/figure-value.tsx';

/** How a cell is drawn that nobody types into, and its text where it is copied. */
export type Drawn = Required<Pick<EditColumn, 'shown' | 'render'>>;

/** How the cells of lines that are worked out are drawn. */
export type LineFigures = Readonly<Record<'price' | 'amount' | 'cost' | 'margin', Drawn>>;

function drawn(
  worked: WorkedQuote | undefined,
  figureOf: (line: string) => string | null | undefined,
  nothing: string,
  isPercent = false,
): Drawn {
  const found = ({ key }: GridRow): string | null => {
    const id = figureOf(key) ?? null;
    return id !== null && worked?.figures[id] ? id : null;
  };
  return {
    shown: (row) => {
      const id = found(row);
      return id === null ? '' : (worked?.figures[id]?.value ?? '');
    },
    render: (row) => {
      const id = found(row);
      if (worked === undefined) return '';
      return id === null ? nothing : <FigureValue id={id} isPercent={isPercent} />;
    },
  };
}

/** What each line comes to, costs and leaves, as figures that open their working. */
export function lineFigures(worked: WorkedQuote | undefined): LineFigures {
  const totalsOf = (line: string) => worked?.totals.lines.find(({ id }) => id === line);
  const marginOf = (line: string) => worked?.margin.lines.find(({ id }) => id === line);
  return {
    price: drawn(worked, (line) => totalsOf(line)?.price, ''),
    amount: drawn(worked, (line) => totalsOf(line)?.amount, ''),
    cost: drawn(worked, (line) => marginOf(line)?.cost, 'not known'),
    margin: drawn(worked, (line) => marginOf(line)?.margin, '–', true),
  };
}
