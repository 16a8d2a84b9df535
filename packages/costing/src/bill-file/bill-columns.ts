/** The columns of a bill as a file, in the order they are written. `row` says what kind of row it is. */
export const BILL_COLUMNS = [
  'row',
  'id',
  'name',
  'assembly',
  'quantity',
  'material',
  'length',
  'width',
  'thickness',
  'grain',
  'length allowance',
  'width allowance',
  'staves',
  'resawn',
  'band material',
  'band thickness',
  'band long edges',
  'band end edges',
  'veneer material',
  'veneer thickness',
  'veneer faces',
  'finished',
  'spares',
  'reject share',
  'coats',
  'transfer efficiency',
  'dry film um',
  'batch rest l',
  'parts',
  'per',
  'setup h',
  'run h',
  'elapsed h',
  'grade',
  'machine',
  'machine share',
  'learning rate',
] as const;
export type BillColumn = (typeof BILL_COLUMNS)[number];

export const ROW_KINDS = ['assembly', 'part', 'component', 'finish', 'consumable', 'operation'] as const;
export type RowKind = (typeof ROW_KINDS)[number];

/** One row of the file by our column names; an absent or blank cell means "not given". */
export type BillCells = Readonly<Partial<Record<BillColumn, string>>>;
