import type { QuoteDraft } from '@scantling/quoting';
import { Button } from '../../../components/button.tsx';
import { Checkbox } from '../../../components/checkbox.tsx';
import type { Choice } from '../../../components/choice-list.tsx';
import { ComboBox } from '../../../components/combo-box.tsx';
import { FieldGroup, type FieldMessage } from '../../../components/field.tsx';
import { Select } from '../../../components/select.tsx';
import { TextInput } from '../../../components/text-input.tsx';
import { PicturesField } from './pictures-field.tsx';
import type { LineForm } from './quote-form.ts';
import './quote.css';
import '../../../components/record-editor/record-editor.css';

interface LineFormProps {
  readonly line: LineForm;
  readonly taxes: QuoteDraft['taxes'];
  readonly sheets: readonly Choice[];
  readonly currency: string;
  readonly priceMode: QuoteDraft['priceMode'];
  readonly onChange: (part: Partial<LineForm>) => void;
  readonly onRemove: () => void;
  /** By the field's name within the line. */
  readonly errorFor: (field: string) => FieldMessage | undefined;
}

const TAKEN = [
  { id: 'included', label: 'Always', note: 'part of the offer' },
  { id: 'option', label: 'If the client wants it', note: 'an option' },
  { id: 'alternate', label: 'One of several', note: 'the client takes one of its group' },
];

function PriceFields({ line, currency, priceMode, onChange, errorFor }: LineFormProps) {
  return (
    <>
      {line.kind === 'free' && (
        <>
          <TextInput
            label="Number"
            isNumeric
            value={line.quantity}
            onChange={(quantity) => onChange({ quantity })}
            error={errorFor('quantity')}
          />
          <TextInput
            label="Unit"
            hint="As the client reads it: piece, m, h"
            value={line.unit}
            onChange={(unit) => onChange({ unit })}
            error={errorFor('unit')}
          />
        </>
      )}
      <TextInput
        label={line.kind === 'free' ? 'Price of one' : 'Price'}
        isNumeric
        suffix={currency}
        hint={
          priceMode === 'inclusive' ? 'With tax; -50 for a deduction' : 'Without tax; -50 for a deduction'
        }
        value={line.price}
        onChange={(price) => onChange({ price })}
        error={errorFor('price')}
      />
      <TextInput
        label="What the line costs you"
        isNumeric
        suffix={currency}
        hint="The client never sees it; empty where nobody knows"
        value={line.cost}
        onChange={(cost) => onChange({ cost })}
        error={errorFor('cost')}
      />
    </>
  );
}

function ChoiceFields({ line, onChange, errorFor }: LineFormProps) {
  return (
    <>
      <Select
        label="Taken"
        choices={TAKEN}
        value={line.choice}
        onChange={(id) =>
          onChange({ choice: TAKEN.some((one) => one.id === id) ? toChoice(id) : 'included' })
        }
      />
      {line.choice === 'alternate' && (
        <>
          <TextInput
            label="Group"
            hint="Lines of one group stand against each other: Top, Wood"
            value={line.group}
            onChange={(group) => onChange({ group })}
            error={errorFor('choice.group')}
          />
          <div className="field">
            <Checkbox
              label="Taken where the client chooses no other"
              isSelected={line.isStandard}
              onChange={(isStandard) => onChange({ isStandard })}
            />
            {errorFor('choice.isStandard') && (
              <p className="field-error">
                {errorFor('choice.isStandard')?.message} {errorFor('choice.isStandard')?.mend}
              </p>
            )}
          </div>
        </>
      )}
    </>
  );
}

const toChoice = (id: string): LineForm['choice'] =>
  id === 'option' || id === 'alternate' ? id : 'included';

/** One line, whole. */
export function LineFields(props: LineFormProps) {
  const { line, taxes, sheets, onChange, errorFor } = props;
  return (
    <div className="quote-fields">
      <FieldGroup>
        <TextInput
          label="Description"
          value={line.description}
          onChange={(description) => onChange({ description })}
          error={errorFor('description')}
        />
        {line.kind === 'cost-sheet' ? (
          <>
            <ComboBox
              label="Cost sheet"
              choices={sheets}
              value={line.costSheetId}
              onChange={(costSheetId) => onChange({ costSheetId })}
              hint="The line has its net price until the quote is sent"
              error={errorFor('costSheetId')}
            />
            <TextInput
              label="Pieces"
              isNumeric
              value={line.pieces}
              onChange={(pieces) => onChange({ pieces })}
              error={errorFor('pieces')}
            />
          </>
        ) : (
          <PriceFields {...props} />
        )}
        <Select
          label="Tax"
          choices={taxes.map(({ id, name }) => ({ id, label: name }))}
          value={line.tax}
          onChange={(tax) => onChange({ tax })}
          error={errorFor('tax')}
        />
        <ChoiceFields {...props} />
        <TextInput
          label="More about it"
          hint="Stands below the description: wood, sizes, finish"
          isMultiline
          value={line.details}
          onChange={(details) => onChange({ details })}
          error={errorFor('details')}
        />
      </FieldGroup>
      <PicturesField
        label="Pictures of this line"
        pictures={line.pictures}
        onChange={(pictures) => onChange({ pictures })}
        error={errorFor('pictures')}
      />
      <div className="form-acts">
        <Button look="danger" onPress={props.onRemove}>
          Remove the line
        </Button>
      </div>
    </div>
  );
}
