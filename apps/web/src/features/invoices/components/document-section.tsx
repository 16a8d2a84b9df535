import { decimal } from '@scantling/decimals';
import { lineUnit, unitAfter } from '@scantling/quoting';
import { useLocale } from 'react-aria-components';
import { Section } from '../../../components/sheet.tsx';
import { formatMoney, formatNumber } from '../../../lib/format.ts';
import type { Invoice } from '../api/get-invoice.ts';
import { KIND_WORDS } from './invoice-words.ts';
import '../../../components/ruled-rows.css';
import './invoice.css';

type Said = Invoice['document'];

function Lines({ document }: { readonly document: Said }) {
  const { locale } = useLocale();
  const money = (value: string): string => formatMoney(value, document.currency, { locale });
  return (
    <tbody>
      {document.groups.flatMap((group) =>
        group.lines.map((line) => (
          <tr key={`${group.number} ${line.id}`}>
            <th scope="row" className="ruled-name">
              {line.description}
            </th>
            <td className="numeric">
              {formatNumber(line.quantity, 3, { locale })} {unitAfter(line.quantity, lineUnit(line))}
            </td>
            <td className="numeric">{money(line.amount)}</td>
          </tr>
        )),
      )}
      {document.groups
        .filter(({ discount }) => !decimal(discount).isZero())
        .map((group) => (
          <tr key={`discount ${group.number}`}>
            <th scope="row" className="ruled-name">
              Discount of {group.number}
            </th>
            <td />
            <td className="numeric">{money(decimal(group.discount).abs().negated().toFixed())}</td>
          </tr>
        ))}
      {document.deducted.map((invoice) => (
        <tr key={invoice.number}>
          <th scope="row" className="ruled-name">
            Less {KIND_WORDS[invoice.kind].toLowerCase()} {invoice.number} of {invoice.issuedOn}, with tax
          </th>
          <td />
          <td className="numeric">{money(decimal(invoice.total).negated().toFixed())}</td>
        </tr>
      ))}
    </tbody>
  );
}

/** What the paper says, frozen: lines, what was invoiced before, tax by rate, and what it comes to. */
export function DocumentSection({ document, title }: { readonly document: Said; readonly title: string }) {
  const { locale } = useLocale();
  const money = (value: string): string => formatMoney(value, document.currency, { locale });
  const hasLines = document.groups.length > 0 || document.deducted.length > 0;
  return (
    <Section title={title} note={document.what === '' ? document.title : document.what}>
      {document.note !== '' && <p className="money-note">{document.note}</p>}
      <section className="ruled-frame" aria-label={`${title}, sums`}>
        <table className="ruled-rows">
          <thead>
            <tr>
              <th scope="col">{hasLines ? 'Line' : 'Tax'}</th>
              <th scope="col" className="numeric">
                {hasLines ? 'Quantity' : 'Without tax'}
              </th>
              <th scope="col" className="numeric">
                Amount
              </th>
            </tr>
          </thead>
          {hasLines && <Lines document={document} />}
          <tfoot>
            <tr>
              <th scope="row">Without tax</th>
              <td />
              <td className="numeric">{money(document.net)}</td>
            </tr>
            {document.taxes.map((tax) => (
              <tr key={`${tax.category} ${tax.rate}`}>
                <th scope="row">
                  {tax.name}
                  {tax.exemptionReason !== '' && `: ${tax.exemptionReason}`}
                </th>
                <td className="numeric">on {money(tax.net)}</td>
                <td className="numeric">{money(tax.taxAmount)}</td>
              </tr>
            ))}
            <tr>
              <th scope="row">Total with tax</th>
              <td />
              <td className="numeric">{money(document.total)}</td>
            </tr>
          </tfoot>
        </table>
      </section>
    </Section>
  );
}
