import type { KnownCodes } from '@scantling/costing';
import type { Database } from '../../database/connect.ts';
import type { Prisma } from '../../generated/prisma/client.ts';

type Access = Database | Prisma.TransactionClient;

/** Codes of all materials and their families, labour grades and tools. */
export async function knownCodes(database: Access): Promise<KnownCodes> {
  const materials = await database.material.findMany({ select: { code: true, family: true } });
  const grades = await database.labourGrade.findMany({ select: { code: true } });
  const tools = await database.tool.findMany({ select: { code: true } });
  return {
    materials: new Set(materials.flatMap(({ code, family }) => (family === null ? [code] : [code, family]))),
    grades: new Set(grades.map(({ code }) => code)),
    machines: new Set(tools.map(({ code }) => code)),
  };
}
