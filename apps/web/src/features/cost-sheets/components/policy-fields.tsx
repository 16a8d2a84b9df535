import { POLICY_KINDS, type PricePolicy } from '@scantling/costing';
import { FieldGroup } from '../../../components/field.tsx';
import { Select } from '../../../components/select.tsx';
import { TextInput } from '../../../components/text-input.tsx';
import { type FieldParts, fieldOf, inMoney } from './field-parts.ts';

const POLICY_WORDS: Readonly<Record<PricePolicy['kind'], { label: string; note: string }>> = {
  markup: { label: 'Markup on cost', note: 'cost of production and a share of it' },
  'markup-by-class': {
    label: 'Markup by class',
    note: 'another share on materials, labour, machines, the rest',
  },
  margin: { label: 'Margin', note: 'profit as a share of the price' },
  'hourly-earnings': { label: 'Hourly earnings', note: 'what each of your hours is to bring' },
  entered: { label: 'Entered price', note: 'a price you set, for each piece or for all' },
};
const POLICY_CHOICES = POLICY_KINDS.map((id) => ({ id, ...POLICY_WORDS[id] }));
const PRICE_FOR = [
  { id: 'piece', label: 'One piece', note: 'times the number of pieces' },
  { id: 'batch', label: 'All pieces together', note: 'the same at every number of pieces' },
];
const DIRECTIONS = [
  { id: 'up', label: 'Up to the next' },
  { id: 'nearest', label: 'To the nearest' },
];

function PolicyNumbers(parts: FieldParts) {
  const number = { isNumeric: true } as const;
  const percent = { ...number, suffix: '%' };
  switch (parts.draft.policy) {
    case 'markup':
      return (
        <TextInput label="Markup on cost" {...percent} {...fieldOf(parts, 'markup', 'terms.policy.markup')} />
      );
    case 'markup-by-class':
      return (
        <>
          <TextInput
            label="Markup on materials"
            {...percent}
            {...fieldOf(parts, 'materials', 'terms.policy.materials')}
          />
          <TextInput
            label="Markup on labour"
            {...percent}
            {...fieldOf(parts, 'labour', 'terms.policy.labour')}
          />
          <TextInput
            label="Markup on machines"
            {...percent}
            {...fieldOf(parts, 'machines', 'terms.policy.machines')}
          />
          <TextInput
            label="Markup on the rest"
            {...percent}
            {...fieldOf(parts, 'other', 'terms.policy.other')}
          />
        </>
      );
    case 'margin':
      return (
        <TextInput
          label="Margin on the price"
          {...percent}
          {...fieldOf(parts, 'margin', 'terms.policy.margin')}
        />
      );
    case 'hourly-earnings':
      return (
        <TextInput
          label="Earnings per hour"
          {...number}
          {...inMoney(parts)}
          {...fieldOf(parts, 'perHour', 'terms.policy.perHour')}
        />
      );
    case 'entered':
      return (
        <>
          <TextInput
            label={parts.draft.pricePer === 'piece' ? 'Price of one piece' : 'Price of all pieces together'}
            {...number}
            {...inMoney(parts)}
            {...fieldOf(parts, 'price', 'terms.policy.price')}
          />
          <Select
            label="The price is for"
            choices={PRICE_FOR}
            value={parts.draft.pricePer}
            error={parts.errorFor('terms.policy.per')}
            onChange={(id) => parts.onChange({ pricePer: id === 'piece' ? 'piece' : 'batch' })}
          />
        </>
      );
  }
}

/** How the price follows from the cost. */
export function PolicyFields(parts: FieldParts) {
  return (
    <FieldGroup legend="Price">
      <Select
        label="Price policy"
        choices={POLICY_CHOICES}
        value={parts.draft.policy}
        error={parts.errorFor('terms.policy.kind') ?? parts.errorFor('terms.policy')}
        onChange={(id) => {
          const policy = POLICY_KINDS.find((kind) => kind === id);
          if (policy) parts.onChange({ policy });
        }}
      />
      <PolicyNumbers {...parts} />
      <TextInput label="Discount" isNumeric suffix="%" {...fieldOf(parts, 'discount', 'terms.discount')} />
      <Select
        label="Rounding of the list price"
        choices={DIRECTIONS}
        value={parts.draft.stepDirection}
        onChange={(id) => parts.onChange({ stepDirection: id === 'up' ? 'up' : 'nearest' })}
      />
      <TextInput
        label="Rounding step"
        hint="Empty: to the smallest coin"
        isNumeric
        {...inMoney(parts)}
        {...fieldOf(parts, 'stepTo', 'terms.priceStep.to')}
      />
    </FieldGroup>
  );
}
