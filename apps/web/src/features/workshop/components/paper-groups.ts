import { NUMBER_SERIES, type NumberSeries, writeNumber } from '@scantling/contracts';
import {
  type FieldSpec,
  type FormValues,
  type GroupSpec,
  textOf,
} from '../../../components/record-editor/field-spec.ts';
import { countryField } from '../../../components/record-editor/postal-address.ts';
import { TAX_CATEGORY_WORDS } from '../../../lib/tax-category-words.ts';
import { LETTERHEAD, QUOTING } from './paper-values.ts';
import { choicesOf } from './workshop-words.ts';

const SERIES_WORDS: Readonly<Record<NumberSeries, string>> = {
  quote: 'Quotes',
  invoice: 'Invoices',
  'credit-note': 'Credit notes',
  receipt: 'Receipts',
  'delivery-note': 'Delivery notes',
};

const WIDE = ['tradingName', 'website', 'registration', 'footer'];

const field = (name: string, label: string, hint?: string): FieldSpec => ({
  name: `${LETTERHEAD}.${name}`,
  label,
  kind: 'text',
  isWide: WIDE.includes(name),
  ...(hint === undefined ? {} : { hint }),
});

/** What stands on every paper besides its content. */
export function letterheadGroups(workshopName: string): readonly GroupSpec[] {
  return [
    {
      legend: 'Who writes',
      fields: [
        field('tradingName', 'Trading name', `Empty: ${workshopName}`),
        {
          name: `${LETTERHEAD}.address.lines`,
          label: 'Address',
          kind: 'lines',
          hint: 'As on an envelope, below the name',
        },
        countryField(`${LETTERHEAD}.address`),
        {
          name: `${LETTERHEAD}.email`,
          label: 'E-mail address',
          kind: 'email',
          isWide: true,
          hint: 'Answers to mails of the program go here',
        },
        field('phone', 'Telephone'),
        field('website', 'Web site'),
      ],
    },
    {
      legend: 'What the law and the bank want to see',
      fields: [
        field('taxNumber', 'Tax number', 'Ask your accountant what must stand on papers'),
        field('registration', 'Registration', 'Entry in a register, where there is one'),
        {
          name: `${LETTERHEAD}.bankLines`,
          label: 'Where to pay',
          kind: 'lines',
          hint: 'Bank and account, line by line',
        },
      ],
    },
    {
      legend: 'The sheet of paper',
      fields: [
        {
          name: `${LETTERHEAD}.paperSize`,
          label: 'Paper',
          kind: 'choice',
          choices: [
            { id: 'a4', label: 'A4, 210 × 297 mm' },
            { id: 'letter', label: 'Letter, 8 1/2 × 11 in' },
          ],
        },
        field('footer', 'Last line of every page'),
      ],
    },
  ];
}

function numberField(series: NumberSeries, values: FormValues, year: number): FieldSpec {
  const name = `${QUOTING}.numberPatterns.${series}`;
  const pattern = textOf(values, name);
  const isWritten = /\{0+\}/.test(pattern);
  return {
    name,
    label: SERIES_WORDS[series],
    kind: 'text',
    ...(isWritten ? { hint: `The first one: ${writeNumber(pattern, { year, count: 1 })}` } : {}),
  };
}

/** What a new quote starts with. */
export function quotingGroups(values: FormValues, year: number): readonly GroupSpec[] {
  return [
    {
      legend: 'Time and money',
      fields: [
        { name: `${QUOTING}.validityDays`, label: 'A quote holds for', kind: 'decimal', suffix: 'days' },
        { name: `${QUOTING}.paymentDays`, label: 'Invoices are due in', kind: 'decimal', suffix: 'days' },
        {
          name: `${QUOTING}.priceMode`,
          label: 'Prices',
          kind: 'choice',
          choices: choicesOf({ exclusive: 'Tax comes on top', inclusive: 'Tax is contained' }),
        },
        {
          name: `${QUOTING}.depositShares`,
          label: 'Deposits',
          kind: 'rows',
          hint: 'Shares of the total with tax; the rest falls due at the end',
          cells: [
            { name: 'label', label: 'Due', kind: 'text', isRequired: true, isWide: true },
            { name: 'share', label: 'Share', kind: 'decimal', suffix: '%', isRequired: true },
          ],
          fresh: { label: '', share: '' },
          addText: 'Add a deposit',
        },
      ],
    },
    {
      legend: 'Tax',
      fields: [
        {
          name: `${QUOTING}.taxCategories`,
          label: 'Tax categories',
          kind: 'rows',
          hint: 'New lines start with the first. Which tax applies is for the law to say: ask your accountant.',
          cells: [
            { name: 'name', label: 'Name', kind: 'text', isRequired: true },
            { name: 'category', label: 'Category', kind: 'choice', choices: choicesOf(TAX_CATEGORY_WORDS) },
            { name: 'rate', label: 'Rate', kind: 'decimal', suffix: '%', isRequired: true },
            {
              name: 'exemptionReason',
              label: 'Why no tax is charged',
              kind: 'text',
              isWide: true,
              hint: 'Printed; for all but S and Z',
            },
          ],
          fresh: { id: '', name: '', category: 'S', rate: '', exemptionReason: '' },
          addText: 'Add a tax category',
        },
      ],
    },
    {
      legend: 'Numbers: {0000} counts, {year} is the year, with which counting begins anew',
      fields: NUMBER_SERIES.map((series) => numberField(series, values, year)),
    },
    {
      legend: 'Terms',
      fields: [
        {
          name: `${QUOTING}.terms`,
          label: 'Terms at the foot of a quote',
          kind: 'lines',
          isWide: true,
          hint: 'Blank lines part paragraphs. Have a lawyer read what you rely on.',
        },
      ],
    },
  ];
}
