import './invoice.css';

/** What the sums are, and who has the last word on tax. */
export function TaxCaution({ of }: { readonly of: 'invoice' | 'credit-note' }) {
  return (
    <p className="money-note">
      The sums are arithmetic on what was agreed.{' '}
      {of === 'invoice'
        ? 'What an invoice has to say, and whether tax falls due with a deposit,'
        : 'When tax may be taken back, and what a credit note has to say,'}{' '}
      differs by country: local law comes first, and your accountant knows it.
    </p>
  );
}
