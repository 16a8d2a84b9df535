import { decimal } from '@scantling/decimals';
import { lineUnit, taxRoundingWords, unitAfter } from '@scantling/quoting';
import { useLocale } from 'react-aria-components';
import { RuledFrame } from '../../../components/ruled-frame.tsx';
import { Section } from '../../../components/sheet.tsx';
import { formatMoney, formatNumber } from '../../../lib/format.ts';
import { FigureValue } from '../../figures/figure-value.tsx';
import { useFigures } from '../../figures/figures-context.ts';
import type { Invoice } from '../api/get-invoice.ts';
import { KIND_WORDS } from './invoice-words.ts';
import './invoice.css';

type Said = Invoice['document'];

function Lines({ document }: { readonly document: Said }) {
  const { locale } = useLocale();
  const money = (value: string): string => formatMoney(value, document.currency, { locale });
  // Taken off the same kind of amounts as the lines above are, so that the column adds up.
  const isNet = document.groups.every(({ priceMode }) => priceMode === 'exclusive');
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
            {invoice.kind === 'credit-note' ? 'Given back by' : 'Less'}{' '}
            {KIND_WORDS[invoice.kind].toLowerCase()} {invoice.number} of {invoice.issuedOn},{' '}
            {isNet ? 'without tax' : 'with tax'}
          </th>
          <td />
          <td className="numeric">
            {money(
              decimal(isNet ? invoice.net : invoice.total)
                .negated()
                .toFixed(),
            )}
          </td>
        </tr>
      ))}
    </tbody>
  );
}

type Worked = Pick<Invoice['working']['own'], 'net' | 'total' | 'taxes'>;

interface DocumentSectionProps {
  readonly document: Said;
  readonly title: string;
  /** The figures of what it comes to, in the table around. */
  readonly worked: Worked;
  /** How such a figure is called there. */
  readonly named: (id: string) => string;
}

function Totals({ document, worked, named }: Omit<DocumentSectionProps, 'title'>) {
  const { locale } = useLocale();
  return (
    <tfoot>
      <tr>
        <th scope="row">Without tax</th>
        <td />
        <td className="numeric">
          <FigureValue id={named(worked.net)} />
        </td>
      </tr>
      {document.taxes.map((tax, at) => {
        const figures = worked.taxes[at];
        return (
          <tr key={`${tax.category} ${tax.rate} ${tax.name}`}>
            <th scope="row">
              {tax.name}
              {tax.exemptionReason !== '' && `: ${tax.exemptionReason}`}
            </th>
            <td className="numeric">
              on{' '}
              {figures ? (
                <FigureValue id={named(figures.net)} />
              ) : (
                formatMoney(tax.net, document.currency, { locale })
              )}
            </td>
            <td className="numeric">
              {figures ? (
                <FigureValue id={named(figures.tax)} />
              ) : (
                formatMoney(tax.taxAmount, document.currency, { locale })
              )}
            </td>
          </tr>
        );
      })}
      {worked.taxes.map((tax) => (
        <OffNetRule key={tax.tax} tax={tax} named={named} />
      ))}
      <tr>
        <th scope="row">Total with tax</th>
        <td />
        <td className="numeric">
          <FigureValue id={named(worked.total)} look="total" />
        </td>
      </tr>
    </tfoot>
  );
}

/** By how much a tax is off its rate of the net, where it is. */
function OffNetRule({
  tax,
  named,
}: { readonly tax: Worked['taxes'][number] } & Pick<DocumentSectionProps, 'named'>) {
  const { table } = useFigures();
  const id = tax.differenceFromNetRule === null ? null : named(tax.differenceFromNetRule);
  const off = id === null ? undefined : table[id];
  if (id === null || off === undefined || decimal(off.value).isZero()) return null;
  return (
    <tr>
      <th scope="row">{tax.name}: by rounding off its rate of the net</th>
      <td />
      <td className="numeric">
        <FigureValue id={id} />
      </td>
    </tr>
  );
}

/** What the paper says, frozen: lines, what was invoiced before, tax by rate, and what it comes to. */
export function DocumentSection({ document, title, worked, named }: DocumentSectionProps) {
  const hasLines = document.groups.length > 0 || document.deducted.length > 0;
  const rounding = taxRoundingWords(document);
  return (
    <Section title={title} note={document.what === '' ? document.title : document.what}>
      {document.note !== '' && <p className="money-note">{document.note}</p>}
      <RuledFrame label={`${title}, sums`}>
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
          <Totals document={document} worked={worked} named={named} />
        </table>
      </RuledFrame>
      {rounding.length > 0 && <p className="money-note">{rounding.join(' ')}</p>}
    </Section>
  );
}
