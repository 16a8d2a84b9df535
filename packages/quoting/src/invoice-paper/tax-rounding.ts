import { decimal } from '@scantling/decimals';
import { type InvoiceDocument, offNetRule } from '../invoice/index.ts';
import type { PaperSection, PaperWriters } from '../paper/index.ts';
import { billingWriters } from './billing-paper.ts';

type Off = ReturnType<typeof offNetRule>[number];

function said({ row, by }: Off, where: string, writers: PaperWriters): string {
  const off = decimal(by);
  const tax = writers.money(row.taxAmount);
  const of = `${writers.percent(row.rate)} of ${writers.money(row.net)}`;
  return `${row.name}${where}: the tax of ${tax} is ${writers.money(off.abs())} ${off.gt(0) ? 'more' : 'less'} than ${of}.`;
}

function whyOwn({ kind, deducted, groups }: InvoiceDocument): string {
  if (kind === 'credit-note')
    return 'An amount with tax is given back; its tax was taken out of it, and net and tax were each rounded.';
  if (kind !== 'final')
    return 'The amount with tax was agreed; its tax was taken out of it, and net and tax were each rounded.';
  if (deducted.length > 0)
    return 'Order and earlier invoices were each rounded on their own; all invoices together come to the tax of the order.';
  return whyContract({ groups });
}

function whyContract({ groups }: Pick<InvoiceDocument, 'groups'>): string {
  return groups.length > 1
    ? 'The quote and its additions were accepted one by one, and the tax of each was rounded on its own.'
    : 'The prices hold the tax: it was taken out of them, and net and tax were each rounded.';
}

/** Where a tax is not its rate of the net to the last digit, by how much and why; empty where all are. */
export function taxRoundingWords(document: InvoiceDocument): string[] {
  const { contract, taxes, currency, deducted } = document;
  const writers = billingWriters(document);
  const isRest = contract !== null && deducted.length > 0;
  const whole = isRest ? offNetRule(contract.taxes, currency) : [];
  const own = offNetRule(taxes, currency);
  return [
    ...whole.map((off) => said(off, ', the whole order', writers)),
    ...(whole.length === 0 ? [] : [whyContract(document)]),
    ...own.map((off) => said(off, isRest ? ', what is left' : '', writers)),
    ...(own.length === 0 ? [] : [whyOwn(document)]),
  ];
}

export function taxRoundingSection(document: InvoiceDocument): PaperSection[] {
  const paragraphs = taxRoundingWords(document);
  return paragraphs.length === 0 ? [] : [{ heading: 'How the tax is rounded', paragraphs }];
}
