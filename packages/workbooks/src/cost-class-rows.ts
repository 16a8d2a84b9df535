import type { WorkedCostSheet } from '@scantling/contracts';
import type { WorkbookRow, WorkingBook } from '@scantling/figures';
import { figureRow } from './price-rows.ts';

type Column = WorkedCostSheet['columns'][number];
type ClassName = keyof Column['classes'];
type MaterialClass = Column['materials'][number]['class'];

interface Line {
  readonly key: string;
  readonly label: string;
  readonly id: string | null;
}

function bought(wanted: MaterialClass) {
  return (column: Column): Line[] => [
    ...column.materials
      .filter((line) => line.class === wanted)
      .map(({ code, name, charged }) => ({ key: code, label: name, id: charged })),
    ...column.freightIn
      .filter((line) => line.class === wanted)
      .map(({ supplier, name, charged }) => ({
        key: `freight ${supplier}`,
        label: `Freight of ${name}`,
        id: charged,
      })),
  ];
}

function worked(amount: 'labour' | 'machineCost') {
  return (column: Column): Line[] =>
    column.work.map((line) => ({ key: line.id, label: line.name, id: line[amount] }));
}

interface ClassRow {
  readonly name: ClassName;
  readonly label: string;
  readonly isTotal?: true;
  /** What the class adds up. */
  readonly lines?: (column: Column) => Line[];
}

/** The classes of a cost sheet in their order, each with its lines above. */
const CLASSES: readonly ClassRow[] = [
  { name: 'directMaterials', label: 'Direct materials', lines: bought('direct-materials') },
  { name: 'boughtIn', label: 'Bought-in components', lines: bought('bought-in') },
  { name: 'directLabour', label: 'Direct labour', lines: worked('labour') },
  { name: 'subcontract', label: 'Subcontract', lines: bought('subcontract') },
  { name: 'primeCost', label: 'Prime cost', isTotal: true },
  { name: 'machines', label: 'Machines', lines: worked('machineCost') },
  { name: 'consumables', label: 'Consumables', lines: bought('consumables') },
  { name: 'workshopOverhead', label: 'Workshop overhead' },
  { name: 'worksCost', label: 'Works cost', isTotal: true },
  { name: 'administrationOverhead', label: 'Administration overhead' },
  { name: 'freight', label: 'Freight to the client' },
  { name: 'contingency', label: 'Contingency' },
  { name: 'costOfProduction', label: 'Cost of production', isTotal: true },
];

/** Lines of all columns, each once, in the order they first come. */
function linesOf(
  columns: readonly Column[],
  pick: (column: Column) => Line[],
): { label: string; ids: (string | null)[] }[] {
  const found = new Map<string, { label: string; ids: (string | null)[] }>();
  columns.forEach((column, at) => {
    for (const { key, label, id } of pick(column)) {
      const line = found.get(key) ?? { label, ids: columns.map(() => null) };
      line.ids[at] = id;
      found.set(key, line);
    }
  });
  return [...found.values()].filter(({ ids }) => ids.some((id) => id !== null));
}

/** Cost class by class with the lines each adds up, one column for each number of pieces. */
export function costClassRows(book: WorkingBook, columns: readonly Column[]): WorkbookRow[] {
  return CLASSES.flatMap(({ name, label, isTotal, lines }) => {
    const ids = columns.map((column) => column.classes[name]);
    if (isTotal === true) return [figureRow(book, label, ids, { labelRole: 'total-label', role: 'total' })];
    const parts = lines === undefined ? [] : linesOf(columns, lines);
    return [
      figureRow(book, label, ids, {}),
      ...parts.map((part) =>
        figureRow(book, part.label, part.ids, { labelRole: 'line', role: 'line-value' }),
      ),
    ];
  });
}
