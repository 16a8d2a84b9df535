import { constant, derive, divide, type Figure, number, scale, sum } from '@scantling/figures';
import type { FinishStep } from '../bill-of-materials/index.ts';
import { CostingInputError } from '../input-error.ts';
import type { Material } from '../material/index.ts';
import type { MaterialUse } from './material-use.ts';
import { faceOf, type PartNeed } from './part-need.ts';
import { partsToCut } from './parts-to-cut.ts';
import type { SheetContext } from './sheet-context.ts';

const UM_M2_IN_LITRE = constant('m2 that a litre covers one micrometre thick', 'm2/l', 1000);

/** Litres of every step of the finish schedule, from the faces of the parts it names. */
export function finishUses(
  needs: readonly PartNeed[],
  pieces: Figure<'ratio'>,
  sheet: SheetContext,
): MaterialUse[] {
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
    const area = finishedArea(step, needs, pieces, sheet);
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

function finishedArea(
  step: FinishStep,
  needs: readonly PartNeed[],
  pieces: Figure<'ratio'>,
  sheet: SheetContext,
): Figure<'m2'> {
  const named = needs.filter(
    (need) =>
      need.part.facesFinished !== 'none' && (step.parts.length === 0 || step.parts.includes(need.part.id)),
  );
  const areas = named.map((need) =>
    scale(`${need.part.name}: area`, areaOfOne(need), partsToCut(need, pieces, sheet)),
  );
  return sum(`${step.name}: area`, 'm2', areas);
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

/**
 * By film: m2 x coats x um / (1000 x volume solids x transfer efficiency). By coverage: m2 x coats / coverage,
 * divided by transfer efficiency only where the label's coverage is theoretical.
 */
function litresFor(
  step: FinishStep,
  field: string,
  material: Material,
  area: Figure<'m2'>,
  sheet: SheetContext,
): Figure<'l'> {
  const leaf = (key: string, label: string, value: string) =>
    sheet.fromBill(`finish ${step.id}/${key}`, `${step.name}: ${label}`, 'ratio', value);
  const coated = scale(`${step.name}: area of all coats`, area, leaf('coats', 'coats', String(step.coats)));
  const transfer = leaf('transfer-efficiency', 'share that stays on the work', step.transferEfficiency);
  if (step.dryFilmUm !== undefined) {
    if (material.volumeSolids === undefined) {
      throw new CostingInputError(
        `materials.${material.code}.volumeSolids`,
        'is missing',
        'enter the share of solids by volume, or drop the film of the step and go by coverage',
      );
    }
    const film = leaf('dry-film', 'dry film of a coat, um', step.dryFilmUm);
    const solids = sheet.fromMaterial(
      material,
      'volume-solids',
      `${material.name}: volume solids`,
      'ratio',
      material.volumeSolids,
    );
    const perLitre = derive(`${step.name}: m2 a litre covers`, 'm2/l', 'quotient', [
      scale('solids on the work', UM_M2_IN_LITRE, solids, transfer),
      film,
    ]);
    return derive(`${step.name}: litres on the work`, 'l', 'quotient', [coated, perLitre]);
  }
  if (material.coverage === undefined) {
    throw new CostingInputError(
      `${field}.dryFilmUm`,
      'is missing, and the material has no coverage',
      'enter the dry film, or the coverage on the material',
    );
  }
  const coverage = sheet.fromMaterial(
    material,
    'coverage',
    `${material.name}: coverage`,
    'm2/l',
    material.coverage,
  );
  const litres = derive(`${step.name}: litres by coverage`, 'l', 'quotient', [coated, coverage]);
  return material.isCoverageTheoretical === true
    ? divide(`${step.name}: litres sprayed`, litres, transfer)
    : litres;
}
