import { type DrawnDesign, isFormula } from '../design-parameters/index.ts';

export const DESIGN_SECTIONS = [
  'parameters',
  'variants',
  'assemblies',
  'parts',
  'components',
  'finishes',
  'consumables',
  'operations',
] as const;
export type DesignSection = (typeof DESIGN_SECTIONS)[number];

/** One field of a row that is not what it was. */
export interface FieldChange {
  /** Path in the row: "length", "edgeBand.thickness", "values.length". */
  readonly field: string;
  /** As text, a formula behind its "="; null where the row does not give it. */
  readonly before: string | null;
  readonly after: string | null;
}

/** A row that came, went or changed between two drawings of a design. */
export interface DesignChange {
  readonly section: DesignSection;
  readonly id: string;
  readonly name: string;
  readonly kind: 'added' | 'removed' | 'changed';
  /** Empty for what came or went whole. */
  readonly fields: readonly FieldChange[];
}

interface Row {
  readonly id: string;
  readonly name?: string;
  readonly label?: string;
}

function rowsOf(design: DrawnDesign, section: DesignSection): readonly Row[] {
  return section === 'parameters' || section === 'variants' ? design[section] : design.bill[section];
}

function nameOf({ id, name, label }: Row): string {
  return name ?? label ?? id;
}

/** Every value of a row by its path, as text. */
function fieldsOf(row: object, path = ''): Map<string, string> {
  const fields = new Map<string, string>();
  for (const [name, value] of Object.entries(row)) {
    const at = `${path}${name}`;
    if (value === undefined) continue;
    if (isFormula(value)) fields.set(at, `=${value.formula}`);
    else if (Array.isArray(value)) fields.set(at, value.join(' '));
    else if (typeof value === 'object' && value !== null)
      for (const [inner, text] of fieldsOf(value, `${at}.`)) fields.set(inner, text);
    else fields.set(at, String(value));
  }
  return fields;
}

function fieldChanges(before: Row, after: Row): FieldChange[] {
  const [was, is] = [fieldsOf(before), fieldsOf(after)];
  return [...new Set([...was.keys(), ...is.keys()])].flatMap((field) => {
    const change = { field, before: was.get(field) ?? null, after: is.get(field) ?? null };
    return change.before === change.after ? [] : [change];
  });
}

/** What changed from one drawing of a design to another, row by row of the same id, sections in their own order. */
export function compareDesigns(before: DrawnDesign, after: DrawnDesign): DesignChange[] {
  return DESIGN_SECTIONS.flatMap((section): DesignChange[] => {
    const was = new Map(rowsOf(before, section).map((row) => [row.id, row]));
    const is = new Map(rowsOf(after, section).map((row) => [row.id, row]));
    const whole = (row: Row, kind: 'added' | 'removed') => ({
      section,
      id: row.id,
      name: nameOf(row),
      kind,
      fields: [],
    });
    const stayed = [...is.values()].flatMap((row): DesignChange[] => {
      const old = was.get(row.id);
      if (old === undefined) return [whole(row, 'added')];
      const fields = fieldChanges(old, row);
      return fields.length === 0 ? [] : [{ section, id: row.id, name: nameOf(row), kind: 'changed', fields }];
    });
    const gone = [...was.values()].filter(({ id }) => !is.has(id)).map((row) => whole(row, 'removed'));
    return [...stayed, ...gone];
  });
}
