import { exampleSheetInput, toWorkedCostSheet } from '@scantling/contracts';
import { costSheet } from '@scantling/costing';
import { describe, expect, it } from 'vitest';
import { isOfScenario, scenarioChanges, scenarioValues, withScenario } from './scenario-changes.ts';

const worked = toWorkedCostSheet(costSheet(exampleSheetInput), { withDerivations: true });
const YIELD = 'material/ASH-4/yield';
const scenario = {
  changes: [
    { leaf: YIELD, label: 'yield', value: '0.80' },
    { leaf: 'material/ELM/yield', label: 'Elm: yield', value: '0.7' },
  ],
};

describe('a scenario and the values tried', () => {
  it('are told apart by value, not by how it is written', () => {
    expect(isOfScenario({ [YIELD]: '0.8', 'material/ELM/yield': '0.7' }, scenario)).toBe(true);
    expect(isOfScenario({ [YIELD]: '0.8' }, scenario)).toBe(false);
    expect(isOfScenario({ ...scenarioValues(scenario), [YIELD]: '0.9' }, scenario)).toBe(false);
  });

  it('keep the name of a leaf that has gone', () => {
    const [ash, elm] = scenarioChanges(scenarioValues(scenario), worked.figures, scenario);
    expect(ash?.label).toBe(worked.figures[YIELD]?.label);
    expect(elm?.label).toBe('Elm: yield');
  });

  it('come to a sheet of their own, or to none where they leave no answer', () => {
    const made = withScenario(worked, scenario);
    const cost = worked.columns[0]?.classes.costOfProduction ?? '';
    expect(made?.tried.gone).toEqual(['material/ELM/yield']);
    expect(made?.worked.figures[cost]?.value).not.toBe(worked.figures[cost]?.value);
    const nothing = { changes: [{ leaf: 'terms/policy/margin', label: 'margin', value: '1' }] };
    expect(withScenario(worked, nothing)).toBeNull();
  });
});
