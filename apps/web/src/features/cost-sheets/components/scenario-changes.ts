import type { Scenario, WorkedCostSheet } from '@scantling/contracts';
import { decimal } from '@scantling/decimals';
import { NoAnswerError, type TriedTable, tryValues, undatedKey } from '@scantling/figures';
import type { ScenarioBody } from '../api/create-scenario.ts';
import type { TriedValues } from './tried-values.ts';

/** What a scenario keeps of values tried: each with the name its leaf has on the sheet, or had when it was kept. */
export function scenarioChanges(
  values: TriedValues,
  table: WorkedCostSheet['figures'],
  from?: Pick<Scenario, 'changes'>,
): ScenarioBody['changes'] {
  const labels = new Map(Object.values(table).map(({ id, label }) => [undatedKey(id), label]));
  const before = new Map(from?.changes.map(({ leaf, label }) => [undatedKey(leaf), label]));
  return Object.entries(values).map(([leaf, value]) => {
    const key = undatedKey(leaf);
    return { leaf, label: labels.get(key) ?? before.get(key) ?? leaf, value };
  });
}

/** The values of a scenario, by leaf. */
export function scenarioValues({ changes }: Pick<Scenario, 'changes'>): TriedValues {
  return Object.fromEntries(changes.map(({ leaf, value }) => [leaf, value]));
}

/** True where a scenario holds just these values. */
export function isOfScenario(values: TriedValues, scenario: Pick<Scenario, 'changes'>): boolean {
  const own = new Map(scenario.changes.map(({ leaf, value }) => [undatedKey(leaf), value]));
  const given = Object.entries(values);
  return (
    given.length === own.size &&
    given.every(([leaf, value]) => {
      const kept = own.get(undatedKey(leaf));
      return kept !== undefined && decimal(kept).eq(value);
    })
  );
}

/** A sheet with a scenario's values; null where they leave no answer on it. */
export function withScenario(
  worked: WorkedCostSheet,
  scenario: Pick<Scenario, 'changes'>,
): { readonly worked: WorkedCostSheet; readonly tried: TriedTable } | null {
  try {
    const tried = tryValues(worked.figures, scenarioValues(scenario));
    return { worked: { ...worked, figures: tried.table }, tried };
  } catch (error) {
    if (error instanceof NoAnswerError) return null;
    throw error;
  }
}
