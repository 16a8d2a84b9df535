import type { Choice } from '../choice-list.tsx';

/** A row of a list inside a form, by column. */
export type RowValues = Readonly<Record<string, string | boolean>>;
export type FormValue = string | boolean | readonly RowValues[];
/** What a form holds, by field name. Numbers stay the text that was typed. */
export type FormValues = Readonly<Record<string, FormValue>>;

interface Common {
  /** Path as the API's errors spell it ("settings.kerf"). */
  readonly name: string;
  readonly label: string;
  readonly hint?: string;
  readonly isRequired?: boolean;
  /** Two columns wide: names, addresses. */
  readonly isWide?: boolean;
  /** Shown only while this holds. */
  readonly isShown?: (values: FormValues) => boolean;
}

export type CellSpec = Common &
  (
    | { readonly kind: 'text' | 'lines' | 'date' | 'email' | 'new-password' | 'check' }
    | { readonly kind: 'decimal'; readonly suffix?: string }
    | { readonly kind: 'choice' | 'search'; readonly choices: readonly Choice[] }
  );

/** A field of a form; `rows` is a list of like things, each with the given cells. */
export type FieldSpec =
  | CellSpec
  | (Common & {
      readonly kind: 'rows';
      readonly cells: readonly CellSpec[];
      readonly fresh: RowValues;
      /** "Add a cutter" */
      readonly addText: string;
    });

export interface GroupSpec {
  readonly legend?: string;
  readonly fields: readonly FieldSpec[];
}

export function textOf(values: FormValues, name: string): string {
  const value = values[name];
  return typeof value === 'string' ? value.trim() : '';
}

/** The lines of a text of several, without those that are blank. */
export function linesOf(values: FormValues, name: string): string[] {
  return textOf(values, name)
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');
}

export function isTicked(values: FormValues, name: string): boolean {
  return values[name] === true;
}

export function rowsOf(values: FormValues, name: string): readonly RowValues[] {
  const value = values[name];
  return Array.isArray(value) ? value : [];
}

/** Names of all fields that stand on the form now, those of rows as "cutters.0.price". */
export function shownNames(groups: readonly GroupSpec[], values: FormValues): string[] {
  return groups
    .flatMap(({ fields }) => fields)
    .filter((field) => field.isShown?.(values) ?? true)
    .flatMap((field) =>
      field.kind === 'rows'
        ? rowsOf(values, field.name).flatMap((_, at) =>
            field.cells.map((cell) => `${field.name}.${at}.${cell.name}`),
          )
        : [field.name],
    );
}

export interface Difference {
  readonly label: string;
  readonly mine: string;
  readonly theirs: string;
}

function inWords(field: FieldSpec, value: FormValue | undefined): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value !== 'string') return `${value?.length ?? 0} rows`;
  if (field.kind === 'choice' || field.kind === 'search') {
    return field.choices.find(({ id }) => id === value)?.label ?? value;
  }
  return value === '' ? 'nothing' : value;
}

/** Where two states of a form differ. */
export function differences(
  groups: readonly GroupSpec[],
  mine: FormValues,
  theirs: FormValues,
): readonly Difference[] {
  return groups
    .flatMap(({ fields }) => fields)
    .filter(({ name }) => JSON.stringify(mine[name]) !== JSON.stringify(theirs[name]))
    .map((field) => ({
      label: field.label,
      mine: inWords(field, mine[field.name]),
      theirs: inWords(field, theirs[field.name]),
    }));
}
