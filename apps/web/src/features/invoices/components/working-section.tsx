import { Section } from '../../../components/sheet.tsx';
import { mergedId } from '../../figures/merge-tables.ts';
import type { Invoice } from '../api/get-invoice.ts';
import { BalanceRow } from './balance-row.tsx';
import { TaxCaution } from './tax-caution.tsx';

/** How the paper was worked out, frozen with it. */
export function WorkingSection({ invoice }: { readonly invoice: Invoice }) {
  const { whole, before, left, own } = invoice.working;
  const isCredit = invoice.kind === 'credit-note';
  const named = (id: string): string => mergedId('working', id);
  return (
    <Section title="How it was worked out" note="with tax; frozen when it was issued">
      <BalanceRow
        label="How it was worked out, sums"
        sums={[
          { label: isCredit ? 'Invoiced' : 'Agreed in all', figure: named(whole.total) },
          { label: isCredit ? 'Credited before' : 'Invoiced before', figure: named(before.total) },
          { label: isCredit ? 'Left to credit' : 'Left to invoice', figure: named(left.total) },
          { label: isCredit ? 'This credit note' : 'This invoice', figure: named(own.total) },
        ]}
      />
      <TaxCaution of={isCredit ? 'credit-note' : 'invoice'} />
    </Section>
  );
}
