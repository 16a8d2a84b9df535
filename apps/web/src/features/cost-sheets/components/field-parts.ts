import type { FieldMessage } from '../../../components/field.tsx';
import type { SheetDraft } from './sheet-draft.ts';

/** What each group of fields of a cost sheet's form takes. */
export interface FieldParts {
  readonly draft: SheetDraft;
  readonly onChange: (change: Partial<SheetDraft>) => void;
  /** By the field's path as the API spells it. */
  readonly errorFor: (field: string) => FieldMessage | undefined;
  /** Word for money amounts beside their fields; absent until it is known. */
  readonly currency: string | undefined;
}

type TextKey = {
  [Key in keyof SheetDraft]: SheetDraft[Key] extends string
    ? string extends SheetDraft[Key]
      ? Key
      : never
    : never;
}[keyof SheetDraft];

/** Ties one typed field to the draft; `field` is its path in the API. */
export function fieldOf(parts: FieldParts, key: TextKey, field: string) {
  return {
    value: parts.draft[key],
    onChange: (text: string) => parts.onChange({ [key]: text }),
    error: parts.errorFor(field),
  };
}

/** The suffix of a money field. */
export function inMoney({ currency }: FieldParts): { suffix?: string } {
  return currency === undefined ? {} : { suffix: currency };
}
