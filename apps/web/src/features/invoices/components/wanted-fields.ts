import { type FormValues, type GroupSpec, textOf } from '../../../components/record-editor/field-spec.ts';
import { fromPercent, plainDecimal } from '../../../lib/percent.ts';
import type { ScheduledPayment } from '../api/get-statement.ts';
import type { InvoiceWanted } from '../api/work-out-invoice.ts';

const isPart = (values: FormValues): boolean => textOf(values, 'kind') === 'part';
const takes = (of: 'share' | 'amount') => (values: FormValues) =>
  isPart(values) && textOf(values, 'of.kind') === of;

/** What an invoice says besides its sums, and for a part of the work how much of it. */
export function wantedGroups(schedule: readonly ScheduledPayment[], currency: string): readonly GroupSpec[] {
  return [
    {
      legend: 'Which invoice',
      fields: [
        {
          kind: 'choice',
          name: 'kind',
          label: 'Invoice',
          choices: [
            ...schedule
              .filter(({ invoiceId }) => invoiceId === null)
              .map((payment) => ({
                id: scheduledId(payment),
                label: `As agreed: ${payment.label}`,
                note: payment.number,
              })),
            { id: 'part', label: 'A part of the work' },
            { id: 'final', label: 'All that is left, final' },
          ],
        },
        {
          kind: 'choice',
          name: 'of.kind',
          label: 'How much',
          choices: [
            { id: 'share', label: 'a share of the contract' },
            { id: 'amount', label: 'an amount with tax' },
          ],
          isShown: isPart,
        },
        { kind: 'decimal', name: 'of.share', label: 'Share', suffix: '%', isShown: takes('share') },
        {
          kind: 'decimal',
          name: 'of.amount',
          label: 'Amount with tax',
          suffix: currency,
          isShown: takes('amount'),
        },
      ],
    },
    {
      legend: 'What it says',
      fields: [
        { kind: 'date', name: 'suppliedOn', label: 'Handed over on', hint: 'where it was or will be' },
        { kind: 'date', name: 'dueOn', label: 'To be paid by', hint: 'Empty: your days of payment.' },
        { kind: 'text', name: 'orderNumber', label: 'The client’s order number' },
        { kind: 'lines', name: 'note', label: 'Note', isWide: true },
      ],
    },
  ];
}

export function scheduledId({ revisionId, partId }: ScheduledPayment): string {
  return `${revisionId} ${partId}`;
}

export const FRESH_WANTED: FormValues = {
  kind: 'final',
  'of.kind': 'share',
  'of.share': '',
  'of.amount': '',
  suppliedOn: '',
  dueOn: '',
  orderNumber: '',
  note: '',
};

/** What the form asks for; what cannot be read goes to the server to be named. */
export function wantedOf(values: FormValues): InvoiceWanted {
  const dueOn = textOf(values, 'dueOn');
  const common = {
    suppliedOn: textOf(values, 'suppliedOn') || null,
    ...(dueOn === '' ? {} : { dueOn }),
    orderNumber: textOf(values, 'orderNumber'),
    note: textOf(values, 'note'),
  };
  const kind = textOf(values, 'kind');
  if (kind === 'final') return { kind, ...common };
  if (kind === 'part')
    return {
      kind,
      of:
        textOf(values, 'of.kind') === 'share'
          ? { kind: 'share', share: fromPercent(textOf(values, 'of.share')) }
          : { kind: 'amount', amount: plainDecimal(textOf(values, 'of.amount')) },
      ...common,
    };
  const [revisionId = '', partId = ''] = kind.split(' ');
  return { kind: 'deposit', revisionId, partId, ...common };
}
