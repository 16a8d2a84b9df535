import { listLabourGrades, listMaterials, listTools } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import type { Choice } from '../../../components/choice-list.tsx';
import { everyItem } from '../../../lib/record-calls.ts';

/** The records a bill can name. */
export interface RecordChoices {
  readonly materials: readonly Choice[];
  readonly grades: readonly Choice[];
  readonly machines: readonly Choice[];
}

interface Coded {
  readonly code: string;
  readonly name: string;
}

const byCode = ({ code, name }: Coded): Choice => ({ id: code, label: code, note: name });

/** Families stand before their materials: a part may leave it to the costing which thickness is cut. */
function familyChoices(materials: readonly { readonly family: string | null }[]): Choice[] {
  const counts = new Map<string, number>();
  for (const { family } of materials) if (family !== null) counts.set(family, (counts.get(family) ?? 0) + 1);
  return [...counts].map(([family, count]) => ({
    id: family,
    label: family,
    note: `Family of ${count}; the thinnest that fits is taken`,
  }));
}

export const billChoicesQuery = queryOptions({
  queryKey: ['designs', 'bill-choices'],
  queryFn: async ({ signal }): Promise<RecordChoices> => {
    const [materials, tools, grades] = await Promise.all([
      everyItem(listMaterials, {}, signal),
      everyItem(listTools, {}, signal),
      everyItem(listLabourGrades, {}, signal),
    ]);
    const families = familyChoices(materials);
    const isFamily = new Set(families.map(({ id }) => id));
    return {
      materials: [...families, ...materials.filter(({ code }) => !isFamily.has(code)).map(byCode)],
      grades: grades.map(byCode),
      machines: tools.map(byCode),
    };
  },
});
