import { taxCategorySchema } from '@scantling/contracts';
import { Button } from '../../../components/button.tsx';
import { FieldGroup, type FieldMessage } from '../../../components/field.tsx';
import { Select } from '../../../components/select.tsx';
import { TextInput } from '../../../components/text-input.tsx';
import { fromPercent, toPercent } from '../../../lib/percent.ts';
import { TAX_CATEGORY_WORDS } from '../../../lib/tax-category-words.ts';
import { cell } from './line-cells.ts';
import { freshPart, type PartForm, type QuoteForm } from './quote-form.ts';
import './quote.css';

interface TermsProps {
  readonly form: QuoteForm;
  readonly onChange: (part: Partial<QuoteForm>) => void;
  readonly errorFor: (field: string) => FieldMessage | undefined;
}

const PRICE_MODES = [
  { id: 'exclusive', label: 'Without tax', note: 'tax is added' },
  { id: 'inclusive', label: 'With tax', note: 'tax is taken out of them' },
];
const DISCOUNTS = [
  { id: 'none', label: 'None' },
  { id: 'share', label: 'A share of the lines' },
  { id: 'amount', label: 'An amount' },
];
const DUE = [
  { id: 'on-acceptance', label: 'On acceptance' },
  { id: 'during-work', label: 'While the work goes on' },
  { id: 'on-delivery', label: 'On delivery' },
  { id: 'after-delivery', label: 'After delivery' },
];
const dueOf = (id: string): PartForm['due'] =>
  id === 'on-acceptance' || id === 'on-delivery' || id === 'after-delivery' ? id : 'during-work';

/** Prices, discount, day and validity. */
export function PriceTerms({ form, onChange, errorFor }: TermsProps) {
  return (
    <FieldGroup>
      <Select
        label="Prices"
        choices={PRICE_MODES}
        value={form.priceMode}
        onChange={(id) => onChange({ priceMode: id === 'inclusive' ? 'inclusive' : 'exclusive' })}
      />
      <Select
        label="Discount"
        choices={DISCOUNTS}
        value={form.discountKind}
        onChange={(id) => onChange({ discountKind: id === 'share' || id === 'amount' ? id : 'none' })}
      />
      {form.discountKind !== 'none' && (
        <TextInput
          label={form.discountKind === 'share' ? 'Discount in percent' : 'Discount taken off'}
          isNumeric
          suffix={form.discountKind === 'share' ? '%' : form.currency}
          value={form.discount}
          onChange={(discount) => onChange({ discount })}
          error={errorFor('discount.share') ?? errorFor('discount.amount')}
        />
      )}
      <TextInput
        label="Promised for"
        type="date"
        value={form.promisedOn}
        onChange={(promisedOn) => onChange({ promisedOn })}
        error={errorFor('promisedOn')}
      />
      <TextInput
        label="Days it holds"
        isNumeric
        hint="From the day it is sent"
        value={form.validDays}
        onChange={(validDays) => onChange({ validDays })}
        error={errorFor('validDays')}
      />
    </FieldGroup>
  );
}

/** The parts the total is paid in; without any it is one sum. */
export function ScheduleFields({ form, onChange, errorFor }: TermsProps) {
  const { schedule } = form;
  const put = (at: number, part: Partial<PartForm>): void =>
    onChange({ schedule: schedule.map((one, place) => (place === at ? { ...one, ...part } : one)) });
  const whole = errorFor('schedule');
  return (
    <div className="quote-fields">
      {schedule.map((part, at) => (
        <FieldGroup key={part.id} legend={`Part ${at + 1}`}>
          <TextInput
            label="What for"
            value={part.label}
            onChange={(label) => put(at, { label })}
            error={errorFor(`schedule.${at}.label`)}
          />
          <TextInput
            label="Share of the total with tax"
            isNumeric
            suffix="%"
            value={part.share}
            onChange={(share) => put(at, { share })}
            error={errorFor(`schedule.${at}.share`)}
          />
          <Select label="Due" choices={DUE} value={part.due} onChange={(id) => put(at, { due: dueOf(id) })} />
          <div className="field-act">
            <Button onPress={() => onChange({ schedule: schedule.filter((_, place) => place !== at) })}>
              Take part {at + 1} out
            </Button>
          </div>
        </FieldGroup>
      ))}
      {whole && (
        <p className="field-error">
          The parts: {whole.message} {whole.mend}
        </p>
      )}
      <div>
        <Button onPress={() => onChange({ schedule: [...schedule, freshPart()] })}>Add a part</Button>
      </div>
    </div>
  );
}

type Tax = QuoteForm['taxes'][number];
const CATEGORIES = taxCategorySchema.shape.category.options;

/** The taxes lines can fall under, as this quote has them. */
export function TaxFields({ form, onChange, errorFor }: TermsProps) {
  const { taxes, lines } = form;
  const put = (at: number, part: Partial<Tax>): void =>
    onChange({ taxes: taxes.map((one, place) => (place === at ? { ...one, ...part } : one)) });
  const newTax = (): Tax => ({
    id: `tax-${taxes.length + 1}-${taxes.map(({ id }) => id.length).reduce((sum, length) => sum + length, 0)}`,
    name: '',
    category: 'S',
    rate: '',
    exemptionReason: '',
  });
  return (
    <div className="quote-fields">
      {taxes.map((tax, at) => (
        <FieldGroup key={tax.id} legend={tax.name || `Tax ${at + 1}`}>
          <TextInput
            label="Name"
            value={tax.name}
            onChange={(name) => put(at, { name })}
            error={errorFor(`taxes.${at}.name`)}
          />
          <Select
            label="Category"
            choices={CATEGORIES.map((id) => ({ id, label: TAX_CATEGORY_WORDS[id] }))}
            value={tax.category}
            onChange={(category) => put(at, { category })}
          />
          <TextInput
            label="Rate"
            isNumeric
            suffix="%"
            value={toPercent(tax.rate)}
            onChange={(rate) => put(at, { rate: fromPercent(rate) })}
            error={errorFor(`taxes.${at}.rate`)}
          />
          <TextInput
            label="Why no tax is charged"
            value={tax.exemptionReason}
            onChange={(exemptionReason) => put(at, { exemptionReason })}
            error={errorFor(`taxes.${at}.exemptionReason`)}
          />
          <div className="field-act">
            <Button
              isDisabled={taxes.length === 1 || lines.some((line) => cell(line, 'tax') === tax.id)}
              onPress={() => onChange({ taxes: taxes.filter((_, place) => place !== at) })}
            >
              {lines.some((line) => cell(line, 'tax') === tax.id) ? 'Lines fall under it' : 'Take it out'}
            </Button>
          </div>
        </FieldGroup>
      ))}
      <div>
        <Button onPress={() => onChange({ taxes: [...taxes, newTax()] })}>Add a tax</Button>
      </div>
    </div>
  );
}
