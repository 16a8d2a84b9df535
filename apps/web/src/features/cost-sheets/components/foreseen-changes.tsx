import type { SheetChanges } from '@scantling/contracts';
import { decimal } from '@scantling/decimals';
import { Link } from '@tanstack/react-router';
import { useLocale } from 'react-aria-components';
import { formatMoney } from '../../../lib/format.ts';
import { piecesWords } from './class-rows.ts';
import './trial.css';

interface ForeseenProps {
  readonly foreseen: SheetChanges;
}

/** What taking over changes: the sheet costed anew, where each value goes, and what else rests on them. */
export function ForeseenChanges({ foreseen }: ForeseenProps) {
  const { locale } = useLocale();
  const { columns, written, otherSheets, draftQuotes, currency } = foreseen;
  const money = (value: string | null): string =>
    value === null ? 'not worked out' : formatMoney(value, currency, { locale });
  const nets = columns.flatMap(({ quantity, results }) => {
    const net = results.find(({ name }) => name === 'netPrice');
    return net === undefined ? [] : [{ quantity, ...net }];
  });
  const places = [...new Set(written.map(({ place }) => place))];
  return (
    <section className="foreseen" aria-label="What it changes">
      <h3>What it changes</h3>
      <ul>
        <li>Written to: {places.join('; ')}.</li>
        {nets.map(({ quantity, was, now }) => (
          <li key={quantity}>
            {piecesWords(quantity)}, costed anew: net price {money(was)} → <strong>{money(now)}</strong>
          </li>
        ))}
        {draftQuotes.length > 0 && (
          <li>
            Drafts of quotes that follow:{' '}
            {draftQuotes.map(({ id, title }, at) => (
              <span key={id}>
                {at > 0 && ', '}
                <Link to="/quotes/$quoteId" params={{ quoteId: id }}>
                  {title}
                </Link>
              </span>
            ))}
            . What was sent stays as it is.
          </li>
        )}
        {otherSheets.length === 0 && <li>No other cost sheet rests on them.</li>}
      </ul>
      {otherSheets.length > 0 && (
        <div className="trial-table-frame">
          <table className="trial-table">
            <caption>Other cost sheets that rest on them</caption>
            <thead>
              <tr>
                <th scope="col">Cost sheet</th>
                <th scope="col">Design</th>
                <th scope="col" className="numeric">
                  Net price
                </th>
                <th scope="col" className="numeric">
                  After it
                </th>
              </tr>
            </thead>
            <tbody>
              {otherSheets.map(({ id, title, designName, quantity, was, now }) => (
                <tr key={id}>
                  <th scope="row">
                    <Link to="/cost-sheets/$sheetId" params={{ sheetId: id }}>
                      {title}
                    </Link>
                    <span className="trial-note">{piecesWords(quantity)}</span>
                  </th>
                  <td>{designName}</td>
                  <td className="numeric">{money(was)}</td>
                  <td className="numeric">
                    {was !== null && now !== null && decimal(was).eq(now) ? 'the same' : money(now)}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
    </section>
  );
}
