import {
  COUNT_BOUNDS,
  type Figure,
  type LeafBounds,
  number,
  SHARE_BOUNDS,
  scale,
  sum,
} from '@scantling/figures';
import type { FinishStep } from '../bill-of-materials/index.ts';
import { coverageByFilm, coverageInUse, finishApplied, METRIC_SOLIDS } from '../finish/index.ts';
import { CostingInputError } from '../input-error.ts';
import type { Material } from '../material/index.ts';
import type { MaterialUse } from './material-use.ts';
import { faceOf, type PartNeed } from './part-need.ts';
import type { PartCut } from './parts-to-cut.ts';
import type { SheetContext } from './sheet-context.ts';

/** Litres of every step of the finish schedule, from the faces of the parts it names. */
export function finishUses(cuts: readonly PartCut[], sheet: SheetContext): MaterialUse[] {
  const finished = cuts
    .filter(({ need }) => need.part.facesFinished !== 'none')
    .map(({ need, count }) => ({
      id: need.part.id,
      area: scale(`${need.part.name}: area`, areaOfOne(need), count),
    }));
  return sheet.input.bill.finishes.map((step, index) => {
    const field = `bill.finishes.${index}`;
    const material = sheet.material(step.material, `${field}.material`);
    if (material.form !== 'volume') {
      throw new CostingInputError(
        `${field}.material`,
        `names ${material.code}, which is not sold by volume`,
        'choose a finish sold by the litre or gallon',
      );
    }
    const named = new Set(step.parts);
    const faces = named.size === 0 ? finished : finished.filter(({ id }) => named.has(id));
    const area = sum(
      `${step.name}: area`,
      'm2',
      faces.map((one) => one.area),
    );
    const litres = litresFor(step, field, material, area, sheet);
    const rest =
      step.batchRest === undefined
        ? []
        : [
            sheet.fromBill(
              `finish ${step.id}/batch-rest`,
              `${step.name}: stays in pot and gun`,
              'l',
              step.batchRest,
            ),
          ];
    return {
      material,
      class: 'direct-materials',
      quantity: sum(`${step.name}: litres`, 'l', [litres, ...rest]),
      field,
    };
  });
}

function areaOfOne(need: PartNeed): Figure<'m2'> {
  const { part, finishedLength: l, finishedWidth: w, finishedThickness: t } = need;
  const face = faceOf(`${part.name}: finished face`, l, w);
  if (part.facesFinished === 'one-face') return face;
  const both = scale(`${part.name}: both faces`, face, number(2));
  if (part.facesFinished === 'both-faces') return both;
  const around = scale(`${part.name}: around`, sum('length and width', 'mm', [l, w]), number(2));
  return sum(`${part.name}: all faces and edges`, 'm2', [both, faceOf(`${part.name}: edges`, around, t)]);
}

/** By the film of the step where it names one, else by the material's coverage; wiped oils go by coverage only. */
function litresFor(
  step: FinishStep,
  field: string,
  material: Material,
  area: Figure<'m2'>,
  sheet: SheetContext,
): Figure<'l'> {
  const leaf = <U extends 'ratio' | 'um'>(
    key: string,
    label: string,
    unit: U,
    value: string,
    bounds?: LeafBounds,
  ) => sheet.fromBill(`finish ${step.id}/${key}`, `${step.name}: ${label}`, unit, value, bounds);
  const transferEfficiency = () =>
    leaf(
      'transfer-efficiency',
      'share that stays on the work',
      'ratio',
      step.transferEfficiency,
      SHARE_BOUNDS,
    );
  const coats = leaf('coats', 'coats', 'ratio', String(step.coats), COUNT_BOUNDS);
  const coverage =
    step.dryFilmUm === undefined
      ? coverageInUse(`${step.name}: coverage in use`, coverageOf(material, field, sheet), {
          isTheoretical: material.isCoverageTheoretical === true,
          transferEfficiency,
        })
      : coverageByFilm(`${step.name}: m2 a litre covers`, {
          solids: METRIC_SOLIDS,
          volumeSolids: solidsOf(material, field, sheet),
          transferEfficiency: transferEfficiency(),
          dryFilm: leaf('dry-film', 'dry film of a coat', 'um', step.dryFilmUm),
        });
  return finishApplied(step.name, 'l', { area, coats, coverage });
}

function solidsOf(material: Material, field: string, sheet: SheetContext): Figure<'ratio'> {
  if (material.goesOnByWiping === true)
    throw new CostingInputError(
      `${field}.dryFilmUm`,
      `is given for ${material.name}, which is wiped on and builds no film`,
      'leave the dry film out: a wiped oil goes by its coverage',
    );
  if (material.volumeSolids === undefined)
    throw new CostingInputError(
      `materials.${material.code}.volumeSolids`,
      'is missing',
      'enter the share of solids by volume, or drop the film of the step and go by coverage',
    );
  const label = `${material.name}: volume solids`;
  return sheet.fromMaterial(material, 'volume-solids', label, 'ratio', material.volumeSolids, SHARE_BOUNDS);
}

function coverageOf(material: Material, field: string, sheet: SheetContext): Figure<'m2/l'> {
  if (material.coverage === undefined)
    throw new CostingInputError(
      `${field}.dryFilmUm`,
      'is missing, and the material has no coverage',
      'enter the dry film, or the coverage on the material',
    );
  const label = `${material.name}: coverage`;
  return sheet.fromMaterial(material, 'coverage', label, 'm2/l', material.coverage);
}
