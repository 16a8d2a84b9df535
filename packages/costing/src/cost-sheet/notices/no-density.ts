import type { NoticeRule } from './notice.ts';

/** A material whose density is not known, so that the weight leaves its parts out. */
export const noDensity: NoticeRule = ({ parts }) => {
  const byMaterial = new Map<string, { name: string; parts: string[] }>();
  for (const { part, stock } of parts) {
    if (stock.density !== undefined) continue;
    const known = byMaterial.get(stock.code);
    if (known) known.parts.push(part.name);
    else byMaterial.set(stock.code, { name: stock.name, parts: [part.name] });
  }
  return [...byMaterial].map(([code, { name, parts: names }]) => ({
    kind: 'no-density',
    weight: 'warning',
    about: code,
    message: `the weight leaves out ${names.join(', ')}: ${name} has no density`,
    mend: 'enter the density on the material',
    record: `material:${code}`,
  }));
};
