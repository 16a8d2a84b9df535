import type { BodyOf, createSupplier, Supplier } from '@scantling/contracts';
import { CURRENCIES } from '@scantling/money';
import {
  type FormValues,
  type GroupSpec,
  isTicked,
  textOf,
} from '../../../components/record-editor/field-spec.ts';
import { fromPercent, optionalDecimal, toPercent } from '../../../lib/percent.ts';
import type { Draft } from '../../../lib/record-calls.ts';

const CHOICES = CURRENCIES.map((code) => ({ id: code, label: code }));

/** The supplier's fields; amounts are in the supplier's currency. */
export function supplierGroups(values: FormValues): readonly GroupSpec[] {
  const currency = textOf(values, 'currency');
  return [
    {
      legend: 'Who',
      fields: [
        {
          name: 'code',
          label: 'Code',
          kind: 'text',
          isRequired: true,
          hint: 'Short and unique, such as YARD',
        },
        { name: 'name', label: 'Name', kind: 'text', isRequired: true, isWide: true },
        { name: 'currency', label: 'Currency', kind: 'search', choices: CHOICES, isRequired: true },
      ],
    },
    {
      legend: 'Terms, where a list says nothing else',
      fields: [
        { name: 'taxIncluded', label: 'Prices include tax', kind: 'check' },
        { name: 'taxRate', label: 'Tax on purchases', kind: 'decimal', suffix: '%' },
        {
          name: 'taxRecoverable',
          label: 'Of that tax, got back',
          kind: 'decimal',
          suffix: '%',
          hint: '100 where the workshop reclaims it all',
        },
        { name: 'minimumOrder', label: 'Minimum order', kind: 'decimal', suffix: currency },
        { name: 'freightPerOrder', label: 'Freight per order', kind: 'decimal', suffix: currency },
        { name: 'leadDays', label: 'Lead time', kind: 'decimal', suffix: 'days' },
      ],
    },
    { fields: [{ name: 'notes', label: 'Notes', kind: 'lines' }] },
  ];
}

/** @param currency of the workshop, which a new supplier starts with */
export function supplierValues(supplier: Supplier | null, currency = ''): FormValues {
  return {
    code: supplier?.code ?? '',
    name: supplier?.name ?? '',
    currency: supplier?.currency ?? currency,
    taxIncluded: supplier?.taxIncluded ?? false,
    taxRate: toPercent(supplier?.taxRate ?? '0'),
    taxRecoverable: toPercent(supplier?.taxRecoverable ?? '1'),
    minimumOrder: supplier?.minimumOrder ?? '',
    freightPerOrder: supplier?.freightPerOrder ?? '',
    leadDays: supplier?.leadDays?.toString() ?? '',
    notes: supplier?.notes ?? '',
  };
}

export function supplierInput(values: FormValues): Draft<BodyOf<typeof createSupplier>> {
  const leadDays = textOf(values, 'leadDays');
  return {
    code: textOf(values, 'code'),
    name: textOf(values, 'name'),
    currency: textOf(values, 'currency'),
    taxIncluded: isTicked(values, 'taxIncluded'),
    taxRate: fromPercent(textOf(values, 'taxRate')),
    taxRecoverable: fromPercent(textOf(values, 'taxRecoverable')),
    minimumOrder: optionalDecimal(textOf(values, 'minimumOrder')),
    freightPerOrder: optionalDecimal(textOf(values, 'freightPerOrder')),
    // What is no whole number goes as it is, for the server to name.
    leadDays: leadDays === '' ? null : /^\d{1,9}$/.test(leadDays) ? Number(leadDays) : leadDays,
    notes: textOf(values, 'notes'),
  };
}
