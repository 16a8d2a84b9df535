import { useQuery } from '@tanstack/react-query';
import { ComboBox } from '../../../components/combo-box.tsx';
import { FieldGroup } from '../../../components/field.tsx';
import { Select } from '../../../components/select.tsx';
import { TextInput } from '../../../components/text-input.tsx';
import { clientChoicesQuery } from '../api/list-clients.ts';
import { designChoicesQuery } from '../api/list-designs.ts';
import { type FieldParts, fieldOf, inMoney } from './field-parts.ts';

const BASES = [
  { id: 'shop', label: 'Shop', note: 'charged what it uses, leftovers go back to stock' },
  { id: 'commission', label: 'Commission', note: 'charged all that is bought for it' },
];

const OVERHEAD_CHOICES = [
  { id: 'planned', label: 'As planned', note: "the year's plan over its planned hours or cost" },
  { id: 'actual', label: 'As it went', note: 'what was spent over the hours or cost there were' },
];

/** What is costed, for whom, at which prices and numbers of pieces. */
export function SheetFields(parts: FieldParts) {
  const { draft, onChange, errorFor } = parts;
  const designs = useQuery(designChoicesQuery);
  const clients = useQuery(clientChoicesQuery);
  return (
    <FieldGroup legend="What is costed">
      <TextInput label="Title" {...fieldOf(parts, 'title', 'title')} />
      <ComboBox
        key={designs.isSuccess ? 'designs' : 'no-designs'}
        label="Design"
        choices={designs.data ?? []}
        value={draft.designId}
        onChange={(designId) => onChange({ designId })}
        error={errorFor('designId')}
        hint={designs.isError ? 'The designs could not be read.' : undefined}
      />
      <ComboBox
        key={clients.isSuccess ? 'clients' : 'no-clients'}
        label="Client"
        choices={clients.data ?? []}
        value={draft.clientId}
        onChange={(clientId) => onChange({ clientId })}
        error={errorFor('clientId')}
        hint={clients.isError ? 'The clients could not be read.' : 'Empty: for nobody in particular'}
      />
      <Select
        label="Basis"
        choices={BASES}
        value={draft.basis}
        onChange={(id) => onChange({ basis: id === 'shop' ? 'shop' : 'commission' })}
        error={errorFor('basis')}
      />
      <TextInput
        label="Prices of"
        type="date"
        hint="Empty: today, whenever it is read"
        {...fieldOf(parts, 'onDate', 'onDate')}
      />
      <TextInput
        label="Promised for"
        type="date"
        hint="Empty: no day is promised yet"
        {...fieldOf(parts, 'promisedDate', 'terms.promisedDate')}
      />
      <Select
        label="Overhead"
        choices={OVERHEAD_CHOICES}
        value={draft.overheadAt}
        onChange={(id) => onChange({ overheadAt: id === 'actual' ? 'actual' : 'planned' })}
        error={errorFor('terms.overheadAt')}
      />
      <TextInput
        label="Quantities"
        hint="Numbers of pieces side by side: 1, 2, 5"
        {...fieldOf(parts, 'quantities', 'quantities')}
      />
    </FieldGroup>
  );
}

/** Costs and hours of the whole order that no bill of materials holds. */
export function OrderFields(parts: FieldParts) {
  const hours = { isNumeric: true, suffix: 'h' } as const;
  return (
    <FieldGroup legend="Once per order">
      <TextInput
        label="Freight to the client"
        isNumeric
        {...inMoney(parts)}
        {...fieldOf(parts, 'freight', 'terms.freight')}
      />
      <TextInput
        label="Contingency"
        isNumeric
        suffix="%"
        {...fieldOf(parts, 'contingency', 'terms.contingency')}
      />
      <TextInput label="Quoting" {...hours} {...fieldOf(parts, 'quotingHours', 'terms.quotingHours')} />
      <TextInput label="Buying" {...hours} {...fieldOf(parts, 'buyingHours', 'terms.buyingHours')} />
      <TextInput label="Delivery" {...hours} {...fieldOf(parts, 'deliveryHours', 'terms.deliveryHours')} />
    </FieldGroup>
  );
}
