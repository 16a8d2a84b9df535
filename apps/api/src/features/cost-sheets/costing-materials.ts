import { finishFields } from '@scantling/contracts';
import { MATERIAL_FORMS, type Material, type MaterialForm, type PriceOffer } from '@scantling/costing';
import type { Material as MaterialRecord, Prisma, Supplier } from '../../generated/prisma/client.ts';
import { RequestProblem } from '../../problems/request-problem.ts';

type MaterialRow = MaterialRecord & { preferredSupplier: Pick<Supplier, 'code'> | null };

/** The records behind codes of materials; a family brings all its members. */
export async function materialRows(
  database: Prisma.TransactionClient,
  codes: readonly string[],
): Promise<MaterialRow[]> {
  return database.material.findMany({
    where: { OR: [{ code: { in: [...codes] } }, { family: { in: [...codes] } }] },
    include: { preferredSupplier: { select: { code: true } } },
    orderBy: { code: 'asc' },
  });
}

function formOf(text: string): MaterialForm {
  return MATERIAL_FORMS.find((form) => form === text) ?? 'each';
}

/** A material as costing sees it, with the offers for it. */
export function toCostingMaterial(row: MaterialRow, offers: readonly PriceOffer[]): Material {
  const optional = {
    family: row.family,
    nominalThickness: text(row.nominalThicknessMm),
    surfacedThickness: text(row.surfacedThicknessMm),
    thickness: text(row.thicknessMm),
    width: text(row.widthMm),
    length: text(row.lengthMm),
    density: text(row.densityKgM3),
    yieldFactor: text(row.yieldFactor),
    offcutValueShare: text(row.offcutValueShare),
    packContent: text(row.packContent),
    boardContent: text(row.boardContent),
    preferredSupplier: row.preferredSupplier?.code,
    ...finishOf(row),
  };
  const given = Object.fromEntries(
    Object.entries(optional).filter(([, value]) => value !== null && value !== undefined),
  );
  return { code: row.code, name: row.name, form: formOf(row.form), offers, ...given };
}

function text(value: Prisma.Decimal | null): string | null {
  return value === null ? null : value.toFixed();
}

/** @throws RequestProblem naming the material whose finish cannot be read */
function finishOf({ code, finish }: MaterialRow) {
  if (finish === null) return {};
  const read = finishFields.safeParse(finish);
  if (!read.success) {
    throw new RequestProblem('input-invalid', {
      errors: [
        {
          field: `materials.${code}.finish`,
          message: 'is kept in a form that cannot be read',
          mend: 'Open the material and enter its finish anew.',
        },
      ],
    });
  }
  const { volumeSolids, coverageM2PerL, coverageIsTheoretical, goesOnByWiping, selfHeatingRags } = read.data;
  return {
    volumeSolids,
    coverage: coverageM2PerL,
    isCoverageTheoretical: coverageIsTheoretical,
    goesOnByWiping,
    selfHeatingRags,
  };
}
