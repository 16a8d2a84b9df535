import { isFormula, type SizedParameter, sizeDesign } from '@scantling/costing';
import { type Figure, toTable } from '@scantling/figures';
import { formatLength, type LengthSystem } from '@scantling/units';
import type { CellAside } from '../../../components/edit-grid/edit-column.ts';
import { formatNumber } from '../../../lib/format.ts';
import { derivationWords, nodeOf } from '../../figures/working-words.ts';
import { lengthNote } from './bill-columns.ts';
import { BILL_KINDS } from './bill-fields.ts';
import { valueAt } from './bill-text.ts';
import type { DraftReading } from './read-draft.ts';

/** What stands beside the cells that rest on parameters: by the key of the row and the path of the value. */
export type SizedCells = ReadonlyMap<string, ReadonlyMap<string, CellAside>>;

const PLACES = 4;

function valueText({ unit, value }: Figure, system: LengthSystem): string {
  return unit === 'mm'
    ? formatLength(value, system, { denominator: 64, places: 2 }).replace(/ mm$/, '')
    : formatNumber(value, PLACES);
}

/** How it was worked out, and what it comes to in both systems where it is a length. */
function noteOf(figure: Figure, system: LengthSystem, under: string): string {
  const { ids, figures } = toTable({ figure }, { withDerivations: true });
  const working = derivationWords(figures, nodeOf(figures, ids.figure));
  const comes =
    figure.unit === 'mm'
      ? lengthNote(figure.value.toFixed(), system)
      : formatNumber(figure.value, PLACES, { isFull: true });
  return `${under}: ${working === null ? '' : `${working} = `}${comes}`;
}

const MATERIAL_FIELDS = ['material', 'edgeBand.material', 'veneer.material'] as const;

/** What formulas and chosen materials come to, as drawn or in a variant. */
export function sizedCells(
  { drawn, placeOf }: DraftReading,
  variant: string | null,
  system: LengthSystem,
): SizedCells {
  const sizes = new Map<string, Map<string, CellAside>>();
  const put = (field: string, aside: CellAside): void => {
    const place = placeOf(field);
    if (place === undefined) return;
    const ofRow = sizes.get(place.row.key) ?? new Map<string, CellAside>();
    sizes.set(place.row.key, ofRow.set(place.path, aside));
  };
  const chosen = drawn.variants.find(({ id }) => id === variant);
  const under = chosen ? chosen.name : 'As drawn';
  const { fields, parameters } = sizeDesign(
    drawn,
    { variant: chosen?.id ?? null },
    system === 'metric' ? 'mm' : 'in',
  );
  const asideOf = (figure: Figure): CellAside => ({
    text: valueText(figure, system),
    note: noteOf(figure, system, under),
  });
  for (const [field, figure] of fields) put(field, asideOf(figure));

  const byId = new Map(parameters.map((sized) => [sized.parameter.id, sized]));
  const materialAside = ({ parameter, value }: SizedParameter): CellAside | null =>
    parameter.kind === 'material' && value !== null
      ? { text: value, note: `${under}: ${parameter.label} is ${value}` }
      : null;
  drawn.parameters.forEach(({ id, value }, at) => {
    const sized = byId.get(id);
    const isOther = isFormula(value) || chosen?.values[id] !== undefined;
    if (sized === undefined || !isOther) return;
    const aside = sized.figure ? asideOf(sized.figure) : materialAside(sized);
    if (aside) put(`parameters.${at}.value`, aside);
  });
  for (const kind of BILL_KINDS) {
    drawn.bill[kind].forEach((row, at) => {
      for (const path of MATERIAL_FIELDS) {
        const code = valueAt(row, path);
        const sized = typeof code === 'string' ? byId.get(code) : undefined;
        const aside = sized && materialAside(sized);
        if (aside) put(`bill.${kind}.${at}.${path}`, aside);
      }
    });
  }
  return sizes;
}
