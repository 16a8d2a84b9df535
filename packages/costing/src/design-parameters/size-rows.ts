import type { Bill, Component, Consumable, FinishStep, Operation, Part } from '../bill-of-materials/index.ts';
import type { BillField, BillSizer } from './bill-sizer.ts';
import type {
  DrawnBill,
  DrawnComponent,
  DrawnConsumable,
  DrawnFinishStep,
  DrawnOperation,
  DrawnPart,
} from './drawn-bill.ts';

/** By kind of row: the place in the drawn bill of every row of the sized bill. */
export type KeptRows = Readonly<Record<keyof DrawnBill, readonly number[]>>;

/** Names the fields of one row. */
function fieldsOf(path: string, key: string, name: string) {
  return (field: string, leaf: string, label: string): BillField => ({
    path: `${path}.${field}`,
    key: `${key}/${leaf}`,
    label: `${name}: ${label}`,
  });
}

/** Every row with its numbers filled in, less the rows whose quantity comes to 0. */
export function sizeRows(drawn: DrawnBill, sizer: BillSizer): { bill: Bill; kept: KeptRows } {
  const assemblies = keep(
    drawn.assemblies.map((one, index) => {
      const field = fieldsOf(`bill.assemblies.${index}`, `assembly ${one.id}`, one.name);
      return { ...one, quantity: sizer.count(field('quantity', 'quantity', 'number'), one.quantity, 0) };
    }),
    ({ quantity }) => quantity > 0,
  );
  const ids = new Set(assemblies.rows.map(({ id }) => id));
  const drawnIds = new Set(drawn.assemblies.map(({ id }) => id));
  // An assembly that the bill does not have at all is for the check of codes to tell.
  const isThere = ({ assembly }: { readonly assembly?: string }) =>
    assembly === undefined || ids.has(assembly) || !drawnIds.has(assembly);
  const parts = keep(
    drawn.parts.map((one, index) => sizePart(one, index, sizer)),
    (part) => part.quantity > 0 && isThere(part),
  );
  const components = keep(
    drawn.components.map((one, index) => sizeComponent(one, index, sizer)),
    (one) => Number(one.quantity) > 0 && isThere(one),
  );
  const gone = new Set(drawn.parts.map(({ id }) => id));
  for (const { id } of parts.rows) gone.delete(id);
  const finishes = keep(
    drawn.finishes.map((one, index) => sizeFinish(one, index, sizer)),
    ({ parts: named }) => named.length === 0 || named.some((id) => !gone.has(id)),
  );
  const consumables = keep(
    drawn.consumables.map((one, index) => sizeConsumable(one, index, sizer)),
    ({ quantity }) => Number(quantity) > 0,
  );
  const operations = keep(
    drawn.operations.map((one, index) => sizeOperation(one, index, sizer)),
    isThere,
  );
  return {
    bill: {
      assemblies: assemblies.rows,
      parts: parts.rows,
      components: components.rows,
      finishes: finishes.rows.map((step) => ({ ...step, parts: step.parts.filter((id) => !gone.has(id)) })),
      consumables: consumables.rows,
      operations: operations.rows,
    },
    kept: {
      assemblies: assemblies.places,
      parts: parts.places,
      components: components.places,
      finishes: finishes.places,
      consumables: consumables.places,
      operations: operations.places,
    },
  };
}

function keep<Row>(rows: readonly Row[], isKept: (row: Row) => boolean): { rows: Row[]; places: number[] } {
  const places = [...rows.keys()].filter((place) => {
    const row = rows[place];
    return row !== undefined && isKept(row);
  });
  return { rows: rows.filter(isKept), places };
}

