import { type InvoiceWantedGiven, toInvoiceWanted, type Workshop } from '@scantling/contracts';
import { decimal, formatPercent } from '@scantling/decimals';
import {
  type AgreedPart,
  type BilledGroup,
  type DeductedPaper,
  type InvoiceDocument,
  type IssuedPaper,
  orderedLines,
  statedRows,
  type WorkedInvoice,
  workOutInvoice,
} from '@scantling/quoting';
import { fieldProblem } from '../../problems/request-problem.ts';
import { daysAfter, documentWorkshop } from '../quotes/client-facts.ts';
import type { BilledContract } from './billing-records.ts';

/** Who is billed, as the record says on the day. */
export function billedClient({ client }: BilledContract['quote']): InvoiceDocument['client'] {
  const { name, addressLines, taxNumber } = client;
  return { name, addressLines, taxNumber };
}

function whatOf(wanted: InvoiceWantedGiven, parts: readonly AgreedPart[]): string {
  if (wanted.kind === 'deposit') {
    const scheduled = parts
      .find(({ id }) => id === wanted.revisionId)
      ?.document.schedule.find(({ id }) => id === wanted.partId);
    return scheduled === undefined
      ? ''
      : `${scheduled.label}, ${formatPercent(scheduled.share, 3)} of the total`;
  }
  if (wanted.kind === 'final') return 'All that was ordered, less what was invoiced before';
  return wanted.of.kind === 'share'
    ? `Part of the order, ${formatPercent(wanted.of.share, 3)} of the total`
    : 'Part of the order';
}

function groupOf(part: AgreedPart): BilledGroup {
  const { document, totals } = part;
  return {
    number: document.number,
    kind: document.kind,
    priceMode: document.priceMode,
    lines: orderedLines(part).map(
      ({ id, kind, description, details, quantity, unit, price, priceBase, amount }) => ({
        id,
        kind,
        description,
        details,
        quantity,
        unit,
        price,
        priceBase,
        amount,
      }),
    ),
    sumOfLines: totals.sumOfLines,
    discount: totals.discount,
  };
}

function deductedOf({ kind, number, issuedOn, taxes, total }: IssuedPaper): DeductedPaper {
  const sign = kind === 'credit-note' ? -1 : 1;
  const add = (values: readonly string[]) =>
    values
      .reduce((sum, value) => sum.plus(value), decimal(0))
      .times(sign)
      .toString();
  return {
    kind,
    number,
    issuedOn,
    net: add(taxes.map(({ net }) => net)),
    tax: add(taxes.map(({ taxAmount }) => taxAmount)),
    total: add([total]),
  };
}

const valuesOf = ({ net, tax, total }: WorkedInvoice['own'] | WorkedInvoice['contract']) => ({
  net: net.value.toString(),
  tax: tax.value.toString(),
  total: total.value.toString(),
});

/**
 * What an invoice says, but for its number, with the figures behind it.
 * @throws QuotingInputError where it cannot be; RequestProblem input-invalid for a day of payment before today
 */
export function draftInvoice(
  contract: BilledContract,
  wanted: InvoiceWantedGiven,
  { workshop, today }: { workshop: Workshop; today: string },
): { document: InvoiceDocument; worked: WorkedInvoice } {
  const { quote, parts, before, currency } = contract;
  const dueOn = wanted.dueOn ?? daysAfter(today, workshop.settings.quoting.paymentDays);
  if (dueOn < today) throw fieldProblem('dueOn', 'is past already', `Name ${today} or a later day.`);
  const worked = workOutInvoice({ currency, parts, before, wanted: toInvoiceWanted(wanted) });
  const isFinal = wanted.kind === 'final';
  return {
    worked,
    document: {
      kind: wanted.kind,
      number: '',
      issuedOn: today,
      suppliedOn: wanted.suppliedOn,
      dueOn,
      workshop: documentWorkshop(workshop),
      client: billedClient(quote),
      orderNumber: wanted.orderNumber,
      quoteNumber: quote.number ?? '',
      title: quote.title,
      what: whatOf(wanted, parts),
      note: wanted.note,
      currency,
      groups: isFinal ? parts.map(groupOf) : [],
      contract: isFinal ? { taxes: statedRows(worked.contract.rows), ...valuesOf(worked.contract) } : null,
      deducted: isFinal ? before.map(deductedOf) : [],
      taxes: statedRows(worked.own.rows),
      ...valuesOf(worked.own),
      credits: null,
    },
  };
}
