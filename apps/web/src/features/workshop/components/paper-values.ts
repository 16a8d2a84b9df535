import {
  type Letterhead,
  NUMBER_SERIES,
  type NumberSeries,
  type QuotingDefaults,
  TAX_CATEGORY_CODES,
  type TaxCategoryCode,
} from '@scantling/contracts';
import type { PictureValue } from '../../../components/picture-field.tsx';
import {
  type FormValues,
  linesOf,
  type RowValues,
  rowsOf,
  textOf,
} from '../../../components/record-editor/field-spec.ts';
import { addressInput, addressValues } from '../../../components/record-editor/postal-address.ts';
import { fromPercent, toPercent } from '../../../lib/percent.ts';

export const LETTERHEAD = 'settings.letterhead';
export const QUOTING = 'settings.quoting';
export const LOGO = `${LETTERHEAD}.logo`;

export function letterheadValues(letterhead: Letterhead): FormValues {
  const { address, bankLines, email, logo, ...texts } = letterhead;
  return {
    ...Object.fromEntries(Object.entries(texts).map(([name, text]) => [`${LETTERHEAD}.${name}`, text])),
    ...addressValues(`${LETTERHEAD}.address`, address),
    [`${LETTERHEAD}.email`]: email ?? '',
    [`${LETTERHEAD}.bankLines`]: bankLines.join('\n'),
    [`${LOGO}.sha256`]: logo?.sha256 ?? '',
    [`${LOGO}.alternativeText`]: logo?.alternativeText ?? '',
  };
}

/** The logo as the form holds it. */
export function logoOf(values: FormValues): PictureValue | null {
  const sha256 = textOf(values, `${LOGO}.sha256`);
  const alternativeText = values[`${LOGO}.alternativeText`];
  if (sha256 === '') return null;
  return { sha256, alternativeText: typeof alternativeText === 'string' ? alternativeText : '' };
}

export function withLogo(values: FormValues, logo: PictureValue | null): FormValues {
  return {
    ...values,
    [`${LOGO}.sha256`]: logo?.sha256 ?? '',
    [`${LOGO}.alternativeText`]: logo?.alternativeText ?? '',
  };
}

export function letterheadInput(values: FormValues): Letterhead {
  const typed = (name: string) => textOf(values, `${LETTERHEAD}.${name}`);
  const email = typed('email');
  return {
    tradingName: typed('tradingName'),
    address: addressInput(`${LETTERHEAD}.address`, values),
    email: email === '' ? null : email,
    phone: typed('phone'),
    website: typed('website'),
    taxNumber: typed('taxNumber'),
    registration: typed('registration'),
    bankLines: linesOf(values, `${LETTERHEAD}.bankLines`),
    footer: typed('footer'),
    logo: logoOf(values),
    paperSize: typed('paperSize') === 'letter' ? 'letter' : 'a4',
  };
}

export function quotingValues(quoting: QuotingDefaults): FormValues {
  return {
    [`${QUOTING}.validityDays`]: String(quoting.validityDays),
    [`${QUOTING}.paymentDays`]: String(quoting.paymentDays),
    [`${QUOTING}.priceMode`]: quoting.priceMode,
    [`${QUOTING}.terms`]: quoting.terms,
    [`${QUOTING}.depositShares`]: quoting.depositShares.map(({ label, share }) => ({
      label,
      share: toPercent(share),
    })),
    [`${QUOTING}.taxCategories`]: quoting.taxCategories.map((category) => ({
      ...category,
      rate: toPercent(category.rate),
    })),
    ...Object.fromEntries(
      NUMBER_SERIES.map((series) => [`${QUOTING}.numberPatterns.${series}`, quoting.numberPatterns[series]]),
    ),
  };
}

const cell = (row: RowValues, name: string): string => {
  const value = row[name];
  return typeof value === 'string' ? value.trim() : '';
};

function isCategoryCode(text: string): text is TaxCategoryCode {
  return TAX_CATEGORY_CODES.some((code) => code === text);
}

/** The id a category keeps for good: the one it has, or one made of its name that no other has. */
function categoryId(row: RowValues, taken: ReadonlySet<string>): string {
  const kept = cell(row, 'id');
  if (kept !== '') return kept;
  const made = cell(row, 'name')
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 30);
  const start = made === '' ? 'tax' : made;
  for (let number = 1; ; number += 1) {
    const id = number === 1 ? start : `${start}-${number}`;
    if (!taken.has(id)) return id;
  }
}

function taxCategoriesInput(values: FormValues): QuotingDefaults['taxCategories'] {
  const rows = rowsOf(values, `${QUOTING}.taxCategories`);
  const taken = new Set(rows.map((row) => cell(row, 'id')));
  return rows.map((row) => {
    const id = categoryId(row, taken);
    taken.add(id);
    const category = cell(row, 'category');
    return {
      id,
      name: cell(row, 'name'),
      category: isCategoryCode(category) ? category : 'S',
      rate: fromPercent(cell(row, 'rate')),
      exemptionReason: cell(row, 'exemptionReason'),
    };
  });
}

/** A whole number as typed; what is none goes out as it is, for the server to name. */
const days = (text: string): number => (text === '' ? Number.NaN : Number(text));

export function quotingInput(values: FormValues): QuotingDefaults {
  const typed = (name: string) => textOf(values, `${QUOTING}.${name}`);
  const pattern = (series: NumberSeries) => typed(`numberPatterns.${series}`);
  return {
    validityDays: days(typed('validityDays')),
    paymentDays: days(typed('paymentDays')),
    priceMode: typed('priceMode') === 'inclusive' ? 'inclusive' : 'exclusive',
    terms: typed('terms'),
    depositShares: rowsOf(values, `${QUOTING}.depositShares`).map((row) => ({
      label: cell(row, 'label'),
      share: fromPercent(cell(row, 'share')),
    })),
    taxCategories: taxCategoriesInput(values),
    numberPatterns: {
      quote: pattern('quote'),
      invoice: pattern('invoice'),
      'credit-note': pattern('credit-note'),
      receipt: pattern('receipt'),
      'delivery-note': pattern('delivery-note'),
    },
  };
}
