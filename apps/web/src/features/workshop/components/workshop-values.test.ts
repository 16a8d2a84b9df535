import { exampleWorkshop, exampleWorkshopInput, workshopInputSchema } from '@scantling/contracts';
import { expect, test } from 'vitest';
import { shownForms, workshopInput, workshopValues } from './workshop-values.ts';

test('a workshop comes back from its form as it was read', () => {
  expect(workshopInput(workshopValues(exampleWorkshop))).toEqual(exampleWorkshopInput);
});

test('the year as it went is kept, and nothing typed means that it is not known', () => {
  const actual = { amount: '18200.50', base: '1380' };
  const settings = {
    ...exampleWorkshop.settings,
    workshopOverhead: { base: 'machine-hours' as const, plannedBase: '900', actual },
  };
  const values = workshopValues({ ...exampleWorkshop, settings });
  expect(workshopInput(values).settings.workshopOverhead).toEqual(settings.workshopOverhead);
  const emptied = {
    ...values,
    'settings.workshopOverhead.actual.amount': '',
    'settings.workshopOverhead.actual.base': '',
  };
  expect(workshopInput(emptied).settings.workshopOverhead).toMatchObject({
    actual: null,
  });
});

test('a form of material without settings stands empty, and stays without them', () => {
  const { sheet: _sheet, ...forms } = exampleWorkshop.settings.forms;
  const settings = { ...exampleWorkshop.settings, forms };
  expect(shownForms(settings)).toContain('sheet');
  expect(shownForms(settings)).not.toContain('service');
  const input = workshopInput(workshopValues({ ...exampleWorkshop, settings }));
  expect(input.settings.forms).toEqual(forms);
});

test('a half filled form of material goes to the server, which names the field', () => {
  const values = { ...workshopValues(exampleWorkshop), 'settings.forms.sheet.yieldFactor': '' };
  const read = workshopInputSchema.safeParse(workshopInput(values));
  expect([...new Set(read.error?.issues.map(({ path }) => path.join('.')))]).toEqual([
    'settings.forms.sheet.yieldFactor',
  ]);
});

test('lengths of a workshop in inches stand in exact inches and come back as they were', () => {
  const workshop = {
    ...exampleWorkshop,
    unitSystem: 'imperial' as const,
    settings: { ...exampleWorkshop.settings, kerf: '3.175', resawKerf: '4' },
  };
  const values = workshopValues(workshop);
  expect([values['settings.kerf'], values['settings.resawKerf']]).toEqual(['1/8"', '4 mm']);
  expect(workshopInput(values).settings).toEqual(workshop.settings);
  // Chosen millimetres hold from the next reading on; what stands on the form is still inches.
  const changed = workshopInput({ ...values, unitSystem: 'metric' });
  expect([changed.unitSystem, changed.settings.kerf]).toEqual(['metric', '3.175']);
});
