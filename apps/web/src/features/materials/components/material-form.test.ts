import { createMaterial, type Material } from '@scantling/contracts';
import { describe, expect, it } from 'vitest';
import { shownNames } from '../../../components/record-editor/field-spec.ts';
import { materialGroups, materialInput, materialValues } from './material-form.ts';

const OIL: Material = {
  id: 'm1',
  code: 'OIL',
  name: 'Hard oil',
  form: 'volume',
  family: null,
  species: null,
  grade: null,
  quarter: null,
  nominalThicknessMm: null,
  surfacedThicknessMm: null,
  thicknessMm: null,
  widthMm: null,
  lengthMm: null,
  densityKgM3: '910',
  yieldFactor: '0.666667',
  offcutValueShare: null,
  packContent: null,
  boardContent: null,
  finish: {
    volumeSolids: '0.35',
    coverageM2PerL: '12.5',
    coverageIsTheoretical: true,
    goesOnByWiping: true,
    selfHeatingRags: true,
  },
  preferredSupplierId: null,
  notes: '',
  isDemo: false,
  version: 1,
};

const BOARD: Material = {
  ...OIL,
  code: 'OAK-4/4',
  form: 'rough-lumber',
  nominalThicknessMm: '25.4',
  surfacedThicknessMm: '20.6375',
  finish: null,
};

describe.each(['metric', 'imperial'] as const)('the fields of a material, lengths %s', (system) => {
  it.each([OIL, BOARD])('come back as they were, a finish included: $code', (material) => {
    const { id: _id, isDemo: _demo, version: _version, ...fields } = material;
    expect(createMaterial.body.parse(materialInput(materialValues(material, system), system))).toEqual(
      fields,
    );
  });

  it('are those its form has', () => {
    const groups = materialGroups([], system);
    const rough = shownNames(groups, { ...materialValues(null, system), form: 'rough-lumber' });
    expect(rough).toContain('quarter');
    expect(rough).not.toContain('packContent');
    const oil = shownNames(groups, materialValues(OIL, system));
    expect(oil).toContain('finish.selfHeatingRags');
    expect(oil).not.toContain('yieldFactor');
  });
});

it('shows the sizes of a material in exact inches', () => {
  const values = materialValues(BOARD, 'imperial');
  expect([values.nominalThicknessMm, values.surfacedThicknessMm]).toEqual(['1"', '13/16"']);
});
