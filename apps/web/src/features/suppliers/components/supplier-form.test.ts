import { createSupplier, type Supplier } from '@scantling/contracts';
import { describe, expect, it } from 'vitest';
import { supplierInput, supplierValues } from './supplier-form.ts';

const SUPPLIER: Supplier = {
  id: 's1',
  code: 'YARD',
  name: 'Fernhollow Timber Yard (invented)',
  currency: 'EUR',
  taxIncluded: true,
  taxRate: '0.075',
  taxRecoverable: '0.5',
  minimumOrder: '50.5',
  freightPerOrder: null,
  leadDays: 7,
  notes: 'rings before it delivers',
  isDemo: false,
  version: 3,
};

describe('the fields of a supplier', () => {
  it('come back as they were', () => {
    const { id: _id, isDemo: _demo, version: _version, ...fields } = SUPPLIER;
    expect(createSupplier.body.parse(supplierInput(supplierValues(SUPPLIER)))).toEqual(fields);
  });

  it('go to the server as typed where they cannot be read', () => {
    const typed = { ...supplierValues(SUPPLIER), leadDays: 'a week', currency: '', minimumOrder: '1,250' };
    const refused = createSupplier.body.safeParse(supplierInput(typed));
    expect(refused.error?.issues.map(({ path }) => path.join('.')).sort()).toEqual([
      'currency',
      'leadDays',
      'minimumOrder',
    ]);
  });
});
