import { type DrawnBill, FINISHED_FACES, GRAINS } from '@scantling/costing';

export type BillKind = keyof DrawnBill;
export type BillRow = DrawnBill[BillKind][number];

/** How a value is typed, shown and kept. */
export type FieldForm = 'text' | 'count' | 'number' | 'length' | 'percent' | 'choice' | 'yes-no' | 'ids';

/** Lists a value is chosen from: records of the workshop, or other rows of the same bill. */
export type ChoiceSource = 'materials' | 'grades' | 'machines' | 'assemblies' | 'parts';

/** One value of a row. `path` is where it stands in the row ("edgeBand.material"). */
export interface BillField {
  readonly path: string;
  readonly label: string;
  readonly form: FieldForm;
  readonly isRequired: boolean;
  /** A column of its own; the others share the column of what else is said. */
  readonly isColumn: boolean;
  readonly suffix?: string;
  readonly hint?: string;
  readonly choices?: readonly string[];
  readonly choicesFrom?: ChoiceSource;
}

type Extra = Pick<BillField, 'suffix' | 'hint' | 'choices' | 'choicesFrom'>;

function main(path: string, label: string, form: FieldForm, extra: Partial<Extra> = {}): BillField {
  return { path, label, form, isRequired: true, isColumn: true, ...extra };
}

function optional(path: string, label: string, form: FieldForm, extra: Partial<Extra> = {}): BillField {
  return { path, label, form, isRequired: false, isColumn: false, ...extra };
}

const ID = main('id', 'Id', 'text', { hint: 'Yours, without spaces: leg, A3; made of the name where empty' });
const NAME = main('name', 'Name', 'text');
const ASSEMBLY = {
  ...optional('assembly', 'Assembly', 'text', { hint: 'Empty: the piece itself', choicesFrom: 'assemblies' }),
  isColumn: true,
};
const MATERIAL = main('material', 'Material', 'text', { choicesFrom: 'materials' });
const HOURS = { suffix: 'h' } as const;
const EDGES = ['0', '1', '2'] as const;

/** The values of each kind of row, in the order they are typed. */
export const BILL_FIELDS: Readonly<Record<BillKind, readonly BillField[]>> = {
  assemblies: [NAME, ID, main('quantity', 'In one piece', 'count')],
  parts: [
    NAME,
    ID,
    ASSEMBLY,
    main('quantity', 'Quantity', 'count'),
    MATERIAL,
    main('length', 'Length', 'length'),
    main('width', 'Width', 'length'),
    main('thickness', 'Thickness', 'length'),
    main('grain', 'Grain along', 'choice', { choices: GRAINS }),
    main('facesFinished', 'Finished', 'choice', { choices: FINISHED_FACES }),
    optional('lengthAllowance', 'Length allowance', 'length', { hint: "Empty: the shop's own" }),
    optional('widthAllowance', 'Width allowance', 'length', { hint: "Empty: the shop's own" }),
    optional('staves', 'Staves', 'count', { hint: 'Boards glued edge to edge' }),
    optional('isResawn', 'Resawn from thicker stock', 'yes-no'),
    optional('edgeBand.material', 'Band material', 'text', { choicesFrom: 'materials' }),
    optional('edgeBand.thickness', 'Band thickness', 'length'),
    optional('edgeBand.longEdges', 'Band on long edges', 'count', { choices: EDGES }),
    optional('edgeBand.endEdges', 'Band on end edges', 'count', { choices: EDGES }),
    optional('veneer.material', 'Veneer material', 'text', { choicesFrom: 'materials' }),
    optional('veneer.thickness', 'Veneer thickness', 'length'),
    optional('veneer.faces', 'Veneer faces', 'count', { choices: ['1', '2'] }),
    optional('spares', 'Spares', 'count', { hint: 'Cut beyond the need, per batch' }),
    optional('rejectShare', 'Rejects', 'percent'),
  ],
  components: [NAME, ID, ASSEMBLY, main('quantity', 'Quantity', 'number'), MATERIAL],
  finishes: [
    NAME,
    ID,
    MATERIAL,
    main('coats', 'Coats', 'count'),
    main('transferEfficiency', 'Transfer efficiency', 'percent', { hint: '100 for brush and wipe' }),
    optional('dryFilmUm', 'Dry film of a coat', 'number', { suffix: 'µm' }),
    optional('batchRest', 'Rest in pot and gun', 'number', { suffix: 'l' }),
    optional('parts', 'On parts', 'ids', {
      hint: 'Ids with spaces between; empty: all finished parts',
      choicesFrom: 'parts',
    }),
  ],
  consumables: [
    NAME,
    ID,
    MATERIAL,
    main('quantity', 'Quantity', 'number'),
    main('per', 'Per', 'choice', { choices: ['piece', 'batch'] }),
  ],
  operations: [
    NAME,
    ID,
    ASSEMBLY,
    main('setupHours', 'Set-up', 'number', HOURS),
    main('runHours', 'Run', 'number', HOURS),
    optional('runHoursLow', 'Run at the least', 'number', {
      ...HOURS,
      hint: 'With the most: the run time above is the likely one, the mean is costed',
    }),
    optional('runHoursHigh', 'Run at the most', 'number', HOURS),
    main('elapsedHours', 'Elapsed', 'number', { ...HOURS, hint: 'Glue and drying, without work' }),
    main('grade', 'Labour grade', 'text', { choicesFrom: 'grades' }),
    { ...optional('machine', 'Machine', 'text', { choicesFrom: 'machines' }), isColumn: true },
    optional('machineShare', 'Machine hours per hour of work', 'number'),
    optional('learningRate', 'Learning rate', 'percent'),
  ],
};

interface KindWords {
  readonly title: string;
  /** One of them. */
  readonly one: string;
  readonly note: string;
}

export const BILL_KINDS: readonly BillKind[] = [
  'assemblies',
  'parts',
  'components',
  'finishes',
  'consumables',
  'operations',
];

export const KIND_WORDS: Readonly<Record<BillKind, KindWords>> = {
  assemblies: { title: 'Assemblies', one: 'assembly', note: 'what the piece is put together from' },
  parts: { title: 'Parts', one: 'part', note: 'finished sizes; allowances are added when costing' },
  components: {
    title: 'Hardware and bought-in',
    one: 'component',
    note: 'counted in the unit it is used in',
  },
  finishes: { title: 'Finish schedule', one: 'finish step', note: 'in the order it is applied' },
  consumables: { title: 'Consumables', one: 'consumable', note: 'used up per piece or per batch' },
  operations: { title: 'Operations', one: 'operation', note: 'steps of work; set-up counts once per batch' },
};

/** What a new row starts with. */
export const FRESH_CELLS: Readonly<Record<BillKind, Readonly<Record<string, string>>>> = {
  assemblies: { quantity: '1' },
  parts: { quantity: '1', grain: 'length', facesFinished: 'all' },
  components: { quantity: '1' },
  finishes: { coats: '1', transferEfficiency: '100' },
  consumables: { per: 'piece' },
  operations: { setupHours: '0', elapsedHours: '0' },
};
