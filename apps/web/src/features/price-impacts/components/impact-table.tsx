import { Link } from '@tanstack/react-router';
import { FigureValue } from '../../figures/figure-value.tsx';
import { mergedId } from '../../figures/merge-tables.ts';
import type { PriceImpactRow } from '../api/price-impact-calls.ts';
import { WhatToDo } from './what-to-do.tsx';
import './price-impact.css';

const KIND_WORDS = { sent: 'sent quote', draft: 'draft of a quote', 'cost-sheet': 'cost sheet' } as const;

function Title({ row }: { readonly row: PriceImpactRow }) {
  const words = row.number === null ? row.title : `${row.number}, ${row.title}`;
  if (row.quoteId !== null)
    return (
      <Link to="/quotes/$quoteId" params={{ quoteId: row.quoteId }} hash="moved">
        {words}
      </Link>
    );
  if (row.costSheetId === null) return words;
  return (
    <Link to="/cost-sheets/$sheetId" params={{ sheetId: row.costSheetId }}>
      {words}
    </Link>
  );
}

/** Two values of one thing, the one before above the one after; one value where they are the same by rule. */
function Pair({ row, sides, isPercent = false }: PairProps) {
  const { before, after } = sides;
  const value = (id: string | null) =>
    id === null ? 'none' : <FigureValue id={mergedId(row.id, id)} isPercent={isPercent} />;
  if (before === after) return value(before);
  return (
    <>
      <span className="impact-before">{value(before)}</span>
      {value(after)}
    </>
  );
}

interface PairProps {
  readonly row: PriceImpactRow;
  readonly sides: { readonly before: string | null; readonly after: string | null };
  readonly isPercent?: boolean;
}

function Money({ row }: { readonly row: PriceImpactRow }) {
  const { cost, netPrice, margin } = row;
  if (cost === null || netPrice === null || margin === null)
    return (
      <td colSpan={4} className="impact-problem">
        Cannot be costed: {row.problem}
      </td>
    );
  return (
    <>
      <td className="numeric">
        <FigureValue id={mergedId(row.id, cost.moved)} look="total" />
      </td>
      <td className="numeric">
        <Pair row={row} sides={cost} />
      </td>
      <td className="numeric">
        <Pair row={row} sides={netPrice} />
      </td>
      <td className="numeric">
        <Pair row={row} sides={margin} isPercent />
      </td>
    </>
  );
}

/** Open quotes and cost sheets whose cost a list moves, the most money first, with what to do about each. */
export function ImpactTable({ rows }: { readonly rows: readonly PriceImpactRow[] }) {
  return (
    <div className="impact-frame">
      <table className="impact-table">
        <caption className="visually-hidden">What this list moves, the most money first</caption>
        <thead>
          <tr>
            <th scope="col">What it touches</th>
            <th scope="col" className="numeric">
              Cost moves by
            </th>
            <th scope="col" className="numeric">
              Cost, before and after
            </th>
            <th scope="col" className="numeric">
              Net price
            </th>
            <th scope="col" className="numeric">
              Margin, before and after
            </th>
            <th scope="col">What to do</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.id}>
              <th scope="row">
                <Title row={row} />
                <span className="impact-note">
                  {KIND_WORDS[row.kind]}
                  {row.clientName !== null && `, ${row.clientName}`}
                </span>
              </th>
              <Money row={row} />
              <td>
                <WhatToDo row={row} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
