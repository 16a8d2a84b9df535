/** Where the value of a leaf is kept: which record, and the path of the field in it as its contract names it. */
export type LeafHome =
  | {
      readonly kind: 'design';
      readonly list: 'assemblies' | 'parts' | 'components' | 'finishes' | 'consumables' | 'operations';
      /** The row's id. */
      readonly row: string;
      readonly path: readonly string[];
    }
  | { readonly kind: 'design-parameter'; readonly id: string }
  | { readonly kind: 'terms'; readonly path: readonly string[] }
  | {
      readonly kind: 'labour-grade' | 'tool' | 'material' | 'supplier';
      readonly code: string;
      readonly path: readonly string[];
    }
  | { readonly kind: 'workshop'; readonly path: readonly string[] }
  | { readonly kind: 'overhead-amount'; readonly id: string }
  | {
      readonly kind: 'price';
      readonly supplier: string;
      /** The supplier's code of the article. */
      readonly code: string;
      readonly unit: string;
      /** The quantity from which it holds. */
      readonly from: string;
    }
  | { readonly kind: 'exchange-rate'; readonly from: string }
  /** Nowhere that one value could be changed alone. */
  | { readonly kind: 'nowhere'; readonly why: string; readonly mend: string };

const LISTS = {
  assembly: 'assemblies',
  part: 'parts',
  component: 'components',
  finish: 'finishes',
  consumable: 'consumables',
  operation: 'operations',
} as const;

/** Fields whose names in a bill are not those of their leaves. */
const BILL_FIELDS: Readonly<Record<string, readonly string[]>> = {
  'band-thickness': ['edgeBand', 'thickness'],
  'veneer-thickness': ['veneer', 'thickness'],
  'dry-film': ['dryFilmUm'],
  setup: ['setupHours'],
  run: ['runHours'],
  'run-low': ['runHoursLow'],
  'run-high': ['runHoursHigh'],
  elapsed: ['elapsedHours'],
};

const MATERIAL_FIELDS: Readonly<Record<string, readonly string[]>> = {
  yield: ['yieldFactor'],
  'offcut-value': ['offcutValueShare'],
  'nominal-thickness': ['nominalThicknessMm'],
  thickness: ['thicknessMm'],
  width: ['widthMm'],
  length: ['lengthMm'],
  density: ['densityKgM3'],
  'pack-content': ['packContent'],
  'board-content': ['boardContent'],
  'volume-solids': ['finish', 'volumeSolids'],
  coverage: ['finish', 'coverageM2PerL'],
};

const SUPPLIER_FIELDS: Readonly<Record<string, readonly string[]>> = {
  freight: ['freightPerOrder'],
  'minimum-order': ['minimumOrder'],
  'tax-rate': ['taxRate'],
  'tax-recoverable': ['taxRecoverable'],
};

const ALLOWANCES: Readonly<Record<string, string>> = {
  length: 'lengthAllowance',
  width: 'widthAllowance',
  thickness: 'thicknessAllowance',
  yield: 'yieldFactor',
  'offcut-value': 'offcutValueShare',
};

function camel(kebab: string): string {
  return kebab.replace(/-([a-z0-9])/g, (_, letter: string) => letter.toUpperCase());
}

function nowhere(why: string, mend: string): LeafHome {
  return { kind: 'nowhere', why, mend };
}

const WORKED_OUT = nowhere(
  'is worked out from other records',
  'Change the tools, grades, hours or settings that it comes from, or enter it for this sheet only.',
);

type Read = (found: readonly string[]) => LeafHome;

function known(
  fields: Readonly<Record<string, readonly string[]>>,
  field: string,
  home: (path: readonly string[]) => LeafHome,
): LeafHome {
  const path = fields[field];
  return path === undefined ? WORKED_OUT : home(path);
}

