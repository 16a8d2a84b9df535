import type { OverallSizeText } from '@scantling/contracts';
import { formatLength, type LengthSystem, parseLength, UnreadableLengthError } from '@scantling/units';
import { useState } from 'react';
import type { FieldMessage } from '../../../components/field.tsx';
import { TextInput } from '../../../components/text-input.tsx';

const SIDES = [
  { side: 'length', label: 'Overall length' },
  { side: 'width', label: 'Overall width' },
  { side: 'height', label: 'Overall height' },
] as const;

interface OverallSizeFieldsProps {
  readonly size: OverallSizeText | null;
  readonly unitSystem: LengthSystem;
  readonly onChange: (size: OverallSizeText | null) => void;
  readonly errorFor: (field: string) => FieldMessage | undefined;
}

/** A bare number is in the design's own unit; what cannot be read goes on as typed, for the server to name. */
function toMm(text: string, unitSystem: LengthSystem): string {
  try {
    return parseLength(text, unitSystem === 'imperial' ? 'in' : 'mm').toFixed();
  } catch (error) {
    if (error instanceof UnreadableLengthError) return text;
    throw error;
  }
}

/** A size as it is written; what is no size yet stands as it was typed. */
export function asTyped(mm: string, unitSystem: LengthSystem): string {
  return /^\d+(\.\d+)?$/.test(mm) ? formatLength(mm, unitSystem) : mm;
}

/** Length, width and height over all, which an early price is scaled from; all three or none. */
export function OverallSizeFields({ size, unitSystem, onChange, errorFor }: OverallSizeFieldsProps) {
  const [typed, setTyped] = useState({ length: '', width: '', height: '' });
  // What was typed stands as long as it says what the draft holds; another value came from elsewhere.
  const shown = (side: keyof OverallSizeText): string => {
    const value = size?.[side] ?? '';
    return toMm(typed[side], unitSystem) === value ? typed[side] : asTyped(value, unitSystem);
  };
  return SIDES.map(({ side, label }) => (
    <TextInput
      key={side}
      label={label}
      {...(side === 'length' ? { hint: 'For early prices; all three or none' } : {})}
      value={shown(side)}
      onChange={(text) => {
        setTyped({ ...typed, [side]: text });
        const next = { length: '', width: '', height: '', ...size, [side]: toMm(text, unitSystem) };
        onChange(Object.values(next).every((value) => value.trim() === '') ? null : next);
      }}
      error={errorFor(`overallSize.${side}`)}
    />
  ));
}
