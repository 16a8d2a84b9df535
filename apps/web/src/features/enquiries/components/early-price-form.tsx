import { EARLY_PRICE_CLASSES, SCALE_BASES } from '@scantling/quoting';
import { FieldGroup } from '../../../components/field.tsx';
import { Select } from '../../../components/select.tsx';
import { TextInput } from '../../../components/text-input.tsx';
import type { PastPieceAnswer } from '../api/past-pieces.ts';
import { type EarlyPriceDraft, ruleOf, SIDES } from './early-price-draft.ts';
import { BASIS_LABELS, CLASS_LABELS } from './early-price-words.ts';
import './enquiry.css';

interface FormProps {
  readonly draft: EarlyPriceDraft;
  readonly onChange: (change: Partial<EarlyPriceDraft>) => void;
  readonly past: readonly PastPieceAnswer[];
  readonly currency: string;
}

const SIDE_LABELS = { length: 'Overall length', width: 'Overall width', height: 'Overall height' } as const;
const BASES = SCALE_BASES.map((id) => ({ id, label: BASIS_LABELS[id] }));
const POLICIES = [
  { id: 'then', label: 'As the first past piece was priced' },
  { id: 'margin', label: 'Margin on the price' },
  { id: 'markup', label: 'Markup on cost' },
  { id: 'hourly-earnings', label: 'Earnings an hour' },
] as const;

/** What is asked for: size, or hours where the maker knows them better. */
export function AskedFields({ draft, onChange }: Pick<FormProps, 'draft' | 'onChange'>) {
  return (
    <FieldGroup legend="What is asked for">
      {SIDES.map((side) => (
        <TextInput
          key={side}
          label={SIDE_LABELS[side]}
          value={draft[side]}
          onChange={(text) => onChange({ [side]: text })}
        />
      ))}
      <TextInput
        label="Hours, if you know better"
        hint="Empty: scaled from the past pieces"
        isNumeric
        suffix="h"
        value={draft.hours}
        onChange={(hours) => onChange({ hours })}
      />
    </FieldGroup>
  );
}

/** What few early prices need: growth by class, own judgement, band and price policy. */
export function MoreFields({ draft, onChange, past, currency }: FormProps) {
  const usesCount = EARLY_PRICE_CLASSES.some((name) => ruleOf(draft, name).basis === 'count');
  return (
    <div className="early-form">
      <FieldGroup legend="Own judgement">
        <TextInput
          label="More or less than that"
          hint="10 is 10 % more, -5 is 5 % less"
          isNumeric
          suffix="%"
          value={draft.adjustment}
          onChange={(adjustment) => onChange({ adjustment })}
        />
        <TextInput label="Because" value={draft.reason} onChange={(reason) => onChange({ reason })} />
        {past.length === 1 && (
          <>
            <TextInput
              label="Range below"
              hint="Common practice, no source"
              isNumeric
              suffix="%"
              value={draft.below}
              onChange={(below) => onChange({ below })}
            />
            <TextInput
              label="Range above"
              isNumeric
              suffix="%"
              value={draft.above}
              onChange={(above) => onChange({ above })}
            />
          </>
        )}
      </FieldGroup>
      <FieldGroup legend="Price">
        <Select
          label="Price policy"
          choices={POLICIES}
          value={draft.policy}
          onChange={(id) => {
            const policy = POLICIES.find((one) => one.id === id);
            if (policy) onChange({ policy: policy.id });
          }}
        />
        {draft.policy !== 'then' && (
          <TextInput
            label={POLICIES.find(({ id }) => id === draft.policy)?.label ?? ''}
            isNumeric
            suffix={draft.policy === 'hourly-earnings' ? currency : '%'}
            value={draft.rate}
            onChange={(rate) => onChange({ rate })}
          />
        )}
        <TextInput
          label="Round prices to"
          hint="Empty: as the first past piece was"
          isNumeric
          suffix={currency}
          value={draft.step}
          onChange={(step) => onChange({ step })}
        />
      </FieldGroup>
      <FieldGroup legend="How each class grows">
        {EARLY_PRICE_CLASSES.map((name) => {
          const rule = ruleOf(draft, name);
          const change = (next: Partial<typeof rule>): void =>
            onChange({ rules: { ...draft.rules, [name]: { ...rule, ...next } } });
          return (
            <div key={name} className="early-rule">
              <Select
                label={`${CLASS_LABELS[name]} with`}
                choices={BASES}
                value={rule.basis}
                onChange={(id) => {
                  const basis = SCALE_BASES.find((one) => one === id);
                  if (basis) change({ basis, exponent: '1' });
                }}
              />
              {rule.basis !== 'none' && (
                <TextInput
                  label={`Exponent of ${CLASS_LABELS[name].toLowerCase()}`}
                  isNumeric
                  value={rule.exponent}
                  onChange={(exponent) => change({ exponent })}
                />
              )}
            </div>
          );
        })}
        {usesCount && (
          <>
            <TextInput
              label="Count asked for"
              hint="Drawers, doors, chairs"
              isNumeric
              value={draft.count}
              onChange={(count) => onChange({ count })}
            />
            {past.map(({ piece }) => (
              <TextInput
                key={piece.id}
                label={`Count in ${piece.name}`}
                isNumeric
                value={draft.countThen[piece.id] ?? ''}
                onChange={(count) => onChange({ countThen: { ...draft.countThen, [piece.id]: count } })}
              />
            ))}
          </>
        )}
      </FieldGroup>
      <p className="enquiry-note">
        Now = then × (asked / then) to the power of the exponent: 1 is in proportion, 0.6 is the six-tenths
        rule of plants (Williams, Chemical Engineering, 1947); none is published for furniture.
      </p>
    </div>
  );
}