function sizePart(part: DrawnPart, index: number, sizer: BillSizer): Part {
  const field = fieldsOf(`bill.parts.${index}`, `part ${part.id}`, part.name);
  const { lengthAllowance, widthAllowance, staves, spares, edgeBand, veneer, ...rest } = part;
  const size = (key: 'length' | 'width' | 'thickness') =>
    sizer.length(field(key, key, `finished ${key}`), part[key], 'above 0');
  return {
    ...rest,
    quantity: sizer.count(field('quantity', 'quantity', 'number'), part.quantity, 0),
    material: sizer.material(part.material),
    length: size('length'),
    width: size('width'),
    thickness: size('thickness'),
    ...(lengthAllowance === undefined
      ? {}
      : {
          lengthAllowance: sizer.length(
            field('lengthAllowance', 'length-allowance', 'length allowance'),
            lengthAllowance,
            0,
          ),
        }),
    ...(widthAllowance === undefined
      ? {}
      : {
          widthAllowance: sizer.length(
            field('widthAllowance', 'width-allowance', 'width allowance'),
            widthAllowance,
            0,
          ),
        }),
    ...(staves === undefined ? {} : { staves: sizer.count(field('staves', 'staves', 'staves'), staves, 1) }),
    ...(spares === undefined ? {} : { spares: sizer.count(field('spares', 'spares', 'spares'), spares, 0) }),
    ...(edgeBand === undefined
      ? {}
      : {
          edgeBand: {
            ...edgeBand,
            material: sizer.material(edgeBand.material),
            thickness: sizer.length(
              field('edgeBand.thickness', 'band-thickness', 'band thickness'),
              edgeBand.thickness,
              'above 0',
            ),
          },
        }),
    ...(veneer === undefined
      ? {}
      : {
          veneer: {
            ...veneer,
            material: sizer.material(veneer.material),
            thickness: sizer.length(
              field('veneer.thickness', 'veneer-thickness', 'veneer thickness'),
              veneer.thickness,
              'above 0',
            ),
          },
        }),
  };
}

function sizeComponent(one: DrawnComponent, index: number, sizer: BillSizer): Component {
  const field = fieldsOf(`bill.components.${index}`, `component ${one.id}`, one.name);
  return {
    ...one,
    material: sizer.material(one.material),
    quantity: sizer.amount(field('quantity', 'quantity', 'number'), one.quantity, 0),
  };
}

function sizeFinish(step: DrawnFinishStep, index: number, sizer: BillSizer): FinishStep {
  const field = fieldsOf(`bill.finishes.${index}`, `finish ${step.id}`, step.name);
  const { dryFilmUm, batchRest, ...rest } = step;
  return {
    ...rest,
    material: sizer.material(step.material),
    coats: sizer.count(field('coats', 'coats', 'coats'), step.coats, 1),
    ...(dryFilmUm === undefined
      ? {}
      : {
          dryFilmUm: sizer.amount(
            field('dryFilmUm', 'dry-film', 'dry film of a coat, um'),
            dryFilmUm,
            'above 0',
          ),
        }),
    ...(batchRest === undefined
      ? {}
      : {
          batchRest: sizer.amount(field('batchRest', 'batch-rest', 'stays in pot and gun'), batchRest, 0),
        }),
  };
}

function sizeConsumable(one: DrawnConsumable, index: number, sizer: BillSizer): Consumable {
  const field = fieldsOf(`bill.consumables.${index}`, `consumable ${one.id}`, one.name);
  return {
    ...one,
    material: sizer.material(one.material),
    quantity: sizer.amount(field('quantity', 'quantity', 'amount'), one.quantity, 0),
  };
}

function sizeOperation(one: DrawnOperation, index: number, sizer: BillSizer): Operation {
  const field = fieldsOf(`bill.operations.${index}`, `operation ${one.id}`, one.name);
  const { runHoursLow, runHoursHigh, ...rest } = one;
  const hours = (key: 'setupHours' | 'runHours' | 'elapsedHours', leaf: string, label: string) =>
    sizer.amount(field(key, leaf, label), one[key], 0);
  return {
    ...rest,
    setupHours: hours('setupHours', 'setup', 'setup'),
    runHours: hours('runHours', 'run', 'run time of a piece'),
    elapsedHours: hours('elapsedHours', 'elapsed', 'elapsed time'),
    ...(runHoursLow === undefined
      ? {}
      : { runHoursLow: sizer.amount(field('runHoursLow', 'run-low', 'run time, low'), runHoursLow, 0) }),
    ...(runHoursHigh === undefined
      ? {}
      : { runHoursHigh: sizer.amount(field('runHoursHigh', 'run-high', 'run time, high'), runHoursHigh, 0) }),
  };
}
