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

describe('the fields of a material', () => {
  it('come back as they were, a finish included', () => {
    const { id: _id, isDemo: _demo, version: _version, ...fields } = OIL;
    expect(createMaterial.body.parse(materialInput(materialValues(OIL)))).toEqual(fields);
    expect(
      createMaterial.body.parse(materialInput(materialValues({ ...OIL, finish: null }))).finish,
    ).toBeNull();
  });

  it('are those its form has', () => {
    const groups = materialGroups([]);
    const rough = shownNames(groups, { ...materialValues(null), form: 'rough-lumber' });
    expect(rough).toContain('quarter');
    expect(rough).not.toContain('packContent');
    const oil = shownNames(groups, materialValues(OIL));
    expect(oil).toContain('finish.selfHeatingRags');
    expect(oil).not.toContain('yieldFactor');
  });
});
