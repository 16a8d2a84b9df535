/** Which part may import which, by folder: arrows go down only. A part not named here fails the test. */
export const ALLOWED_IMPORTS: Readonly<Record<string, readonly string[]>> = {
  'packages/decimals': [],
  'packages/units': ['packages/decimals'],
  'packages/money': ['packages/decimals'],
  'packages/figures': ['packages/decimals', 'packages/units', 'packages/money'],
  'packages/costing': ['packages/decimals', 'packages/units', 'packages/money', 'packages/figures'],
  'packages/cutting': ['packages/decimals'],
  'packages/cutting-solver': ['packages/decimals', 'packages/cutting'],
  'packages/quoting': [
    'packages/decimals',
    'packages/units',
    'packages/money',
    'packages/figures',
    'packages/costing',
  ],
  'packages/contracts': [
    'packages/decimals',
    'packages/units',
    'packages/money',
    'packages/figures',
    'packages/costing',
    'packages/cutting',
    'packages/quoting',
  ],
  'packages/workbooks': ['packages/decimals', 'packages/money', 'packages/figures', 'packages/contracts'],
  'packages/renderers': [
    'packages/decimals',
    'packages/units',
    'packages/money',
    'packages/figures',
    'packages/costing',
    'packages/quoting',
  ],
  'apps/api': [
    'packages/decimals',
    'packages/units',
    'packages/money',
    'packages/figures',
    'packages/costing',
    'packages/cutting',
    'packages/cutting-solver',
    'packages/quoting',
    'packages/contracts',
    'packages/workbooks',
    'packages/renderers',
  ],
  'apps/web': [
    'packages/decimals',
    'packages/units',
    'packages/money',
    'packages/figures',
    'packages/costing',
    'packages/cutting',
    'packages/quoting',
    'packages/contracts',
  ],
};

/** Compiled with the language's library only, and free of Node's modules. */
export const PURE_PARTS = [
  'decimals',
  'units',
  'money',
  'figures',
  'costing',
  'cutting',
  'quoting',
  'contracts',
  'workbooks',
].map((name) => `packages/${name}`);

/**
 * Which feature may use another one's exported functions: a cost sheet is worked out from everything else, invoices and
 * delivery notes rest on what was accepted, values are taken over into the records they come from, and the demo is entered through the features' own code. `*` is every
 * feature: each screen shows figures. A loop among features is caught by the test for loops.
 */
export const ALLOWED_FEATURE_IMPORTS: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> =
  {
    'apps/api/src/features': {
      'cost-sheets': ['designs', 'materials', 'price-lists', 'exchange-rates', 'workshop'],
      scenarios: ['cost-sheets'],
      'own-values': [
        'cost-sheets',
        'designs',
        'labour-grades',
        'materials',
        'overhead',
        'price-lists',
        'quotes',
        'scenarios',
        'suppliers',
        'tools',
        'workshop',
      ],
      offers: ['quotes'],
      quotes: ['cost-sheets'],
      'price-impacts': ['cost-sheets', 'quotes'],
      invoices: ['quotes'],
      'delivery-notes': ['invoices', 'quotes'],
      enquiries: ['cost-sheets', 'designs'],
      demo: [
        'clients',
        'cost-sheets',
        'delivery-notes',
        'designs',
        'enquiries',
        'exchange-rates',
        'invoices',
        'materials',
        'price-impacts',
        'price-lists',
        'quotes',
        'suppliers',
        'tools',
        'workshop',
      ],
    },
    'apps/web/src/features': { '*': ['figures', 'client-document', 'papers', 'cost-difference'] },
  };
