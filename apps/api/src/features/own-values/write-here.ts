import { costTermsSchema, type ownValueSchema } from '@scantling/contracts';
import { undatedKey } from '@scantling/figures';
import { z } from 'zod';
import type { CostSheetAnswer } from '../cost-sheets/cost-sheet-records.ts';
import type { AskedChange } from './asked-changes.ts';
import { setInRecord } from './set-in-record.ts';
import type { WrittenPlace } from './write-records.ts';

type OwnValue = z.output<typeof ownValueSchema>;

/** What a cost sheet itself keeps of values taken over. */
export interface SheetValues {
  readonly terms: CostSheetAnswer['terms'];
  readonly parameterValues: CostSheetAnswer['parameterValues'];
  readonly ownValues: readonly OwnValue[];
}

const termsRecord = z.strictObject({ terms: costTermsSchema });

const OWN: WrittenPlace = { place: 'an own value of this cost sheet', record: null };
const TERMS: WrittenPlace = { place: 'the terms of this cost sheet', record: null };
const CHOICE: WrittenPlace = { place: 'what is made on this cost sheet', record: null };

function without(values: readonly OwnValue[], key: string): OwnValue[] {
  return values.filter(({ leaf }) => undatedKey(leaf) !== undatedKey(key));
}

/** True for what is kept on the sheet itself, whichever reach is asked for. */
export function isOfSheet({ home, reach }: AskedChange): boolean {
  return reach === 'here' || home.kind === 'terms';
}

/**
 * The sheet's own part of the changes; a value that goes everywhere takes the place of the own value there was.
 * @throws RequestProblem input-invalid naming the value that the terms do not take
 */
export function valuesHere(
  sheet: CostSheetAnswer,
  changes: readonly AskedChange[],
  given: { readonly by: string; readonly on: string },
): { values: SheetValues; places: ReadonlyMap<AskedChange, WrittenPlace> } {
  const places = new Map<AskedChange, WrittenPlace>();
  let { parameterValues } = sheet;
  let ownValues: OwnValue[] = sheet.ownValues;
  const ofTerms: AskedChange[] = [];
  for (const change of changes) {
    const { leaf, home, value } = change;
    ownValues = without(ownValues, leaf.id);
    if (!isOfSheet(change)) continue;
    if (home.kind === 'terms') {
      ofTerms.push(change);
      places.set(change, TERMS);
    } else if (home.kind === 'design-parameter') {
      parameterValues = { ...parameterValues, [home.id]: value };
      places.set(change, CHOICE);
    } else {
      ownValues.push({ leaf: leaf.id, label: leaf.label, value, ...given });
      places.set(change, OWN);
    }
  }
  const { terms } = setInRecord(
    termsRecord,
    { terms: sheet.terms },
    ofTerms.flatMap(({ home, value, field }) =>
      home.kind === 'terms' ? [{ path: ['terms', ...home.path], value, field }] : [],
    ),
  );
  return { values: { terms, parameterValues, ownValues }, places };
}