/** In the order in which they are tried; codes and ids may have slashes in them, fields do not. */
const READERS: readonly (readonly [RegExp, Read])[] = [
  [
    /^bill\/operation (.+)\/learning\/rate$/,
    ([row = '']) => ({ kind: 'design', list: 'operations', row, path: ['learningRate'] }),
  ],
  [
    /^bill\/(assembly|part|component|finish|consumable|operation) (.+)\/([a-z-]+)$/,
    ([of = '', row = '', field = '']) => {
      const list = LISTS[of as keyof typeof LISTS];
      return { kind: 'design', list, row, path: BILL_FIELDS[field] ?? [camel(field)] };
    },
  ],
  [/^parameter\/(.+)$/, ([id = '']) => ({ kind: 'design-parameter', id })],
  [
    /^written\//,
    () =>
      nowhere(
        'is written in formulas of the design',
        'Change the formulas, or enter it for this sheet only.',
      ),
  ],
  [/^terms\/price-step$/, () => ({ kind: 'terms', path: ['priceStep', 'to'] })],
  [/^terms\/policy\/([a-z-]+)$/, ([field = '']) => ({ kind: 'terms', path: ['policy', camel(field)] })],
  [/^terms\/([a-z-]+)$/, ([field = '']) => ({ kind: 'terms', path: [camel(field)] })],
  [
    /^labour\/(.+)\/([a-z-]+)$/,
    ([code = '', field = '']) => ({ kind: 'labour-grade', code, path: [camel(field)] }),
  ],
  [
    /^machine\/(.+)\/cutter\/(\d+)\/([a-z-]+)$/,
    ([code = '', place = '', field = '']) => ({
      kind: 'tool',
      code,
      path: ['cutters', String(Number(place) - 1), camel(field)],
    }),
  ],
  [/^machine\/(.+)\/hire\/price$/, ([code = '']) => ({ kind: 'tool', code, path: ['hirePerHour'] })],
  [
    /^machine\/(.+)\/([a-z0-9-]+)$/,
    ([code = '', field = '']) => ({ kind: 'tool', code, path: [camel(field)] }),
  ],
  [/^shop\/([a-z0-9-]+)$/, ([field = '']) => ({ kind: 'workshop', path: [camel(field)] })],
  [
    /^allowance\/([a-z-]+)\/([a-z-]+)$/,
    ([form = '', field = '']) => {
      const name = ALLOWANCES[field];
      return name === undefined ? WORKED_OUT : { kind: 'workshop', path: ['forms', form, name] };
    },
  ],
  [
    /^material\/(.+)\/([a-z-]+)$/,
    ([code = '', field = '']) => known(MATERIAL_FIELDS, field, (path) => ({ kind: 'material', code, path })),
  ],
  [
    /^supplier\/(.+)\/([a-z-]+)$/,
    ([code = '', field = '']) => known(SUPPLIER_FIELDS, field, (path) => ({ kind: 'supplier', code, path })),
  ],
  [
    /^price\/([^/]+)\/(.+)\/([a-z0-9-]+)\/(\d[\d.]*)$/,
    ([supplier = '', code = '', unit = '', from = '']) => ({ kind: 'price', supplier, code, unit, from }),
  ],
  [
    /^price\//,
    () =>
      nowhere(
        "comes with the supplier's price list",
        'Enter or import a new list of the supplier, or enter it for this sheet only.',
      ),
  ],
  [/^exchange-rate\/([A-Z]{3})(\/|$)/, ([from = '']) => ({ kind: 'exchange-rate', from })],
  [/^overhead\/[a-z]+\/amount\/lost-enquiries\//, () => WORKED_OUT],
  [/^overhead\/[a-z]+\/amount\/([^/]+)\/yearly-amount$/, ([id = '']) => ({ kind: 'overhead-amount', id })],
  [
    /^overhead\/(workshop|administration)\/(planned-base|actual\/amount|actual\/base)$/,
    ([pool = '', field = '']) => ({
      kind: 'workshop',
      path: [`${pool}Overhead`, ...field.split('/').map(camel)],
    }),
  ],
];

/** Where a leaf of a cost sheet is kept, by its key. */
export function leafHome(key: string): LeafHome {
  for (const [pattern, read] of READERS) {
    const found = pattern.exec(key);
    if (found !== null) return read(found.slice(1));
  }
  return WORKED_OUT;
}

const OF_THIS_PIECE: readonly LeafHome['kind'][] = ['design', 'design-parameter', 'terms', 'nowhere'];

/** True for what other cost sheets rest on too, whatever design they are of. */
export function isShopWide({ kind }: LeafHome): boolean {
  return !OF_THIS_PIECE.includes(kind);
}
